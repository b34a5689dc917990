using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Ingredients;

/// <summary>One filling of a measure as it was sent.</summary>
/// <param name="Volume">The measure.</param>
/// <param name="Weight">What it held.</param>
public sealed record WeighingResponse(Quantity Volume, Quantity Weight);
