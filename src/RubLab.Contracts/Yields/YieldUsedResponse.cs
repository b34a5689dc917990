using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Contracts.Serving;
using RubLab.Core.Serving;
using RubLab.Core.Yields;

namespace RubLab.Contracts.Yields;

/// <summary>The yield an answer stands on.</summary>
/// <param name="Origin">stated, own, reference or purchase-yield.</param>
/// <param name="EdiblePerPurchase">Cooked meat without bone of the weight as bought, percent.</param>
/// <param name="TrimLoss">Counted from purchase to green weight; absent where the yield has it within.</param>
/// <param name="Cooking">Cooked over green weight, or the yield straight from purchase weight.</param>
/// <param name="Bone">Counted of green weight; absent for meat without bone, or where the yield has it within.</param>
public sealed record YieldUsedResponse(
    string Origin, QuantityBand EdiblePerPurchase, CountedFigure? TrimLoss, CountedFigure Cooking, CountedFigure? Bone)
{
    public static YieldUsedResponse From(YieldChoice choice)
    {
        return new YieldUsedResponse(
            Vocabulary.YieldOrigins[choice.Origin], QuantityBand.From(choice.Yield.EdiblePerPurchase.Times(100), "%", Rounded.Estimate),
            Figure(choice.Trim), Figure(choice.Cooking)!, Figure(choice.Bone));

        static CountedFigure? Figure(CountedBand? counted) => counted is null ? null : CountedFigure.From(counted, "%");
    }
}
