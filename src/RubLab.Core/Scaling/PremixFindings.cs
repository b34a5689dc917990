using System.Globalization;
using RubLab.Core.Catalogues;
using RubLab.Core.Curing;
using RubLab.Core.Formulas;
using RubLab.Core.Remarks;

namespace RubLab.Core.Scaling;

/// <summary>Proposes a premix for a line that is too small for its scale.</summary>
internal static class PremixFindings
{
    /// <summary>Notes the premix; of a line with a limit also that there is none.</summary>
    /// <param name="sheet">The treatment.</param>
    /// <param name="small">The line that is too small.</param>
    /// <param name="premixed">Lines that are in a premix already; receives both of this one.</param>
    /// <param name="scales">The kitchen's scales.</param>
    /// <param name="constants">What is coarse, and how large a premix may be.</param>
    /// <param name="pointer">Where the treatment stands in the request.</param>
    /// <param name="findings">Takes the finding.</param>
    public static void Notice(
        TreatmentSheet sheet, int small, HashSet<int> premixed, ScaleSet scales, Constants constants, string pointer, FindingLog findings)
    {
        if (CarrierOf(sheet, small, premixed) is { } carrier && PremixOf(sheet, small, carrier, scales, constants) is { } premix)
        {
            premixed.UnionWith([small, carrier]);
            var step = sheet.Lines[small].Step;
            findings.Add(
                "premix", pointer, null,
                ("ingredient", NameOf(sheet, small)),
                ("carrier", NameOf(sheet, carrier)),
                ("amount", Due(sheet, small)),
                ("step", SheetFindings.Text(step.Value, step)),
                ("premixIngredient", WholeSteps(premix.Ingredient)),
                ("premixCarrier", WholeSteps(premix.Carrier)),
                ("premixAmount", WholeSteps(premix.Taken)),
                ("error", Tenths(premix.ErrorPercent)),
                ("carrierError", Tenths(premix.CarrierErrorPercent)));
        }
        else if (IsLimited(sheet, small) && sheet.Lines.Count > 1)
        {
            var step = sheet.Lines[small].Step;
            var finest = step.Unit.FromBase(sheet.DueGrams[small] / sheet.BowlCount) * constants.CureStepPercent / 100;
            findings.Add(
                "no-premix", pointer, null,
                ("what", NameOf(sheet, small)), ("amount", Due(sheet, small)), ("limit", constants.CureStepPercent),
                ("batches", constants.PremixBatchesMost), ("suggestedStep", SheetFindings.Text(CommonSteps.NoCoarserThan(finest), step)));
        }
    }

    // The other line of the mix there is most of and that no premix has yet: it can carry the small one without changing the mix. But for
    // a pickle, where it dissolves, nothing stays evenly in a liquid or on ice; and what has a limit is no carrier: a carrier is rounded up.
    private static int? CarrierOf(TreatmentSheet sheet, int small, HashSet<int> premixed)
    {
        var isPickle = sheet.Treatment.Ratios.Formula.Kind is FormulaKind.Injection or FormulaKind.Soak;
        var best = -1;
        for (var i = 0; i < sheet.Lines.Count; i++)
        {
            var line = sheet.Treatment.Ratios.Lines[i].Line;
            var isWet = line.Form.FillsLevel || line.Ingredient.LimitedGramsPer100Grams.ContainsKey(AdditiveLoads.Water);
            if (i != small && !premixed.Contains(i) && (isPickle || !isWet) && !line.CarriesLimited && (best < 0 || sheet.DueGrams[i] > sheet.DueGrams[best]))
            {
                best = i;
            }
        }

        return best >= 0 && sheet.DueGrams[best] > sheet.DueGrams[small] ? best : null;
    }

    private static Premix? PremixOf(TreatmentSheet sheet, int small, int carrier, ScaleSet scales, Constants constants)
    {
        var isLimited = IsLimited(sheet, small);
        return Premix.Of(new PremixRequest(
            sheet.DueGrams[small] / sheet.BowlCount, sheet.DueGrams[carrier] / sheet.BowlCount, sheet.Lines[small].Step, scales,
            isLimited ? constants.CureStepPercent : constants.CoarseStepPercent)
        {
            IsLimited = isLimited,
            LeastGrams = LimitedSteps.AreWantedFor(sheet.Treatment) ? (sheet.Lines[small].Grams + sheet.Lines[carrier].Grams) / sheet.BowlCount : 0,
            MostCarrierGrams = sheet.DueGrams[carrier] * constants.PremixBatchesMost,
        });
    }

    private static bool IsLimited(TreatmentSheet sheet, int line) => sheet.Treatment.Ratios.Lines[line].Line.CarriesLimited;

    private static string NameOf(TreatmentSheet sheet, int line) => sheet.Treatment.Ratios.Lines[line].Line.Ingredient.Name;

    private static string Due(TreatmentSheet sheet, int line)
    {
        var step = sheet.Lines[line].Step;
        return SheetFindings.Text(step.Unit.FromBase(sheet.DueGrams[line] / sheet.BowlCount), step);
    }

    // Zero is added so that what rounds to nothing has no sign.
    private static double Tenths(double percent) => Math.Round(percent, 1) + 0.0;

    // Every digit: an amount cut short would be no whole steps.
    private static string WholeSteps(LineAmount amount) =>
        amount.Value.ToString("0.############", CultureInfo.InvariantCulture) + " " + amount.Step.Unit.Symbol;
}
