namespace RubLab.Storage.Keys;

internal sealed class KeyRow
{
    public const string Columns =
        "kitchen_id AS KitchenId, id AS Id, name AS Name, scopes AS Scopes, created_at AS CreatedAt, revoked_at AS RevokedAt";

    public string KitchenId { get; init; } = "";

    public string Id { get; init; } = "";

    public string Name { get; init; } = "";

    public string Scopes { get; init; } = "";

    public string CreatedAt { get; init; } = "";

    public string? RevokedAt { get; init; }

    public AccessKey ToKey() => new(
        KitchenId,
        Id,
        Name,
        Keys.Scopes.Split(Scopes),
        Timestamp.Read(CreatedAt),
        RevokedAt is null ? null : Timestamp.Read(RevokedAt));
}
