using RubLab.Contracts.Reading;
using RubLab.Contracts.Shopping;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Serving;
using RubLab.Core.Yields;

namespace RubLab.Contracts.Serving;

/// <summary>Notes what a plan had to assume, and where it may fall short.</summary>
internal static class PlanFindings
{
    public static void Notice(PurchasePlan plan, PurchasePlanRequest request, Catalogue catalogue, FindingLog findings, Place at)
    {
        var unit = UnitTable.Get(request.BoughtIn ?? Vocabulary.BoughtIn[BoughtIn.Kilogram]);
        for (var i = 0; i < plan.Lines.Count; i++)
        {
            var line = plan.Lines[i];
            var asked = request.Menu![i]!;
            var pointer = at.At("menu").At(i).Pointer;
            NoticeYield(line.Line.Id, line.Line.Cut, line.Line.Choice, pointer, findings);
            if (line.Line.PieceGrams is { Citation: { } citation } piece)
            {
                findings.Add(
                    "piece-weight-assumed", pointer, citation.SourceId,
                    ("line", Said.Line(line.Line.Id, line.Line.Cut)), ("low", Weight(piece.Band.Low, unit)), ("typical", Weight(piece.Band.Typical, unit)),
                    ("high", Weight(piece.Band.High, unit)));
            }

            if (plan.Request.End == PurchaseEnd.Typical && line.ShortfallGrams.High > 0)
            {
                findings.Add(
                    "may-fall-short", pointer, null,
                    ("line", Said.Line(line.Line.Id, line.Line.Cut)), ("missing", Weight(Math.Round(line.ShortfallGrams.High), unit)),
                    ("safe", Weight(Math.Round(line.SafeGrams), unit)));
            }

            NoticeDisagreement(line, asked.Method, pointer, catalogue, findings);
        }
    }

    /// <summary>Notes the defaults a yield stands on.</summary>
    public static void NoticeYield(string id, Cut cut, YieldChoice choice, string pointer, FindingLog findings)
    {
        var line = Said.Line(id, cut);
        if (choice.Own is { } own)
        {
            NoticeOwn(id, cut, own, pointer, findings);
        }
        else if (choice.Cooking.Citation is { } cooking)
        {
            findings.Add(
                "plan-yield-assumed", pointer, cooking.SourceId,
                ("line", line), ("low", choice.Cooking.Band.Low), ("typical", choice.Cooking.Band.Typical), ("high", choice.Cooking.Band.High));
        }

        if (choice.Trim is { Band.High: > 0, Citation: { } source } trim && choice.Own is not { IsOfPurchase: true })
        {
            findings.Add(
                "plan-trim-assumed", pointer, source.SourceId,
                ("line", line), ("low", trim.Band.Low), ("typical", trim.Band.Typical), ("high", trim.Band.High));
        }

        if (choice.Bone is { Citation: { } known } bone)
        {
            findings.Add(
                "plan-bone-assumed", pointer, known.SourceId,
                ("line", line), ("low", bone.Band.Low), ("typical", bone.Band.Typical), ("high", bone.Band.High));
        }
    }

    /// <summary>Notes that the kitchen's own records stood in for the reference.</summary>
    public static void NoticeOwn(string id, Cut cut, OwnYield own, string pointer, FindingLog findings) => findings.Add(
        "own-yield-used", pointer, OwnYield.SourceId,
        ("line", Said.Line(id, cut)), ("low", Math.Round(own.Percent.Low, 1)), ("high", Math.Round(own.Percent.High, 1)),
        ("count", new Said((double)own.Count, own.Citation.Locator)),
        ("reference", own.ReferencePercent is { } reference ? Percent(reference.Typical) : new Said("no known", "nothing")));

    private static void NoticeDisagreement(PurchaseLine line, string? method, string pointer, Catalogue catalogue, FindingLog findings)
    {
        var percent = line.Line.Choice.Yield.EdiblePerPurchase.Times(100);
        if (line.Line.Choice.Origin != YieldOrigin.PurchaseYield
            && YieldChoice.Published(line.Line.Cut, method, catalogue) is { } published && !percent.Overlaps(published.Band))
        {
            findings.Add(
                "yields-disagree", pointer, published.Citation.SourceId,
                ("line", Said.Line(line.Line.Id, line.Line.Cut)), ("low", Math.Round(percent.Low, 1)), ("high", Math.Round(percent.High, 1)), ("publishedLow", published.Band.Low), ("publishedHigh", published.Band.High));
        }
    }

    private static Said Percent(double percent) =>
        new(Math.Round(percent, 1), $"{Figures.Read(percent)} %");

    // Grams for a program; for the cook what the scale at the butcher's shows.
    private static Said Weight(double grams, Unit unit)
    {
        var weight = unit.FromBase(grams);
        return new Said(grams, $"{Figures.Exact(Math.Round(weight, weight < 1 ? 2 : 1))} {unit.Symbol}");
    }
}
