using RubLab.Core.Quantities;

namespace RubLab.Contracts.Quantities;

/// <summary>An uncertain number with its unit, in an answer.</summary>
/// <param name="Low">The low end.</param>
/// <param name="Typical">The most likely value.</param>
/// <param name="High">The high end.</param>
/// <param name="Unit">The unit of all three.</param>
public readonly record struct QuantityBand(double Low, double Typical, double High, string Unit)
{
    public static QuantityBand From(Band band, string unit, Func<double, double> rounded) =>
        new(rounded(band.Low), rounded(band.Typical), rounded(band.High), unit);
}
