using System.Globalization;
using RubLab.Core.Catalogues;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
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
            NoticePieces(treatment, pointer, catalogue, findings);
            NoticeLines(treatment, sheet.Request.Scales, pointer, catalogue, findings);
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

    private static void NoticePieces(TreatmentSheet sheet, string pointer, Catalogue catalogue, FindingLog findings)
    {
        var pieces = sheet.Pieces;
        long smallest = 0;
        foreach (var steps in pieces.Steps)
        {
            if (steps > 0 && (smallest == 0 || steps < smallest))
            {
                smallest = steps;
            }
        }

        var amount = pieces.LostSteps > 0 ? pieces.LostSteps : smallest;
        var isLimited = LimitedSteps.AreWantedFor(sheet.Treatment);
        var limit = isLimited ? catalogue.Constants.CureStepPercent : catalogue.Constants.CoarseStepPercent;
        if (IsCoarse(amount, limit))
        {
            // A mix of one line is that line, and remarked on once.
            var what = !isLimited && sheet.Treatment.Ratios.Lines is [var only] ? only.Line.Ingredient.Name : sheet.Treatment.Ratios.Formula.Name;
            NoticeCoarse(what, isLimited, pieces.Step, amount, limit, pointer, findings);
        }
    }

    private static void NoticeLines(TreatmentSheet sheet, ScaleSet scales, string pointer, Catalogue catalogue, FindingLog findings)
    {
        var premixed = new HashSet<int>();
        for (var i = 0; i < sheet.Lines.Count; i++)
        {
            var line = sheet.Lines[i];
            var steps = line.LostSteps > 0 ? line.LostSteps / sheet.BowlCount : StepsInFirstBowl(line, sheet.BowlCount);
            var isLimited = sheet.Treatment.Ratios.Lines[i].Line.CarriesLimited;
            var limit = isLimited ? catalogue.Constants.CureStepPercent : catalogue.Constants.CoarseStepPercent;
            if (!IsCoarse(steps, limit))
            {
                continue;
            }

            NoticeCoarse(sheet.Treatment.Ratios.Lines[i].Line.Ingredient.Name, isLimited, line.Step, steps, limit, pointer, findings);

            // A premix is weighed in place of both its lines, so a line goes into one premix and no other.
            if (!premixed.Contains(i))
            {
                PremixFindings.Notice(sheet, i, premixed, scales, catalogue.Constants, pointer, findings);
            }
        }
    }

    // The first bowl has the least of a line; where that is nothing, the mean of all bowls stands for it.
    private static double StepsInFirstBowl(LineAmount line, int bowls) =>
        Bowls.Share(line.Steps, 0, bowls) is > 0 and var whole ? whole : (double)line.Steps / bowls;

    private static bool IsCoarse(double steps, double limitPercent) => steps > 0 && 100.0 / steps > limitPercent;

    private static void NoticeCoarse(
        string what, bool isLimited, WeighingStep step, double steps, double limitPercent, string pointer, FindingLog findings)
    {
        var amount = Text(steps * step.Value, step);
        var percent = 100.0 / steps;
        var suggested = Text(CommonSteps.NoCoarserThan(steps * step.Value * limitPercent / 100), step);
        var multiple = Math.Ceiling(100 / limitPercent / steps);
        if (!isLimited)
        {
            findings.Add(
                "scale-too-coarse", pointer, null,
                ("amount", amount), ("step", Text(step.Value, step)), ("percent", Math.Round(percent, 1)), ("suggestedStep", suggested), ("multiple", multiple),
                ("what", what));
        }
        else
        {
            findings.Add(
                "cure-step-too-coarse", pointer, null,
                ("amount", amount), ("step", Text(step.Value, step)), ("percent", percent), ("suggestedStep", suggested), ("multiple", multiple),
                ("limit", limitPercent), ("what", what));
        }
    }

    private static void NoticeSplit(TreatmentSheet sheet, SheetRequest request, string pointer, FindingLog findings)
    {
        if (sheet.BowlCount > 1)
        {
            var unit = request.Scales.Finest.Step.Unit;
            findings.Add(
                "capacity-split", pointer, null,
                ("treatment", sheet.Treatment.Ratios.Formula.Name),
                ("amount", $"{Figures.Exact((double)sheet.ToMix)} {unit.Symbol}"),
                ("capacity", $"{Figures.Exact(unit.FromBase(request.BowlGrams!.Value))} {unit.Symbol}"),
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
                    ("treatment", formula.Name), ("line", Said.Line(line.Id, line.Cut)), ("layer", Math.Round(layer, 2)), ("grain", Math.Round(grain, 2)));
            }
            else if (grains > limits.LayerGrainsBinder)
            {
                findings.Add(
                    "needs-binder", pointer, line.Cut.Shape!.Citation.SourceId,
                    ("treatment", formula.Name), ("line", Said.Line(line.Id, line.Cut)), ("layer", Math.Round(layer, 2)), ("grains", Math.Round(grains, 1)));
            }
        }

        NoticeSpread(coverage, formula, line, pointer, limits.CoverageSpreadPercent, findings);
    }

    // A dose by area covers all alike, but for whole steps and the pieces' own factors.
    private static void NoticeSpread(
        Coverage coverage, Formula formula, PileLine line, string pointer, double limitPercent, FindingLog findings)
    {
        var spread = coverage.GramsPerHundredSquareCentimetres;
        var bySize = coverage.AtFullDoseGramsPerHundredSquareCentimetres;
        if (!IsWide(spread))
        {
            return;
        }

        if (line.DoseFactors?.Where(f => f > 0).Distinct().Take(2).Count() == 2)
        {
            findings.Add(
                "coverage-by-factor", pointer, line.Cut.Shape!.Citation.SourceId,
                ("line", Said.Line(line.Id, line.Cut)), ("low", Math.Round(spread.Low, 2)), ("high", Math.Round(spread.High, 2)),
                ("fullLow", Math.Round(bySize.Low, 2)), ("fullHigh", Math.Round(bySize.High, 2)));
        }
        else if (formula.Base != RatioBase.Area)
        {
            findings.Add(
                "coverage-spread", pointer, line.Cut.Shape!.Citation.SourceId,
                ("line", Said.Line(line.Id, line.Cut)), ("low", Math.Round(spread.Low, 2)), ("high", Math.Round(spread.High, 2)));
        }

        bool IsWide(Band band) => band.Low > 0 && ((band.High / band.Low) - 1) * 100 > limitPercent;
    }

    internal static string Text(double value, WeighingStep step) =>
        (value < 1 ? double.Parse(value.ToString("G3", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) : value)
            .ToString(value < 1 ? "0.###############" : "0.###", CultureInfo.InvariantCulture) + " " + step.Unit.Symbol;
}
