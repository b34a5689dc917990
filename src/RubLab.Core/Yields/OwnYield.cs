using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Yields;

/// <summary>A cooking yield from a kitchen's own records: cooked over green weight, or over purchase weight, bone in both.</summary>
public sealed record OwnYield
{
    /// <summary>The source named beside a kitchen's own yields.</summary>
    public const string SourceId = "own-cooking";

    // The range of a yield, as requests are held to it.
    private const double Least = 1;
    private const double All = 100;

    private OwnYield()
    {
    }

    /// <summary>Way of cooking; none where the records name none.</summary>
    public string? Method { get; init; }

    /// <summary>The records were of purchase weight: trim is in the yield.</summary>
    public bool IsOfPurchase { get; init; }

    /// <summary>How many records.</summary>
    public required int Count { get; init; }

    /// <summary>All that was cooked over all that went in, percent.</summary>
    public required double MeanPercent { get; init; }

    /// <summary>Sample standard deviation of the single records, percent of the mean; none for one record.</summary>
    public required double? SpreadPercent { get; init; }

    /// <summary>How much of the typical value is the kitchen's own, 0 to 1; the rest is the reference's.</summary>
    public required double OwnShare { get; init; }

    /// <summary>The reference the records were drawn towards, percent; none where there is none.</summary>
    public required Band? ReferencePercent { get; init; }

    /// <summary>The band used.</summary>
    public required Band Percent { get; init; }

    /// <summary>Where it comes from, for an answer that uses it.</summary>
    public Citation Citation => new(
        SourceId, Count == 1 ? "one record" : $"{Count} records", OwnShare < 1 ? Confidence.Fair : Confidence.Good);

    /// <summary>From the records' weights.</summary>
    /// <param name="beforeGrams">Above zero, at least one.</param>
    /// <param name="afterGrams">One per weight before: from 1 % of it to all of it.</param>
    /// <param name="referencePercent">On the same base; none where there is none, and the records then stand alone.</param>
    /// <param name="fullCount">So many records stand by themselves; fewer are drawn towards the reference.</param>
    /// <param name="cookSpreadPercent">How far one cook strays from the mean in general; two standard deviations.</param>
    public static OwnYield From(
        ReadOnlySpan<double> beforeGrams, ReadOnlySpan<double> afterGrams, Band? referencePercent, int fullCount, double cookSpreadPercent)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(fullCount, 1);
        var cooked = MeasuredRatio.From(afterGrams, beforeGrams, cookSpreadPercent);
        var half = 2 * cooked.Deviation * cooked.Mean * 100;
        var share = referencePercent is null ? 1 : Math.Min(1, (double)cooked.Count / fullCount);
        return new OwnYield
        {
            Count = cooked.Count,
            MeanPercent = cooked.Mean * 100,
            SpreadPercent = cooked.SpreadPercent,
            OwnShare = share,
            ReferencePercent = referencePercent,
            Percent = BandOf(cooked.Mean * 100, half, share, referencePercent),
        };
    }

    // The band is as wide as the records themselves and as wide again as the reference counts, and always holds what
    // the kitchen measured.
    private static Band BandOf(double mean, double half, double share, Band? reference)
    {
        var of = reference ?? Band.Exact(mean);
        var typical = (share * mean) + ((1 - share) * of.Typical);
        var low = typical - half - ((1 - share) * (of.Typical - of.Low));
        var high = typical + half + ((1 - share) * (of.High - of.Typical));

        return new Band(Math.Min(Math.Min(mean, typical), Math.Max(low, Least)), typical, Math.Min(Math.Max(high, mean), All));
    }
}
