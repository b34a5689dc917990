namespace RubLab.Contracts.Reference;

/// <summary>A unit: what it measures and how it reaches its dimension's base unit (value x factor + offset).</summary>
/// <param name="Symbol">The symbol used everywhere on the wire.</param>
/// <param name="Name">The name in words.</param>
/// <param name="Dimension">What it measures; only units of one dimension convert without a density.</param>
/// <param name="Factor">Base units per one of this unit.</param>
/// <param name="Offset">Added after the factor; not zero for degrees Fahrenheit alone.</param>
/// <param name="BaseUnit">The base unit of the dimension.</param>
/// <param name="Definition">Where the factor comes from.</param>
public sealed record UnitResponse(string Symbol, string Name, string Dimension, double Factor, double Offset, string BaseUnit, string Definition);
