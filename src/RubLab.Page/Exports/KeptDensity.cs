using RubLab.Contracts.Ingredients;

namespace RubLab.Page.Exports;

/// <summary>A density the kitchen weighed itself, as this device keeps it.</summary>
internal sealed record KeptDensity(string Ingredient, string Form, IReadOnlyList<WeighingRequest?> Weighings);
