using RubLab.Contracts.Quantities;
using RubLab.Contracts.Remarks;
using RubLab.Contracts.Shopping;

namespace RubLab.Contracts.Serving;

/// <summary>What to buy for the guests.</summary>
public sealed record PurchasePlanResponse
{
    /// <summary>How many.</summary>
    public required long Guests { get; init; }

    /// <summary>Cooked meat without bone for one guest, in the mean.</summary>
    public required Quantity Portion { get; init; }

    /// <summary>typical or safe.</summary>
    public required string BuyFor { get; init; }

    /// <summary>The menu's lines in their order.</summary>
    public required IReadOnlyList<PurchaseLineResponse> Lines { get; init; }

    /// <summary>All that is bought.</summary>
    public required Quantity PurchaseWeight { get; init; }

    /// <summary>Cooked meat without bone of all that is bought.</summary>
    public required QuantityBand Edible { get; init; }

    /// <summary>Guests fed, if who misses one cut takes another.</summary>
    public required CountBand Fed { get; init; }

    /// <summary>All that has a price; absent where nothing has.</summary>
    public CostResponse? Cost { get; init; }

    /// <summary>The body of a batch sheet for it; absent where the menu names no formula.</summary>
    public PlannedSheet? BatchSheet { get; init; }

    public required IReadOnlyList<FindingResponse> Findings { get; init; }

    public required string DataVersion { get; init; }
}
