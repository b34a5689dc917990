namespace RubLab.Storage.Pairing;

/// <summary>A paired device; never its token.</summary>
/// <param name="KitchenId">The kitchen it opens.</param>
/// <param name="Id">Its id there.</param>
/// <param name="Name">For people.</param>
/// <param name="Scopes">What it may do.</param>
/// <param name="CreatedAt">When it was paired.</param>
/// <param name="LastUsedAt">When it was last seen, to within <see cref="DeviceSessionStore.RenewedAfter"/>.</param>
/// <param name="ExpiresAt">From then on it opens nothing.</param>
public sealed record DeviceSession(
    string KitchenId,
    string Id,
    string Name,
    IReadOnlyList<string> Scopes,
    DateTimeOffset CreatedAt,
    DateTimeOffset LastUsedAt,
    DateTimeOffset ExpiresAt);
