using RubLab.Contracts.Json;
using RubLab.Contracts.Sauces;

namespace RubLab.Client;

/// <summary>Sauces by mass balance.</summary>
public sealed class SaucesClient
{
    private readonly Wire _wire;

    internal SaucesClient(Wire wire) => _wire = wire;

    /// <summary>What goes into the pot, how far it is boiled down, and how salty it ends.</summary>
    public Task<SauceResponse> ComputeAsync(SauceRequest request, CancellationToken cancellation = default) => _wire.PostAsync(
        "v1/sauces", request, RubLabJson.Default.SauceRequest, Wire.Answers.SauceResponse, cancellation);
}
