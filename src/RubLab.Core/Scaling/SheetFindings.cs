using System.Globalization;
using RubLab.Core.Catalogues;
using RubLab.Core.Formulas;
using RubLab.Core.Remarks;

namespace RubLab.Core.Scaling;

/// <summary>What a cook should know about the amounts on a sheet.</summary>
public static class SheetFindings
{
    /// <summary>Notes coarse scales, premixes, split batches and coats that are thin, thick or uneven.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="catalogue">The reference data.</param>
    /// <param name="findings">Takes what is noticed.</param>
    /// <param name="pointerOf">Where a treatment stands in the request.</param>
    public static void Notice(BatchSheet sheet, Catalogue catalogue, FindingLog findings, Func<int, string> pointerOf)
    {
        for (var t = 0; t < sheet.Treatments.Count; t++)
        {
            var treatment = sheet.Treatments[t];
            var pointer = pointerOf(t);
            NoticePieces(treatment.Pieces, pointer, catalogue, findings);
            NoticeLines(treatment, pointer, catalogue, findings);
            NoticeSplit(treatment, sheet.Request, pointer, findings);
            foreach (var line in treatment.Treatment.OnLines)
            {
                if (Coverage.Of(treatment, sheet.Request, line) is { } coverage)
                {
                    NoticeCoat(coverage, treatment, sheet.Request.Pile.Lines[line], pointer, catalogue, findings);
                }
            }
        }
    }

    private static void NoticePieces(PieceAmounts pieces, string pointer, Catalogue catalogue, FindingLog findings)
    {
        long smallest = 0;
        foreach (var steps in pieces.Steps)
        {
            if (steps > 0 && (smallest == 0 || steps < smallest))
            {
                smallest = steps;
            }
        }

        var amount = pieces.LostSteps > 0 ? pieces.LostSteps : smallest;
        if (IsCoarse(amount, catalogue))
        {
            NoticeCoarse(pieces.Step, amount, pointer, catalogue, findings);
        }
    }

    private static void NoticeLines(TreatmentSheet sheet, string pointer, Catalogue catalogue, FindingLog findings)
    {
        for (var i = 0; i < sheet.Lines.Count; i++)
        {
            var line = sheet.Lines[i];
            var steps = line.LostSteps > 0 ? line.LostSteps / sheet.BowlCount : StepsInFirstBowl(line, sheet.BowlCount);
            if (!IsCoarse(steps, catalogue))
            {
                continue;
            }

            NoticeCoarse(line.Step, steps, pointer, catalogue, findings);
            if (Carrier(sheet, i) is { } carrier)
            {
                NoticePremix(sheet, i, carrier, pointer, catalogue, findings);
            }
        }
    }

    // The first bowl has the least of a line; where that is nothing, the mean of all bowls stands for it.
    private static double StepsInFirstBowl(LineAmount line, int bowls) =>
        Bowls.Share(line.Steps, 0, bowls) is > 0 and var whole ? whole : (double)line.Steps / bowls;

    private static bool IsCoarse(double steps, Catalogue catalogue) =>
        steps > 0 && 100.0 / steps > catalogue.Constants.CoarseStepPercent;

    private static void NoticeCoarse(WeighingStep step, double steps, string pointer, Catalogue catalogue, FindingLog findings)
    {
        var limit = catalogue.Constants.CoarseStepPercent;
        findings.Add(
            "scale-too-coarse", pointer, null,
            ("amount", Text(steps * step.Value, step)),
            ("step", Text(step.Value, step)),
            ("percent", Math.Round(100.0 / steps, 1)),
            ("suggestedStep", Text(steps * step.Value * limit / 100, step)),
            ("multiple", Math.Ceiling(100 / limit / steps)));
    }

    // The other line of the mix there is most of: it can carry the small one without changing the mix.
    private static int? Carrier(TreatmentSheet sheet, int small)
    {
        var best = -1;
        for (var i = 0; i < sheet.Lines.Count; i++)
        {
            if (i != small && (best < 0 || sheet.Lines[i].Grams > sheet.Lines[best].Grams))
            {
                best = i;
            }
        }

        return best >= 0 && sheet.Lines[best].Grams > sheet.Lines[small].Grams ? best : null;
    }

