using System.Text;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;

namespace RubLab.Core.Scaling;

/// <summary>
/// A mass as cups and spoons for reading: the largest practical measure first, down to an eighth of a teaspoon.
/// </summary>
/// <param name="Text">Such as <c>1/4 cup + 2 tbsp + 1 1/8 tsp</c>.</param>
/// <param name="Grams">What those measures hold, level, from the lightest to the heaviest filling.</param>
/// <param name="RoundingErrorGrams">What the rounding to spoons adds (or, below zero, leaves out) at the typical density.</param>
public sealed record SpoonMeasure(string Text, Band Grams, double RoundingErrorGrams)
{
    // In eighths of a teaspoon, the smallest measure used: a cup is 48 teaspoons, a tablespoon 3.
    private const int Tsp = 8;
    private const int Tbsp = 3 * Tsp;
    private const int Cup = 48 * Tsp;
    private const int QuarterCup = Cup / 4;

    private static readonly double EighthMillilitres = UnitTable.Get("tsp").Factor / Tsp;

    /// <summary>The spoons for a mass; none where the density is unknown or the mass below a sixteenth of a teaspoon.</summary>
    public static SpoonMeasure? Of(double grams, BulkDensity? density)
    {
        if (density is null)
        {
            return null;
        }

        var exact = grams / density.GramsPerMillilitre.Typical / EighthMillilitres;
        var eighths = WholeSteps.Nearest(exact);
        if (eighths == 0)
        {
            return null;
        }

        var held = density.GramsPerMillilitre.Times(eighths * EighthMillilitres);
        return new SpoonMeasure(InWords(eighths), held, held.Typical - grams);
    }

    private static string InWords(long eighths)
    {
        var text = new StringBuilder();
        var quarters = eighths / QuarterCup;
        var rest = eighths % QuarterCup;
        Append(text, quarters / 4, (quarters % 4) switch { 1 => "1/4", 2 => "1/2", 3 => "3/4", _ => "" }, "cup");
        Append(text, rest / Tbsp, "", "tbsp");
        rest %= Tbsp;
        Append(
            text, rest / Tsp,
            (rest % Tsp) switch { 1 => "1/8", 2 => "1/4", 3 => "3/8", 4 => "1/2", 5 => "5/8", 6 => "3/4", 7 => "7/8", _ => "" },
            "tsp");
        return text.ToString();
    }

    private static void Append(StringBuilder text, long whole, string fraction, string unit)
    {
        if (whole == 0 && fraction.Length == 0)
        {
            return;
        }

        if (text.Length > 0)
        {
            text.Append(" + ");
        }

        if (whole > 0)
        {
            text.Append(whole).Append(' ');
        }

        if (fraction.Length > 0)
        {
            text.Append(fraction).Append(' ');
        }

        text.Append(unit);
    }
}
