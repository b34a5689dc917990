using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;

namespace RubLab.Core.Brining;

/// <summary>What one gram of a liquid holds: the ingredients' own water and salt counted in.</summary>
public sealed record Brine
{
    private Brine()
    {
    }

    /// <summary>Each line's share of the liquid's weight, 0 to 1, in the order given.</summary>
    public required IReadOnlyList<double> Shares { get; init; }

    /// <summary>Water, 0 to 1. An ingredient whose water nobody published counts as dry.</summary>
    public required double WaterFraction { get; init; }

    /// <summary>Sodium chloride, 0 to 1; a band where an ingredient's salt is one.</summary>
    public required Band SaltFraction { get; init; }

    /// <summary>All that is neither water nor sodium chloride, 0 to 1.</summary>
    public double OtherFraction => Math.Max(0, 1 - WaterFraction - SaltFraction.Typical);

    /// <summary>Sodium chloride over sodium chloride and water, percent, as 9 CFR 318.10(c)(3)(iv) has it; 0 for a liquid of neither.</summary>
    public double StrengthPercent => SaltFraction.Typical > 0 ? 100 * SaltFraction.Typical / (SaltFraction.Typical + WaterFraction) : 0;

    /// <summary>Puts a liquid together.</summary>
    /// <param name="ingredients">The lines.</param>
    /// <param name="grams">Their masses in one unit; the sum is above zero.</param>
    /// <exception cref="ArgumentException">Not one mass per line, or nothing at all.</exception>
    public static Brine Of(IReadOnlyList<Ingredient> ingredients, ReadOnlySpan<double> grams)
    {
        double total = 0;
        foreach (var mass in grams)
        {
            total += mass;
        }

        if (ingredients.Count != grams.Length || !(total > 0))
        {
            throw new ArgumentException("One mass per line, and something to weigh.", nameof(grams));
        }

        var shares = new double[grams.Length];
        double water = 0;
        var salt = Band.Exact(0);
        for (var i = 0; i < shares.Length; i++)
        {
            shares[i] = grams[i] / total;
            water += shares[i] * (ingredients[i].WaterGramsPer100Grams ?? 0) / 100;
            salt = salt.Plus(ingredients[i].SaltGramsPer100Grams.Times(shares[i] / 100));
        }

        return new Brine { Shares = shares, WaterFraction = water, SaltFraction = salt };
    }

    /// <summary>Volume of a gram of it: a salt solution of its strength, and what else is dissolved at its own volume.</summary>
    public double MillilitresPerGram(BrineFigures figures, double celsius) =>
        ((1 - OtherFraction) / figures.Solution.DensityGramsPerMillilitre(StrengthPercent, celsius))
        + (OtherFraction * figures.DissolvedMillilitresPerGram);
}
