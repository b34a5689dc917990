namespace RubLab.Contracts.Pairing;

/// <summary>A code for one more device.</summary>
public sealed record PairingCodeRequest
{
    /// <summary>What the device may do: read, and write and pair where given; read and write if left out. Whoever asks needs each of them too.</summary>
    public IReadOnlyList<string?>? Scopes { get; init; }

    /// <summary>What the device is to be called, unless it names itself.</summary>
    public string? Name { get; init; }
}
