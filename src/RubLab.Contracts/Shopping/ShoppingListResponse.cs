using RubLab.Contracts.Remarks;

namespace RubLab.Contracts.Shopping;

/// <summary>One list of what to buy.</summary>
public sealed record ShoppingListResponse
{
    /// <summary>By ingredient and form, in the order the sheets first name them.</summary>
    public required IReadOnlyList<ShoppingItemResponse> Ingredients { get; init; }

    /// <summary>By cut, in the order the plans first name them.</summary>
    public required IReadOnlyList<ShoppingMeatResponse> Meat { get; init; }

    /// <summary>What is paid at the till for all that has a price; absent where nothing has.</summary>
    public MoneyResponse? Outlay { get; init; }

    /// <summary>What goes into the sheets and plans: meat, and of the packs what is used; per piece and kilogram of the sheets' green meat, or without sheets of the plans' meat as bought.</summary>
    public CostResponse? Used { get; init; }

    public required IReadOnlyList<FindingResponse> Findings { get; init; }

    public required string DataVersion { get; init; }
}
