using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Salt;
using RubLab.Core.Sources;

namespace RubLab.Core.Curing;

/// <summary>The load of one additive held against one legal level.</summary>
public sealed record LimitCheck
{
    // A load worked from the limit itself may be above it by the last bits.
    private const double LastBits = 1e-9;

    private LimitCheck()
    {
    }

    public required AdditiveLimit Limit { get; init; }

    public required AdditiveLoad Load { get; init; }

    /// <summary>Parts per million on the limit's base; none where the load cannot be put on it.</summary>
    public required Band? MeasuredPartsPerMillion { get; init; }

    public required Verdict Verdict { get; init; }

    public required Verdict TypicalVerdict { get; init; }

    /// <summary>Low end of a level that is to be met; none where it holds as a cap alone.</summary>
    public double? LowestPartsPerMillion { get; private init; }

    /// <summary>How far the high end is above what is allowed; zero where it is not, and where what is left cannot be computed.</summary>
    public required double OverPartsPerMillion { get; init; }

    public required string Advice { get; init; }

    /// <summary>The part of the green weight that the limit's parts per million are of: bacon's leave out the skin.</summary>
    private double CountedOfGreen { get; init; } = 1;

    public bool IsExceeded => OverPartsPerMillion > 0;

    public Citation Citation => Limit.Citation;

    /// <summary>How much of the additive, per kilogram of green weight, one treatment would have to leave out for the whole excess.</summary>
    public double OverGramsPerKilogram(AdditiveShare share) => OverPartsPerMillion * CountedOfGreen / share.PerGramPerKilogram;

    /// <summary>Holds a load against a level that goes with it.</summary>
    /// <param name="limit">The level.</param>
    /// <param name="load">The load.</param>
    /// <param name="product">What is made of the meat; none when nobody said.</param>
    /// <param name="skinPercent">Skin, percent of the green weight, which the levels of bacon leave out.</param>
    /// <param name="yieldPercent">Cooked over green weight; none when it is not known.</param>
    /// <param name="weighingErrorPercent">How far below a level to be met still meets it; nothing above a level does.</param>
    public static LimitCheck Of(
        AdditiveLimit limit, AdditiveLoad load, string? product, double skinPercent, Band? yieldPercent, double weighingErrorPercent)
    {
        var countedOfGreen = limit.IsOfBacon ? 1 - (skinPercent / 100) : 1;
        var counted = limit.Counted(load).Over(countedOfGreen);
        if (load.Knowledge != LoadKnowledge.Known)
        {
            return OfUncertain(limit, load, load.Knowledge == LoadKnowledge.Assumed ? counted : null);
        }

        if (limit.Base == LimitBase.Finished)
        {
            return OfFinished(limit, load, counted, yieldPercent);
        }

        var highest = limit.HighPartsPerMillion * (1 + LastBits) ?? double.PositiveInfinity;
        var required = limit.IsNamedFor(product) ? limit.LowPartsPerMillion : null;
        var lowest = (required ?? 0) * (1 - (weighingErrorPercent / 100));
        return new LimitCheck
        {
            Limit = limit,
            Load = load,
            MeasuredPartsPerMillion = counted,
            LowestPartsPerMillion = required,
            Verdict = Judge(counted, lowest, highest),
            TypicalVerdict = Judge(Band.Exact(counted.Typical), lowest, highest),
            OverPartsPerMillion = limit.Level != LimitLevel.Alternative && counted.High > highest ? counted.High - limit.HighPartsPerMillion!.Value : 0,
            Advice = InWords(limit, counted, lowest, highest, product),
            CountedOfGreen = countedOfGreen,
        };
    }

    // What is used up or driven off is not known: only where all of it would still be allowed is anything certain.
    private static LimitCheck OfFinished(AdditiveLimit limit, AdditiveLoad load, Band counted, Band? yieldPercent)
    {
        var most = yieldPercent is { Low: > 0 } yield ? counted.Over(yield.Over(100)) : (Band?)null;
        return AtMost(
            limit, load, most, "Even if all of it stayed, it would be allowed.",
            "What is left in the finished product is measured, not computed: the figure here is the most it could be.");
    }

    private static LimitCheck OfUncertain(AdditiveLimit limit, AdditiveLoad load, Band? counted) => AtMost(
        limit, load, counted, Met(null, limit.HighPartsPerMillion),
        load.Additive == AdditiveLoads.Fat ? "The fat of this meat is a reference's figure, or not known: have it measured."
        : counted is null ? "How much of a soak's liquid stays in the meat is not computed: weigh the meat before and after."
        : "Nobody said how much of the liquid stays: give retained, or weigh the pieces back.");

    private static LimitCheck AtMost(AdditiveLimit limit, AdditiveLoad load, Band? most, string allowed, string unknown)
    {
        var verdict = most is { } band && band.High <= limit.HighPartsPerMillion * (1 + LastBits) ? Verdict.Within : Verdict.CannotTell;
        return new LimitCheck
        {
            Limit = limit,
            Load = load,
            MeasuredPartsPerMillion = most,
            Verdict = verdict,
            TypicalVerdict = verdict,
            OverPartsPerMillion = 0,
            Advice = verdict == Verdict.Within ? allowed : unknown,
        };
    }

    private static Verdict Judge(Band measured, double lowest, double highest) =>
        measured.Low > highest ? Verdict.Above
        : measured.High < lowest ? Verdict.Below
        : measured.High <= highest && measured.Low >= lowest ? Verdict.Within
        : Verdict.CannotTell;

    private static string InWords(AdditiveLimit limit, Band measured, double lowest, double highest, string? product)
    {
        if (measured.High > highest)
        {
            var unnamed = product is null && limit.IsOfBacon ? " It is the level of bacon; name the product if it is another." : "";
            var most = limit.HighPartsPerMillion!.Value;
            return $"Take {Figures.AtLeast(measured.High - most)} ppm out: {Figures.Exact(most)} ppm is the most.{unnamed}";
        }

        if (measured.Low < lowest)
        {
            var less = measured.High < lowest ? "" : $", and it may be only {Figures.Read(measured.Low, lowest)} ppm";
            return $"{Figures.Exact(limit.LowPartsPerMillion!.Value)} ppm is required{less}. {limit.Note}";
        }

        return limit is { Level: LimitLevel.Alternative, AskedBy: null } ? $"This alternative is met. {limit.Note}" : Met(lowest > 0 ? limit.LowPartsPerMillion : null, limit.HighPartsPerMillion);
    }

    // Of this level alone: another of the same additive may be missed or exceeded.
    private static string Met(double? least, double? most) => (least, most) switch
    {
        ({ } lowest, null) => $"At least {Figures.Exact(lowest)} ppm: met. It is no cap.",
        ({ } lowest, { } highest) => lowest == highest ? $"{Figures.Exact(lowest)} ppm: met." : $"{Figures.Exact(lowest)} to {Figures.Exact(highest)} ppm: met.",
        (null, { } highest) => $"At most {Figures.Exact(highest)} ppm: kept.",
        _ => "",
    };
}
