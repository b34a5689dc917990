namespace RubLab.Contracts.Quantities;

/// <summary>A number with its unit, in an answer.</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">Its unit.</param>
public readonly record struct Quantity(double Value, string Unit);
