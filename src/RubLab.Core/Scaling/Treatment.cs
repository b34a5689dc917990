using RubLab.Core.Formulas;
using RubLab.Core.Quantities;

namespace RubLab.Core.Scaling;

/// <summary>One formula applied to lines of a pile.</summary>
public sealed record Treatment
{
    public required FormulaRatios Ratios { get; init; }

    /// <summary>Indexes of the pile lines it goes on, in order.</summary>
    public required IReadOnlyList<int> OnLines { get; init; }

    /// <summary>Grams of formula per kilogram of the base, in place of the formula's own dose.</summary>
    public double? DoseGramsPerKilogram { get; init; }

    /// <summary>What stays on or in the meat, percent of what is put on; none when nobody said.</summary>
    public Band? RetainedPercent { get; init; }

    /// <summary>What stays on or in the meat of each pile line, percent of what is put on, by the line's index; in place of
    /// <see cref="RetainedPercent"/>. For a soak, the part of what is in the liquid that the meat takes up.</summary>
    public IReadOnlyDictionary<int, Band>? RetainedPercentByLine { get; init; }

    /// <summary>Of a soak: its time and its liquid.</summary>
    public SoakTerms? Soak { get; init; }

    /// <summary>Of a soak: what the meat held before; none where nobody said.</summary>
    public SaltBefore? SaltBefore { get; init; }

    /// <summary>Temperature of an injection's or a soak's liquid; none for anything else.</summary>
    public double? LiquidCelsius { get; init; }

    /// <summary>How many times it is put on, each time with the full dose.</summary>
    public int Applications { get; init; } = 1;

    public Stage? Stage { get; init; }

    public double DoseCounted => DoseGramsPerKilogram ?? Ratios.DoseGramsPerKilogram;

    /// <summary>Factor from the formula's own ratios to those of this treatment.</summary>
    public double DoseScale => DoseCounted / Ratios.DoseGramsPerKilogram;

    /// <summary>It goes on when the cooking is over, so none of it cooks out: by its stage, else because it is dosed on cooked meat.</summary>
    public bool IsAfterCooking => Stage is { } stage
        ? stage == Scaling.Stage.After
        : Ratios.Formula.Base is RatioBase.Cooked or RatioBase.Portion;

    /// <summary>Somebody stated, weighed or computed what stays on or in the meat of a pile line.</summary>
    public bool IsRetainedStatedOn(int line) => RetainedPercent is not null || RetainedPercentByLine?.ContainsKey(line) == true;

    /// <summary>What stays on or in the meat of a pile line, percent; all of it when nobody said, so that salt is over-
    /// rather than understated.</summary>
    public Band RetainedPercentOn(int line) => RetainedPercentByLine is { } byLine && byLine.TryGetValue(line, out var retained)
        ? retained
        : RetainedPercent ?? Band.Exact(100);
}
