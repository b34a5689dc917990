using RubLab.Contracts.Brining;
using RubLab.Contracts.Json;

namespace RubLab.Client;

/// <summary>Liquids to inject and to soak in.</summary>
public sealed class BrinesClient
{
    private readonly Wire _wire;

    internal BrinesClient(Wire wire) => _wire = wire;

    /// <summary>How strong, how much to make, and what it leaves in the meat.</summary>
    public Task<BrineResponse> ComputeAsync(BrineRequest request, CancellationToken cancellation = default) => _wire.PostAsync(
        "v1/brines", request, RubLabJson.Default.BrineRequest, Wire.Answers.BrineResponse, cancellation);
}
