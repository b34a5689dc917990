namespace RubLab.Storage.Keys;

/// <summary>What is known of a key; never the key itself.</summary>
public sealed record AccessKey(
    string KitchenId, string Id, string Name, IReadOnlyList<string> Scopes, DateTimeOffset CreatedAt, DateTimeOffset? RevokedAt);
