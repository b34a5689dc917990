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
        var weighed = AdditiveLoads.Of(
            pile, 0, [treatment], isWeighed: true, read.Purpose == SheetPurpose.Sheet ? (_, i) => WeighedParts.InMix(sheet.Treatments[0], i) : null);
        var limits = LimitChecks.Of(AdditiveLoads.Of(pile, 0, [treatment], isWeighed: true), read.Meat, catalogue, weighed);
        if (read.Purpose == SheetPurpose.Sheet)
        {
            RefuseExceeded(limits, ratios, read.Meat.WeighedGrams[0], at.At("lines"));
        }

        return log.IsClean
            ? log.ResultOf(CureWriter.Write(read, sheet.Treatments[0], SaltLedger.Of(pile, 0, [treatment], isWeighed: true), weighed, limits, catalogue, findings))
            : log.ResultOf<CureResponse>(null);
    }

    // At every line that brings some of what is too much. Of one that brings it all the excess is told in grams of its own as well.
    private static void RefuseExceeded(IReadOnlyList<LimitCheck> limits, FormulaRatios ratios, double greenGrams, Place at)
    {
        foreach (var check in limits.Where(c => c.IsExceeded))
        {
            var contents = ratios.Lines.Select(l => check.Limit.GramsPerGram(l.Line)).ToArray();
            var brought = ratios.Lines.Select((l, i) => l.RatioGramsPerKilogram.Typical * contents[i]).ToArray();
            var most = check.MeasuredPartsPerMillion!.Value.High;
            var isOfOne = brought.Count(grams => grams > 0) == 1;
            for (var i = 0; i < brought.Length; i++)
            {
                if (brought[i] > 0)
                {
                    var ppm = $"the meat would get {Figures.Read(most, check.Limit.HighPartsPerMillion!.Value)} ppm";
                    var name = ratios.Lines[i].Line.Ingredient.Name;
                    LimitFaults.Note(
                        at.At(i), check, check.Load.Shares[0], greenGrams,
                        isOfOne ? $"{ppm}, all of it by {name}" : $"{ppm} in all, {Figures.Read(most * brought[i] / brought.Sum())} ppm of it by {name}",
                        bringer: isOfOne ? (name, contents[i]) : null);
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
