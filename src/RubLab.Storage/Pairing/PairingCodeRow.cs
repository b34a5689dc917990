namespace RubLab.Storage.Pairing;

internal sealed class PairingCodeRow
{
    public const string Columns =
        "kitchen_id AS KitchenId, id AS Id, hash AS Hash, scopes AS Scopes, device_name AS DeviceName, created_at AS CreatedAt, expires_at AS ExpiresAt";

    public string KitchenId { get; init; } = "";

    public string Id { get; init; } = "";

    public string Hash { get; init; } = "";

    public string Scopes { get; init; } = "";

    public string? DeviceName { get; init; }

    public string CreatedAt { get; init; } = "";

    public string ExpiresAt { get; init; } = "";

    public OpenCode ToCode() => new(
        KitchenId, Id, Keys.Scopes.Split(Scopes), DeviceName, Timestamp.Read(CreatedAt), Timestamp.Read(ExpiresAt));
}
