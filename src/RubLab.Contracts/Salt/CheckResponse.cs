using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Curing;
using RubLab.Core.Salt;

namespace RubLab.Contracts.Salt;

/// <summary>One figure held against one range, with its source.</summary>
public sealed record CheckResponse
{
    public required string Id { get; init; }

    /// <summary>What the range is of.</summary>
    public required string Title { get; init; }

    /// <summary>What a legal level limits: nitrite, nitrate, ascorbate, ascorbic-acid, phosphate, water and so on; absent from a range of salt.</summary>
    public string? Additive { get; init; }

    /// <summary>What the range is a share of, in the words of its source.</summary>
    public required string Base { get; init; }

    /// <summary>Of the whole band: within, below, above or cannot-tell.</summary>
    public required string Verdict { get; init; }

    /// <summary>Of the typical value.</summary>
    public required string TypicalVerdict { get; init; }

    /// <summary>Absent where the figure cannot be put on the range's base.</summary>
    public QuantityBand? Measured { get; init; }

    /// <summary>Absent where the range has no lower bound.</summary>
    public double? Lowest { get; init; }

    /// <summary>Absent where the range has no upper bound.</summary>
    public double? Highest { get; init; }

    /// <summary>The unit of measured, lowest and highest.</summary>
    public required string Unit { get; init; }

    public required string SourceId { get; init; }

    public required string Locator { get; init; }

    public required string Confidence { get; init; }

    /// <summary>What to do about it; empty where there is nothing to do.</summary>
    public required string Advice { get; init; }

    /// <summary>Sodium chloride per kg of the base to add (above zero) or take out (below) to come to the nearer bound; absent
    /// where the typical value is inside, and where lowest and highest are one level of salt, a landmark and no range to be in.</summary>
    public Quantity? Restore { get; init; }

    public static CheckResponse From(SaltCheck check) => new()
    {
        Id = check.Id,
        Title = check.Title,
        Base = check.Base,
        Verdict = Vocabulary.Verdicts[check.Verdict],
        TypicalVerdict = Vocabulary.Verdicts[check.TypicalVerdict],
        Measured = check.Measured is { } measured ? QuantityBand.From(measured, check.Unit, Rounded.Ledger) : null,
        Lowest = check.Lowest is { } lowest ? Rounded.Exact(lowest) : null,
        Highest = check.Highest is { } highest ? Rounded.Exact(highest) : null,
        Unit = check.Unit,
        SourceId = check.Citation.SourceId,
        Locator = check.Citation.Locator,
        Confidence = Vocabulary.Confidences[check.Citation.Confidence],
        Advice = check.Advice,
        Restore = check.RestoreGramsPerKilogram is { } grams ? new Quantity(Rounded.Ledger(grams), "g/kg") : null,
    };

    public static CheckResponse From(LimitCheck check) => new()
    {
        Id = check.Limit.Id,
        Title = check.Limit.Title,
        Additive = check.Limit.Additive,
        Base = BaseOf(check.Limit.Base),
        Verdict = Vocabulary.Verdicts[check.Verdict],
        TypicalVerdict = Vocabulary.Verdicts[check.TypicalVerdict],
        Measured = check.MeasuredPartsPerMillion is { } measured ? QuantityBand.From(measured, "ppm", Rounded.Ledger) : null,
        Lowest = check.LowestPartsPerMillion,
        Highest = check.Limit.HighPartsPerMillion,
        Unit = "ppm",
        SourceId = check.Citation.SourceId,
        Locator = check.Citation.Locator,
        Confidence = Vocabulary.Confidences[check.Citation.Confidence],
        Advice = check.Advice,
    };

    private static string BaseOf(LimitBase limitBase) => limitBase switch
    {
        LimitBase.GreenIngoing => "green-ingoing",
        LimitBase.GreenRetained => "green-retained",
        LimitBase.Finished => "finished",
        _ => "ingredients",
    };
}
