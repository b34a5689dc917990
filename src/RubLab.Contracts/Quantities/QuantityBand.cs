using RubLab.Core.Quantities;

namespace RubLab.Contracts.Quantities;

/// <summary>An uncertain number with its unit, in an answer.</summary>
public readonly record struct QuantityBand(double Low, double Typical, double High, string Unit)
{
    public static QuantityBand From(Band band, string unit, Func<double, double> rounded) =>
        new(rounded(band.Low), rounded(band.Typical), rounded(band.High), unit);
}
