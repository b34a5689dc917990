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

    /// <summary>How many times it is put on, each time with the full dose.</summary>
    public int Applications { get; init; } = 1;

    public Stage? Stage { get; init; }

    public double DoseCounted => DoseGramsPerKilogram ?? Ratios.DoseGramsPerKilogram;

    /// <summary>Factor from the formula's own ratios to those of this treatment.</summary>
    public double DoseScale => DoseCounted / Ratios.DoseGramsPerKilogram;

    /// <summary>All of it, when nobody said: salt is then over- rather than understated.</summary>
    public Band RetainedCountedPercent => RetainedPercent ?? Band.Exact(100);
}
