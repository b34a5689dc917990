using RubLab.Core.Faults;
using RubLab.Core.Remarks;

namespace RubLab.Core.Formulas;

/// <summary>The one line of a liquid in percent whose amount is left out: the water, stock or juice that makes up the rest.</summary>
internal static class RestLine
{
    private const double Whole = 100;

    /// <summary>Whether formulas written this way have a rest.</summary>
    public static bool Has(AuthoringMode? mode) => mode is AuthoringMode.PercentOfLiquid or AuthoringMode.PercentOfWater;

    /// <summary>What the rest comes to, in the unit of the other lines: what they leave of the liquid, or the 100 they are counted on.</summary>
    /// <returns>Percent; not above zero where the others leave nothing.</returns>
    public static double Percent(AuthoringMode mode, double sumOfOthers) =>
        mode == AuthoringMode.PercentOfLiquid ? Whole - sumOfOthers : Whole;

    /// <summary>Notes amounts that are missing, and a rest that is named not once or comes to nothing.</summary>
    public static void Check(FormulaDraft draft, AuthoringMode? mode, Place at)
    {
        var left = 0;
        for (var i = 0; i < draft.Lines.Count; i++)
        {
            if (!draft.Lines[i].IsAmountLeftOut)
            {
                continue;
            }

            left++;
            if (!Has(mode))
            {
                at.At("lines").At(i).At("amount").Fault("required", "This is needed.");
            }
            else if (left > 1)
            {
                at.At("lines").At(i).At("amount").Fault("rest-twice", "An earlier line makes up the rest already: only one leaves out its amount.");
            }
        }

        if (!Has(mode))
        {
            return;
        }

        if (left == 0)
        {
            at.At("lines").Fault(
                "rest-missing", "In percent of the liquid or of the water one line, the water or stock, leaves out its amount and makes up the rest.");
        }

        var sum = draft.Lines.Sum(l => l.Amount ?? 0);
        if (Percent(mode!.Value, sum) <= 0)
        {
            at.At("lines").Fault(
                "no-rest", $"The lines come to {Figures.Read(sum, 100)} % of the liquid and leave nothing for the rest.", ("sum", sum));
        }
    }

    /// <summary>The lines with their rest made up anew; none where nothing is left for it.</summary>
    public static IReadOnlyList<FormulaLine>? MadeUp(IReadOnlyList<FormulaLine> lines, AuthoringMode mode)
    {
        if (!Has(mode))
        {
            return lines;
        }

        var rest = Percent(mode, lines.Where(l => !l.IsRest).Sum(l => l.Amount));
        return rest > 0 ? lines.Select(l => l.IsRest ? l with { Amount = rest } : l).ToList() : null;
    }
}
