using System.Globalization;
using RubLab.Contracts.Scaling;
using RubLab.Core.Catalogues;
using RubLab.Core.Curing;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Remarks;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;

namespace RubLab.Contracts.Curing;

/// <summary>Computes a cure for whole pieces or ground meat from what was posted.</summary>
public static class Cures
{
    public static Result<CureResponse> Compute(CureRequest request, Catalogue catalogue)
    {
        var log = new FaultLog();
        var at = log.Root;
        if (CureReader.Read(request, catalogue, at) is not { } read)
        {
            return log.ResultOf<CureResponse>(null);
        }

        var findings = new FindingLog(catalogue);
        var ratios = FormulaRatios.Of(read.Formula, catalogue, findings, "");
        MixFindings.Notice(ratios, null, catalogue, findings, "");
        var pile = new Pile([read.Meat]);
        var treatment = new Treatment { Ratios = ratios, OnLines = [0] };
        var sheet = BatchSheet.Compute(new SheetRequest { Pile = pile, Treatments = [treatment], Scales = read.Scales, OveragePercent = 0, BowlGrams = null });
        if (read.Purpose == SheetPurpose.Sheet)
        {
            SheetFindings.Notice(sheet, catalogue, findings, _ => "/lines");
        }

        NoticeYield(read.Meat, findings);
        var loads = AdditiveLoads.Of(pile, 0, [treatment], isWeighed: true);
        var limits = LimitChecks.Of(loads, read.Meat, catalogue);
        if (read.Purpose == SheetPurpose.Sheet)
        {
            RefuseExceeded(limits, read.Formula, read.Meat.WeighedGrams[0], at.At("lines"));
        }

        return log.IsClean
            ? log.ResultOf(CureWriter.Write(read, sheet.Treatments[0], SaltLedger.Of(pile, 0, [treatment], isWeighed: true), loads, limits, catalogue, findings))
            : log.ResultOf<CureResponse>(null);
    }

    // At every line that brings some of what is too much.
    private static void RefuseExceeded(IReadOnlyList<LimitCheck> limits, Formula formula, double greenGrams, Place at)
    {
        foreach (var check in limits.Where(c => c.IsExceeded))
        {
            for (var i = 0; i < formula.Lines.Count; i++)
            {
                var line = formula.Lines[i];
                if (line.Amount > 0 && line.AdditivesGramsPerGram().Any(a => a.Additive == check.Limit.Additive))
                {
                    LimitFaults.Note(
                        at.At(i), check, check.Load.Shares[0], greenGrams,
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"the meat would get {check.MeasuredPartsPerMillion!.Value.High:0.##} ppm in all, some of it by {line.Ingredient.Name}"));
                }
            }
        }
    }

    private static void NoticeYield(PileLine meat, FindingLog findings)
    {
        if (meat is { CookYieldPercent: null, Cut.CookYields: [var yield, ..], YieldCountedPercent: { } counted })
        {
            findings.Add(
                "yield-assumed", "/cookYield", yield.Citation.SourceId,
                ("line", Said.Line(meat.Id, meat.Cut)), ("low", Math.Round(counted.Low, 1)), ("high", Math.Round(counted.High, 1)));
        }
    }
}
