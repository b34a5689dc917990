using RubLab.Core.Quantities;

namespace RubLab.Contracts.Quantities;

/// <summary>An uncertain number without a unit, in an answer.</summary>
/// <param name="Low">The low end.</param>
/// <param name="Typical">The most likely value.</param>
/// <param name="High">The high end.</param>
public readonly record struct PlainBand(double Low, double Typical, double High)
{
    public static PlainBand From(Band band, Func<double, double> rounded) => new(rounded(band.Low), rounded(band.Typical), rounded(band.High));
}
