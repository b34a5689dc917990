namespace RubLab.Contracts.Quantities;

/// <summary>A number with its unit, in an answer.</summary>
public readonly record struct Quantity(double Value, string Unit);
