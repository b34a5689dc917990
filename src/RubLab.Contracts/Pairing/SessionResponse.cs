namespace RubLab.Contracts.Pairing;

/// <summary>A paired device.</summary>
public sealed record SessionResponse
{
    /// <summary>What unpairing it asks for; never its token.</summary>
    public required string Id { get; init; }

    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>What it may do.</summary>
    public required IReadOnlyList<string> Scopes { get; init; }

    /// <summary>Whether it is the one that asks.</summary>
    public required bool IsCurrent { get; init; }

    /// <summary>When it was paired.</summary>
    public required string CreatedAt { get; init; }

    /// <summary>When it was last seen, to within an hour.</summary>
    public required string LastUsedAt { get; init; }

    /// <summary>When it will no longer be paired, if it is not used before.</summary>
    public required string ExpiresAt { get; init; }

    /// <summary>Of the device that asks, over plain http: what that means for it, in words to show. Absent over TLS.</summary>
    public string? Warning { get; init; }
}
