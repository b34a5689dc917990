namespace RubLab.Contracts.Pairing;

/// <summary>A code that pairs one device, shown this once.</summary>
/// <param name="Code">Eight signs in two groups; small letters, spaces and hyphens do not matter when it is entered.</param>
/// <param name="Scopes">What the device will be allowed to do.</param>
/// <param name="Name">What the device will be called, unless it names itself; absent where nobody said.</param>
/// <param name="ExpiresAt">From then on it opens nothing; it may end sooner, used or tried in vain too often.</param>
public sealed record PairingCodeResponse(string Code, IReadOnlyList<string> Scopes, string? Name, string ExpiresAt);
