using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Contracts.Remarks;
using RubLab.Contracts.Scaling;
using RubLab.Contracts.Shopping;
using RubLab.Contracts.Yields;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Scaling;
using RubLab.Core.Serving;
using RubLab.Core.Shopping;
using RubLab.Core.Yields;

namespace RubLab.Contracts.Serving;

/// <summary>Counts the portions of a pile from what was posted.</summary>
public static class PortionCounts
{
    public static Result<PortionCountResponse> Compute(PortionCountRequest request, Catalogue catalogue)
    {
        var log = new FaultLog();
        var at = log.Root;
        var portion = AppetiteReader.Grams(request.Portion, request.Appetite, catalogue.Serving, at);
        var money = new MoneyReader(catalogue.Serving);
        var paid = money.Read(request.Paid, at.At("paid"));
        var pile = new PileReader(catalogue, portion, needsWeights: true).Read(request.Pile, at.At("pile"));
        var findings = new FindingLog(catalogue);
        var lines = new List<PortionLineResponse>();
        var edible = Band.Exact(0);
        var pieces = 0;
        for (var i = 0; i < pile.Count; i++)
        {
            if (pile[i] is { } line && Count(line, request.Pile![i]!, catalogue, findings, at.At("pile").At(i)) is var (response, count))
            {
                lines.Add(response);
                edible = edible.Plus(count.EdibleGrams);
                pieces += line.WeighedGrams.Count;
            }
        }

        if (!log.IsClean)
        {
            return log.ResultOf<PortionCountResponse>(null);
        }

        var portions = new CountBand(lines.Sum(l => l.Portions.Low), lines.Sum(l => l.Portions.Typical), lines.Sum(l => l.Portions.High));
        return log.ResultOf(new PortionCountResponse
        {
            Lines = lines,
            Portions = portions,
            Edible = PlanWriter.Weights(edible),
            Cost = paid is { } total ? CostResponse.From(Cost.Of(money.Currency!, total, portions.Typical, pieces, edible.Typical)) : null,
            Findings = FindingResponse.From(findings),
            DataVersion = catalogue.Version,
        });
    }

    private static (PortionLineResponse Response, PortionCount Count)? Count(
        PileLine line, PileLineRequest asked, Catalogue catalogue, FindingLog findings, Place at)
    {
        var isGreen = line.WeightIs == WeightBasis.Green;
        var choice = YieldReader.Choose(
            line.Cut,
            new YieldRequest
            {
                TrimPercent = isGreen ? Band.Exact(0) : line.TrimLossPercent is { } trim ? Band.Exact(trim) : null,
                CookYieldPercent = asked.CookYield is null ? null : line.CookYieldPercent,
                BonePercent = line.BonePercent is { } bone ? Band.Exact(bone) : null,
                IsOfGreen = isGreen,
            },
            catalogue, at);
        if (choice is null)
        {
            return null;
        }

        var grams = line.WeighedGrams.Sum();
        if (line.PortionGrams is not { } portion)
        {
            return null;
        }

        if (portion > grams)
        {
            at.At("portion").Fault("portion-too-large", "One portion weighs more than all of this meat.", ("pile", grams), ("unit", "g"));
            return null;
        }

        PlanFindings.NoticeYield(line.Id, line.Cut, choice, at.Pointer, findings);
        var count = PortionCount.Of(grams, choice.Yield, portion);
        return (new PortionLineResponse
        {
            Id = line.Id,
            Cut = line.Cut.Id,
            Pieces = line.WeighedGrams.Count,
            Weight = new Quantity(Rounded.Exact(grams), "g"),
            WeightIs = Vocabulary.Weights[line.WeightIs],
            Cooked = count.CookedGrams is { } cooked ? PlanWriter.Weights(cooked) : null,
            Edible = PlanWriter.Weights(count.EdibleGrams),
            Portion = new Quantity(Rounded.Exact(portion), "g"),
            Portions = new CountBand(count.Low, count.Typical, count.High),
            Yield = YieldUsedResponse.From(choice),
        }, count);
    }
}
