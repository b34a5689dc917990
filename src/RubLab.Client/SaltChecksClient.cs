using RubLab.Contracts.Json;
using RubLab.Contracts.Salt;

namespace RubLab.Client;

/// <summary>How salty a stack of treatments will be.</summary>
public sealed class SaltChecksClient
{
    private readonly Wire _wire;

    internal SaltChecksClient(Wire wire) => _wire = wire;

    /// <summary>The ledger of one pile line, weights not needed.</summary>
    public Task<SaltCheckResponse> ComputeAsync(SaltCheckRequest request, CancellationToken cancellation = default) => _wire.PostAsync(
        "v1/salt-checks", request, RubLabJson.Default.SaltCheckRequest, Wire.Answers.SaltCheckResponse, cancellation);
}
