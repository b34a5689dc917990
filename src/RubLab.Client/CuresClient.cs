using RubLab.Contracts.Curing;
using RubLab.Contracts.Json;

namespace RubLab.Client;

/// <summary>Cures for whole pieces and ground meat.</summary>
public sealed class CuresClient
{
    private readonly Wire _wire;

    internal CuresClient(Wire wire) => _wire = wire;

    /// <summary>What to weigh, what it comes to, and the legal levels.</summary>
    public Task<CureResponse> ComputeAsync(CureRequest request, CancellationToken cancellation = default) => _wire.PostAsync(
        "v1/cures", request, RubLabJson.Default.CureRequest, Wire.Answers.CureResponse, cancellation);
}
