namespace RubLab.Contracts.Reference;

/// <summary>A unit: what it measures and how it reaches its dimension's base unit (value x factor + offset).</summary>
public sealed record UnitResponse(string Symbol, string Name, string Dimension, double Factor, double Offset, string BaseUnit, string Definition);
