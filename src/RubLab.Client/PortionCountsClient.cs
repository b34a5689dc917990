using RubLab.Contracts.Json;
using RubLab.Contracts.Serving;

namespace RubLab.Client;

/// <summary>From a pile of meat to portions.</summary>
public sealed class PortionCountsClient
{
    private readonly Wire _wire;

    internal PortionCountsClient(Wire wire) => _wire = wire;

    /// <summary>Whole portions of each line, at both ends and typically.</summary>
    public Task<PortionCountResponse> ComputeAsync(PortionCountRequest request, CancellationToken cancellation = default) => _wire.PostAsync(
        "v1/portion-counts", request, RubLabJson.Default.PortionCountRequest, Wire.Answers.PortionCountResponse, cancellation);
}
