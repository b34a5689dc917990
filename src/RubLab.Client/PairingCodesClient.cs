using RubLab.Contracts.Json;
using RubLab.Contracts.Pairing;

namespace RubLab.Client;

/// <summary>Codes that let further devices in.</summary>
public sealed class PairingCodesClient
{
    private readonly Wire _wire;

    internal PairingCodesClient(Wire wire) => _wire = wire;

    /// <summary>A code for one device, good for five minutes; it is given this once. Needs the scope pair.</summary>
    /// <param name="name">What the device is to be called, unless it names itself.</param>
    /// <param name="scopes">What it may do; read and write if left out.</param>
    /// <param name="cancellation">Stops it; whether a code is open is then not known.</param>
    public Task<PairingCodeResponse> CreateAsync(
        string? name = null, IReadOnlyList<string>? scopes = null, CancellationToken cancellation = default) => _wire.PostAsync(
            "v1/pairing-codes", new PairingCodeRequest { Name = name, Scopes = scopes }, RubLabJson.Default.PairingCodeRequest,
            Wire.Answers.PairingCodeResponse, cancellation);
}
