using RubLab.Contracts.Json;
using RubLab.Contracts.Serving;

namespace RubLab.Client;

/// <summary>From guests to what to buy.</summary>
public sealed class PurchasePlansClient
{
    private readonly Wire _wire;

    internal PurchasePlansClient(Wire wire) => _wire = wire;

    /// <summary>What to buy of each cut, with left-overs and cost, and the body of a batch sheet where formulas are named.</summary>
    public Task<PurchasePlanResponse> ComputeAsync(PurchasePlanRequest request, CancellationToken cancellation = default) => _wire.PostAsync(
        "v1/purchase-plans", request, RubLabJson.Default.PurchasePlanRequest, Wire.Answers.PurchasePlanResponse, cancellation);
}
