using RubLab.Core.Ingredients;
using RubLab.Core.Scaling;

namespace RubLab.Core.Salt;

/// <summary>
/// Salt as a part of a sausage's formulation without its dry ingredients, as 9 CFR 318.10(c)(3)(i) counts it: salt, spices, sugar and
/// cure leave the denominator; meat, water, wine and ice stay in it.
/// </summary>
public static class WetFormulation
{
    private const double GramsPerKilogram = 1000;

    private static readonly HashSet<string> DryGroups = new(StringComparer.Ordinal)
    {
        "salt", "substance", "cure", "additive", "sugar", "pepper", "chilli", "spice", "seed", "herb",
    };

    /// <summary>Whether an ingredient is one of the dry ones.</summary>
    public static bool IsDry(Ingredient ingredient) => DryGroups.Contains(ingredient.Group);

    /// <summary>Salt weighed, grams per kilogram of meat and wet ingredients; none for meat that is not ground.</summary>
    /// <param name="pile">The pile.</param>
    /// <param name="line">Index of the line.</param>
    /// <param name="treatments">The whole stack; those not on this line are left out.</param>
    public static double? SaltGramsPerKilogram(Pile pile, int line, IReadOnlyList<Treatment> treatments)
    {
        if (!pile.Lines[line].IsGround)
        {
            return null;
        }

        double salt = 0, wet = GramsPerKilogram;
        foreach (var treatment in treatments.Where(t => t.OnLines.Contains(line)))
        {
            var factor = (BaseWeight.PerKilogramGreen(treatment.Ratios, pile, line) ?? 0) * treatment.DoseScale * treatment.Applications;
            foreach (var ratio in treatment.Ratios.Lines)
            {
                var grams = ratio.RatioGramsPerKilogram.Typical * factor;
                salt += ratio.Line.Ingredient.IsSalt ? grams : 0;
                wet += IsDry(ratio.Line.Ingredient) ? 0 : grams;
            }
        }

        return salt / wet * GramsPerKilogram;
    }

    /// <summary>The percentage the rule's table takes: rounded down to a tenth, so that a level not quite reached is not claimed.</summary>
    public static double PercentRoundedDown(double gramsPerKilogram) => (double)(Math.Floor((decimal)gramsPerKilogram) / 10);
}
