using RubLab.Core.Formulas;
using RubLab.Core.Quantities;

namespace RubLab.Core.Sauces;

/// <summary>
/// A pot of sauce boiled down: a balance on what does not evaporate. Only water leaves; alcohol and aroma that
/// leave besides are counted as staying. All figures are typical ones, per kilogram of what went into the pot.
/// </summary>
public sealed record Reduction
{
    private const double GramsPerKilogram = 1000;

    private Reduction()
    {
    }

    /// <summary>Water of everything in the pot: the most that can leave.</summary>
    public required double WaterGramsPerKilogram { get; init; }

    /// <summary>Everything in the pot but its water.</summary>
    public double SolidsGramsPerKilogram => GramsPerKilogram - WaterGramsPerKilogram;

    /// <summary>Sodium chloride of everything in the pot.</summary>
    public required double SaltGramsPerKilogram { get; init; }

    /// <summary>The balance of a formula's lines, before anything evaporates.</summary>
    public static Reduction Of(FormulaRatios ratios)
    {
        double water = 0, salt = 0;
        foreach (var line in ratios.Lines)
        {
            water += line.Share.Typical * (line.Line.Ingredient.WaterGramsPer100Grams ?? 0) / 100;
            salt += line.Share.Typical * line.Line.Ingredient.SaltGramsPer100Grams.Typical / 100;
        }

        return new Reduction { WaterGramsPerKilogram = water * GramsPerKilogram, SaltGramsPerKilogram = salt * GramsPerKilogram };
    }

    /// <summary>Weight left, percent of what went into the pot, when solids are to be a percentage of it.</summary>
    /// <param name="percent">Solids, percent of the finished sauce, above 0 up to 100.</param>
    public double PercentLeftAtSolids(double percent) => SolidsGramsPerKilogram / GramsPerKilogram / percent * 10_000;

    /// <summary>Weight left, percent of what went into the pot, when salt is to be a percentage of it.</summary>
    /// <param name="percent">Sodium chloride, percent of the finished sauce, above 0 up to 100.</param>
    public double PercentLeftAtSalt(double percent) => SaltGramsPerKilogram / GramsPerKilogram / percent * 10_000;

    /// <summary>Solids of the finished sauce, percent of it.</summary>
    /// <param name="percentLeft">Weight left, percent of what went into the pot.</param>
    public double SolidsPercentAt(double percentLeft) => SolidsGramsPerKilogram / percentLeft * 10;

    /// <summary>Whether so much can be boiled off: what is left holds all that is not water.</summary>
    /// <param name="percentLeft">Weight left, percent of what went into the pot.</param>
    public bool CanReach(double percentLeft) =>
        percentLeft <= 100 && percentLeft * 10 >= SolidsGramsPerKilogram * (1 - Whole.LastBits);
}
