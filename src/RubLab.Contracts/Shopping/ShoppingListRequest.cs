using RubLab.Contracts.Scaling;
using RubLab.Contracts.Serving;

namespace RubLab.Contracts.Shopping;

/// <summary>Batch sheets and purchase plans, to be turned into one list of what to buy.</summary>
public sealed record ShoppingListRequest
{
    /// <summary>Up to 20; their mixes are summed.</summary>
    public IReadOnlyList<BatchSheetRequest?>? BatchSheets { get; init; }

    /// <summary>Up to 20; their meat stands on the list, and the mixes of formulas they name. Send a plan's formulas or its sheet, not both.</summary>
    public IReadOnlyList<PurchasePlanRequest?>? PurchasePlans { get; init; }

    /// <summary>At most one for each ingredient and form.</summary>
    public IReadOnlyList<PackRequest?>? Packs { get; init; }

    /// <summary>Taken off before packs are counted; several of one ingredient and form are summed.</summary>
    public IReadOnlyList<StockRequest?>? Stock { get; init; }

    /// <summary>Portions the cost is divided by; the guests of the plans if left out.</summary>
    public int? Portions { get; init; }
}
