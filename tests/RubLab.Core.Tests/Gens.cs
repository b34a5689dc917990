using CsCheck;
using RubLab.Core.Quantities;

namespace RubLab.Core.Tests;

/// <summary>Generators shared by the laws.</summary>
public static class Gens
{
    /// <summary>0 to 1, ends included.</summary>
    public static readonly Gen<double> Unit = Gen.OneOf(Gen.Double[0, 1], Gen.Const(0.0), Gen.Const(1.0));

    public static readonly Gen<Band> BandAboveZero = BandOf(0.01, 100);

    /// <summary>Parts of one mix: some exact, some wide, some that may be absent.</summary>
    public static readonly Gen<Band> Part = Gen.OneOf(
        BandOf(0.01, 100),
        BandOf(0.01, 10).Select(b => new Band(0, b.Typical, b.High)),
        BandOf(0.01, 10).Select(b => new Band(0, 0, b.High)),
        Gen.Double[0.01, 50].Select(Band.Exact));

    public static Gen<Band> BandOf(double lowest, double highest) =>
        Gen.Select(Gen.Double[lowest, highest], Gen.Double[lowest, highest], Gen.Double[lowest, highest]).Select((a, b, c) =>
        {
            double[] ends = [a, b, c];
            Array.Sort(ends);
            return new Band(ends[0], ends[1], ends[2]);
        });

    /// <summary>A point of a band, at a fraction of the way from low to high.</summary>
    public static double Inside(Band band, double fraction) =>
        Math.Clamp(band.Low + ((band.High - band.Low) * fraction), band.Low, band.High);
}
