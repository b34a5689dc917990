using RubLab.Contracts.Quantities;
using RubLab.Contracts.Shopping;
using RubLab.Contracts.Yields;

namespace RubLab.Contracts.Serving;

/// <summary>What to buy of one cut, and what it comes to.</summary>
public sealed record PurchaseLineResponse
{
    public required string Id { get; init; }

    /// <summary>Cut id.</summary>
    public required string Cut { get; init; }

    /// <summary>Percent of every portion.</summary>
    public required Quantity Share { get; init; }

    /// <summary>Of this cut for one guest, in the mean.</summary>
    public required Quantity Portion { get; init; }

    /// <summary>Cooked meat without bone that is to be there, with the reserve.</summary>
    public required Quantity EdibleNeeded { get; init; }

    /// <summary>Cooked weight for that, with bone; absent where the yield skips it.</summary>
    public QuantityBand? CookedNeeded { get; init; }

    /// <summary>Trimmed weight for that; absent where the yield skips it.</summary>
    public QuantityBand? GreenNeeded { get; init; }

    /// <summary>Purchase weight for that, before rounding up.</summary>
    public required QuantityBand PurchaseNeeded { get; init; }

    /// <summary>Whole pieces to buy: of the heaviest, of typical ones, of the lightest; absent for meat bought by weight.</summary>
    public CountBand? Pieces { get; init; }

    /// <summary>What one piece is taken to weigh; absent for meat bought by weight.</summary>
    public CountedFigure? PieceWeight { get; init; }

    /// <summary>What to buy: the typical pieces' weight, or the weight to ask for.</summary>
    public required Quantity PurchaseWeight { get; init; }

    /// <summary>Purchase weight for 100 portions, up to the next tenth of the unit.</summary>
    public required Quantity PerHundredPortions { get; init; }

    /// <summary>What the reckoning stands on.</summary>
    public required YieldUsedResponse Yield { get; init; }

    /// <summary>The same by a published yield straight from purchase weight; absent where nobody published one.</summary>
    public CrossCheckResponse? CrossCheck { get; init; }

    /// <summary>Cooked meat without bone from what is bought.</summary>
    public required QuantityBand Edible { get; init; }

    /// <summary>Portions of this cut from what is bought, whole ones.</summary>
    public required CountBand Portions { get; init; }

    /// <summary>Edible meat beyond what the guests eat.</summary>
    public required QuantityBand LeftOver { get; init; }

    /// <summary>Edible meat missing for what the guests eat.</summary>
    public required QuantityBand Shortfall { get; init; }

    /// <summary>At the typical weight; absent without a price.</summary>
    public CostResponse? Cost { get; init; }
}
