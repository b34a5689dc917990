namespace RubLab.Contracts.Reference;

/// <summary>An ingredient in a list.</summary>
public sealed record IngredientSummary(string Id, string Name, string Group, IReadOnlyList<string> Forms);
