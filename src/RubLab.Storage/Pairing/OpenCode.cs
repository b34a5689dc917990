namespace RubLab.Storage.Pairing;

/// <summary>What a pairing code gives to whoever enters it; never the code itself.</summary>
/// <param name="KitchenId">The kitchen it opens.</param>
/// <param name="Id">Of the code, for the log of whoever gave it out.</param>
/// <param name="Scopes">What the device may do.</param>
/// <param name="DeviceName">What the device is to be called, unless it names itself.</param>
/// <param name="CreatedAt">When it was given out.</param>
/// <param name="ExpiresAt">From then on it opens nothing.</param>
public sealed record OpenCode(
    string KitchenId, string Id, IReadOnlyList<string> Scopes, string? DeviceName, DateTimeOffset CreatedAt, DateTimeOffset ExpiresAt);
