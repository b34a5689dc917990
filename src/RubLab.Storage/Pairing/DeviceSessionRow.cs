namespace RubLab.Storage.Pairing;

internal sealed class DeviceSessionRow
{
    public const string Columns =
        "kitchen_id AS KitchenId, id AS Id, name AS Name, scopes AS Scopes, created_at AS CreatedAt, last_used_at AS LastUsedAt, expires_at AS ExpiresAt";

    public string KitchenId { get; init; } = "";

    public string Id { get; init; } = "";

    public string Name { get; init; } = "";

    public string Scopes { get; init; } = "";

    public string CreatedAt { get; init; } = "";

    public string LastUsedAt { get; init; } = "";

    public string ExpiresAt { get; init; } = "";

    public DeviceSession ToSession() => new(
        KitchenId, Id, Name, Keys.Scopes.Split(Scopes), Timestamp.Read(CreatedAt), Timestamp.Read(LastUsedAt), Timestamp.Read(ExpiresAt));
}
