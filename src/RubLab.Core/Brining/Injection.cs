using RubLab.Core.Quantities;

namespace RubLab.Core.Brining;

/// <summary>What a pumped liquid leaves in the meat.</summary>
/// <remarks>The pump is liquid put in over green weight; retained is the part of it that does not drain. Legal loads count the pump alone.</remarks>
public readonly record struct Injection
{
    /// <param name="pumpPercent">Liquid put in, percent of green weight; above zero.</param>
    /// <param name="retainedPercent">What of it stays, 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of those ranges.</exception>
    public Injection(double pumpPercent, Band retainedPercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pumpPercent);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(retainedPercent.High, 100);
        PumpPercent = pumpPercent;
        RetainedPercent = retainedPercent;
    }

    public double PumpPercent { get; }

    public Band RetainedPercent { get; }

    /// <summary>The liquid put in, as a label states added solution: percent of the raw weight (9 CFR 317.2(e)(2)).</summary>
    public double AddedSolutionPercent => PumpPercent;

    /// <summary>The same after draining.</summary>
    public Band AddedSolutionAfterDrainingPercent => RetainedPercent.Times(PumpPercent / 100);

    /// <summary>A share of the liquid, as grams in a kilogram of green meat after draining.</summary>
    /// <param name="share">Share of the liquid's weight, 0 to 1.</param>
    public Band GramsPerKilogramGreen(Band share) => share.Times(AddedSolutionAfterDrainingPercent).Times(10);

    /// <summary>The same in a kilogram of injected and drained meat; put at the corners, because what drains leaves both.</summary>
    public Band GramsPerKilogramInjected(Band share)
    {
        var kept = AddedSolutionAfterDrainingPercent.Over(100);
        return new Band(Of(share.Low, kept.Low), Of(share.Typical, kept.Typical), Of(share.High, kept.High));

        static double Of(double share, double kept) => 1000 * share * kept / (1 + kept);
    }

    /// <summary>A share of the liquid as parts per million of green meat, whatever drains: g additive x pump x 1e6 / g pickle.</summary>
    public double IngoingPartsPerMillion(double share) => share * PumpPercent * 10_000;

    /// <summary>The share of the liquid that reaches a level at the typical retained part.</summary>
    /// <param name="gramsPerKilogramGreen">The level to reach.</param>
    /// <returns>0 and above; infinite where nothing stays.</returns>
    public double ShareFor(double gramsPerKilogramGreen) => gramsPerKilogramGreen / (AddedSolutionAfterDrainingPercent.Typical * 10);
}
