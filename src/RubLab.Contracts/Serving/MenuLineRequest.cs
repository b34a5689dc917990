using RubLab.Contracts.Quantities;
using RubLab.Contracts.Shopping;

namespace RubLab.Contracts.Serving;

/// <summary>One cut of a menu and its part of every portion.</summary>
public sealed record MenuLineRequest
{
    /// <summary>Unique in the menu; the cut's id if left out.</summary>
    public string? Id { get; init; }

    /// <summary>Cut id.</summary>
    public string? Cut { get; init; }

    /// <summary>Percent of the portion; those of a menu sum to 100. A menu of one cut may leave it out.</summary>
    public QuantityRequest? Share { get; init; }

    /// <summary>Way of cooking; the cut's default if left out.</summary>
    public string? Method { get; init; }

    /// <summary>chain (trim, bone and cooking yield) or purchase-yield (a published yield straight from purchase weight); chain where its yield is known.</summary>
    public string? PlannedBy { get; init; }

    /// <summary>Loss from purchase to green weight, percent; the cut's band if left out.</summary>
    public EstimateRequest? TrimLoss { get; init; }

    /// <summary>Cooked over green weight, bone in both, percent; the kitchen's own or the reference's if left out.</summary>
    public EstimateRequest? CookYield { get; init; }

    /// <summary>Bone, percent of green weight; the cut's band if left out.</summary>
    public EstimateRequest? Bone { get; init; }

    /// <summary>Purchase weight of one piece; the cut's band if left out, and where there is none the meat is bought by weight.</summary>
    public QuantityRequest? PieceWeight { get; init; }

    /// <summary>For a weight, or for a piece.</summary>
    public PriceRequest? Price { get; init; }

    /// <summary>Stored formulas that go on it, for the batch sheet.</summary>
    public IReadOnlyList<MenuFormulaRequest?>? Formulas { get; init; }
}
