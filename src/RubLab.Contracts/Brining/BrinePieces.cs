using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Faults;
using RubLab.Core.Quantities;

namespace RubLab.Contracts.Brining;

/// <summary>The meat of a liquid: all of it, and the weights of its pieces where each was given.</summary>
/// <param name="MeatGrams">Green weight of all of it.</param>
/// <param name="Count">How many pieces.</param>
/// <param name="Grams">The green weight of each; none where they are alike.</param>
internal sealed record BrinePieces(double MeatGrams, int Count, IReadOnlyList<double>? Grams)
{
    public static BrinePieces? Read(BrineRequest request, Place at)
    {
        if (request.PieceWeights is { } weights)
        {
            if (request.Meat is not null || request.Pieces is not null)
            {
                at.At("pieceWeights").Fault("one-or-the-other", "Give either the weight of each piece, or meat and pieces.");
            }

            return OfEach(weights, at.At("pieceWeights"));
        }

        var meat = Reader.Amount(request.Meat, at.At("meat"), Bounds.MeatGrams, isRequired: true, Dimension.Mass);
        var count = request.Pieces ?? 1;
        if (count is < 1 or > BrineRequest.MostPieces)
        {
            at.At("pieces").Fault(
                "out-of-range", $"{count} is out of range: from 1 to {BrineRequest.MostPieces} pieces.",
                ("value", (double)count), ("lowest", 1d), ("highest", (double)BrineRequest.MostPieces));
        }

        return meat is { } grams ? new BrinePieces(grams, count, null) : null;
    }

    private static BrinePieces? OfEach(IReadOnlyList<QuantityRequest?> weights, Place at)
    {
        if (!Listed.Holds(weights, BrineRequest.MostPieceWeights, "weight", "weights", at))
        {
            return null;
        }

        var grams = new List<double>();
        for (var i = 0; i < weights.Count; i++)
        {
            if (Reader.Amount(weights[i], at.At(i), Bounds.MeatGrams, isRequired: true, Dimension.Mass) is { } read)
            {
                grams.Add(read);
            }
        }

        var sum = grams.Sum();
        if (sum > Bounds.MeatGrams.Highest)
        {
            at.Fault(
                "out-of-range", $"The pieces weigh {sum:0} g together: up to {Bounds.MeatGrams.Highest:0} g of meat.",
                ("value", sum), ("highest", Bounds.MeatGrams.Highest), ("unit", "g"));
        }

        return grams.Count == weights.Count ? new BrinePieces(sum, grams.Count, grams) : null;
    }
}
