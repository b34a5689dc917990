using RubLab.Contracts.Json;
using RubLab.Contracts.Shopping;

namespace RubLab.Client;

/// <summary>What to buy for several sheets and plans.</summary>
public sealed class ShoppingListsClient
{
    private readonly Wire _wire;

    internal ShoppingListsClient(Wire wire) => _wire = wire;

    /// <summary>Ingredients and meat, in whole packs and pieces, with what they cost.</summary>
    public Task<ShoppingListResponse> ComputeAsync(ShoppingListRequest request, CancellationToken cancellation = default) => _wire.PostAsync(
        "v1/shopping-lists", request, RubLabJson.Default.ShoppingListRequest, Wire.Answers.ShoppingListResponse, cancellation);
}
