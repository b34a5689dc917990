using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Scaling;

/// <summary>Pieces of one cut: exactly one of <c>pieces</c>, <c>count</c> with <c>weightEach</c>, <c>count</c> with <c>totalWeight</c>.</summary>
public sealed record PileLineRequest
{
    /// <summary>Unique in the pile; the cut's id if left out.</summary>
    public string? Id { get; init; }

    /// <summary>Cut id.</summary>
    public string? Cut { get; init; }

    /// <summary>Each piece weighed.</summary>
    public IReadOnlyList<PieceRequest?>? Pieces { get; init; }

    /// <summary>How many equal pieces; with weightEach or totalWeight.</summary>
    public int? Count { get; init; }

    /// <summary>What each weighs; with count.</summary>
    public QuantityRequest? WeightEach { get; init; }

    /// <summary>What they weigh together; with count.</summary>
    public QuantityRequest? TotalWeight { get; init; }

    /// <summary>green or purchase; green if left out.</summary>
    public string? WeightIs { get; init; }

    /// <summary>Percent of purchase weight; only with purchase weights. Without it the sheet is planned.</summary>
    public QuantityRequest? TrimLoss { get; init; }

    /// <summary>Bone, percent of green weight.</summary>
    public QuantityRequest? Bone { get; init; }

    /// <summary>Skin, percent of green weight; the legal levels of bacon are of the weight without it.</summary>
    public QuantityRequest? Skin { get; init; }

    /// <summary>Solution the packer added, percent of raw weight.</summary>
    public QuantityRequest? AddedSolution { get; init; }

    /// <summary>Sodium in 100 g of the raw meat, as its pack states it.</summary>
    public QuantityRequest? SodiumPer100g { get; init; }

    /// <summary>Thickness of a slice, to learn how salty centre and end slices are before the salt has travelled.</summary>
    public QuantityRequest? SliceThickness { get; init; }

    /// <summary>What is made of the meat, where that is not what its cut usually becomes: a product of the salt ranges and limits, such as fresh-sausage or bacon.</summary>
    public string? Product { get; init; }

    /// <summary>True: blades or needles went through the meat, so it is no longer whole inside.</summary>
    public bool? BladeTenderised { get; init; }

    /// <summary>When the pieces were weighed back: undrained (at once: what was put in) or drained (what stays).</summary>
    public string? WeighedBackIs { get; init; }

    /// <summary>Cooked over green weight of the whole piece, bone included, percent.</summary>
    public EstimateRequest? CookYield { get; init; }

    /// <summary>Salt that stays in the meat through cooking, percent.</summary>
    public EstimateRequest? KeptInCooking { get; init; }

    /// <summary>True: what cooks out is eaten with the meat, so all salt is kept. Not with keptInCooking.</summary>
    public bool? JuicesReturned { get; init; }

    /// <summary>One portion of cooked meat; the sheet's portion if left out.</summary>
    public QuantityRequest? Portion { get; init; }
}
