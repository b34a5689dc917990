using RubLab.Contracts.Service;

namespace RubLab.Client;

/// <summary>The server itself.</summary>
public sealed class HealthClient
{
    private readonly Wire _wire;

    internal HealthClient(Wire wire) => _wire = wire;

    /// <summary>Whether the server and its store answer; needs no key.</summary>
    public Task<HealthResponse> GetAsync(CancellationToken cancellation = default) =>
        _wire.GetAsync("health", Wire.Answers.HealthResponse, cancellation);
}