    // The premix holds so many batches' worth of the small line that the step is within the limit, and as much of the
    // carrier as one batch has for each of them; one batch then takes the carrier's and the small line's amount of it.
    private static void NoticePremix(
        TreatmentSheet sheet, int small, int carrier, string pointer, Catalogue catalogue, FindingLog findings)
    {
        var step = sheet.Lines[small].Step;
        var ratios = sheet.Treatment.Ratios.Lines;
        var exact = ratios[small].RatioGramsPerKilogram.Typical / ratios[carrier].RatioGramsPerKilogram.Typical;
        var carried = StepsInFirstBowl(sheet.Lines[carrier], sheet.BowlCount) * sheet.Lines[carrier].Step.Value;
        var own = carried * exact;
        var batches = Math.Ceiling(100 / catalogue.Constants.CoarseStepPercent * step.Value / own);
        findings.Add(
            "premix", pointer, null,
            ("ingredient", ratios[small].Line.Ingredient.Name),
            ("carrier", ratios[carrier].Line.Ingredient.Name),
            ("amount", Text(own, step)),
            ("step", Text(step.Value, step)),
            ("premixIngredient", Text(own * batches, step)),
            ("premixCarrier", Text(carried * batches, step)),
            ("premixAmount", Text(own + carried, step)));
    }

    private static void NoticeSplit(TreatmentSheet sheet, SheetRequest request, string pointer, FindingLog findings)
    {
        if (sheet.BowlCount > 1)
        {
            var unit = request.Scales.Finest.Step.Unit;
            findings.Add(
                "capacity-split", pointer, null,
                ("treatment", sheet.Treatment.Ratios.Formula.Name),
                ("amount", string.Create(CultureInfo.InvariantCulture, $"{sheet.ToMix:0.###} {unit.Symbol}")),
                ("capacity", string.Create(CultureInfo.InvariantCulture, $"{unit.FromBase(request.BowlGrams!.Value):0.###} {unit.Symbol}")),
                ("batches", (double)sheet.BowlCount));
        }
    }

    private static void NoticeCoat(
        Coverage coverage, TreatmentSheet sheet, PileLine line, string pointer, Catalogue catalogue, FindingLog findings)
    {
        var formula = sheet.Treatment.Ratios.Formula;
        var limits = catalogue.Constants;
        var isPowder = formula.Kind is FormulaKind.DryBrine or FormulaKind.Rub;
        if (isPowder && coverage is { Grains: { } grains, LayerMillimetres: { } layer, GrainMillimetres: { } grain })
        {
            if (grains < limits.LayerGrainsMonolayer)
            {
                findings.Add(
                    "monolayer", pointer, line.Cut.Shape!.Citation.SourceId,
                    ("treatment", formula.Name), ("line", line.Id), ("layer", Math.Round(layer, 2)), ("grain", Math.Round(grain, 2)));
            }
            else if (grains > limits.LayerGrainsBinder)
            {
                findings.Add(
                    "needs-binder", pointer, line.Cut.Shape!.Citation.SourceId,
                    ("treatment", formula.Name), ("line", line.Id), ("layer", Math.Round(layer, 2)), ("grains", Math.Round(grains, 1)));
            }
        }

        var spread = coverage.GramsPerHundredSquareCentimetres;
        if (spread.Low > 0 && ((spread.High / spread.Low) - 1) * 100 > limits.CoverageSpreadPercent)
        {
            findings.Add(
                "coverage-spread", pointer, line.Cut.Shape!.Citation.SourceId,
                ("line", line.Id), ("low", Math.Round(spread.Low, 2)), ("high", Math.Round(spread.High, 2)));
        }
    }

    private static string Text(double value, WeighingStep step) =>
        value.ToString(value < 1 ? "G3" : "0.###", CultureInfo.InvariantCulture) + " " + step.Unit.Symbol;
}
