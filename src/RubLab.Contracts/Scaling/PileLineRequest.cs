using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Scaling;

/// <summary>Pieces of one cut: exactly one of <c>pieces</c>, <c>count</c> with <c>weightEach</c>, <c>count</c> with <c>totalWeight</c>.</summary>
public sealed record PileLineRequest
{
    /// <summary>Unique in the pile; the cut's id if left out.</summary>
    public string? Id { get; init; }

    public string? Cut { get; init; }

    public IReadOnlyList<PieceRequest?>? Pieces { get; init; }

    public int? Count { get; init; }

    public QuantityRequest? WeightEach { get; init; }

    public QuantityRequest? TotalWeight { get; init; }

    /// <summary>green or purchase; green if left out.</summary>
    public string? WeightIs { get; init; }

    /// <summary>Percent of purchase weight; only with purchase weights. Without it the sheet is planned.</summary>
    public QuantityRequest? TrimLoss { get; init; }

    /// <summary>Bone, percent of green weight.</summary>
    public QuantityRequest? Bone { get; init; }

    /// <summary>Solution the packer added, percent of raw weight.</summary>
    public QuantityRequest? AddedSolution { get; init; }

    /// <summary>Cooked over green weight, percent.</summary>
    public EstimateRequest? CookYield { get; init; }

    /// <summary>Salt that stays in the meat through cooking, percent.</summary>
    public EstimateRequest? KeptInCooking { get; init; }

    public bool? JuicesReturned { get; init; }

    /// <summary>One portion of cooked meat; the sheet's portion if left out.</summary>
    public QuantityRequest? Portion { get; init; }
}
