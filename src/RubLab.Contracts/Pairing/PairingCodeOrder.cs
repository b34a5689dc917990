namespace RubLab.Contracts.Pairing;

/// <summary>What a sound request for a code comes to.</summary>
/// <param name="Scopes">In the order of <see cref="AccessScope"/>, each once.</param>
/// <param name="Name">Null where the device is to name itself.</param>
public sealed record PairingCodeOrder(IReadOnlyList<string> Scopes, string? Name);
