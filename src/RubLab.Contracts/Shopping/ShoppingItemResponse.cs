using RubLab.Contracts.Quantities;
using RubLab.Contracts.Scaling;

namespace RubLab.Contracts.Shopping;

/// <summary>What to buy of one ingredient in one form.</summary>
public sealed record ShoppingItemResponse
{
    /// <summary>Ingredient id.</summary>
    public required string Ingredient { get; init; }

    /// <summary>Form id.</summary>
    public required string Form { get; init; }

    /// <summary>For all sheets together.</summary>
    public required Quantity Needed { get; init; }

    /// <summary>The same in cups and spoons; absent where the form has no density.</summary>
    public SpoonResponse? Spoon { get; init; }

    /// <summary>On hand; absent where nothing is.</summary>
    public Quantity? Stock { get; init; }

    /// <summary>Needed beyond the stock.</summary>
    public required Quantity ToBuy { get; init; }

    /// <summary>Whole packs for that; absent without a pack.</summary>
    public long? Packs { get; init; }

    /// <summary>What one pack holds; absent without a pack.</summary>
    public Quantity? PackSize { get; init; }

    /// <summary>On hand afterwards.</summary>
    public required Quantity LeftOver { get; init; }

    /// <summary>What the packs cost at the till; absent without a price.</summary>
    public MoneyResponse? Outlay { get; init; }

    /// <summary>What goes into the mixes, at the price of the pack; absent without a price.</summary>
    public MoneyResponse? Used { get; init; }
}
