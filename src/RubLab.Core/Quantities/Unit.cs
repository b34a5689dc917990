namespace RubLab.Core.Quantities;

/// <summary>
/// A unit of the product: its symbol, what it measures and how it reaches the dimension's base unit
/// (<c>base = value * Factor + Offset</c>).
/// </summary>
/// <remarks>Base units: g, mL, g/kg, % of liquid, % of water, g/100cm2, g/mL, parts, mm, C, min, m2/s.</remarks>
/// <param name="Symbol">The symbol used on the wire; its meaning never depends on a preference.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Factor">Base units per one of this unit.</param>
/// <param name="Offset">Added after the factor; not zero for degrees Fahrenheit alone.</param>
/// <param name="Name">The unit's name in words.</param>
/// <param name="Definition">Where the factor comes from.</param>
public sealed record Unit(string Symbol, Dimension Dimension, double Factor, double Offset, string Name, string Definition)
{
    /// <summary>The value in the dimension's base unit.</summary>
    public double ToBase(double value) => (value * Factor) + Offset;

    /// <summary>A base-unit value in this unit.</summary>
    public double FromBase(double baseValue) => (baseValue - Offset) / Factor;
}
