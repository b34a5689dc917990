namespace RubLab.Storage.Pairing;

/// <summary>Plain SQL that SQLite and PostgreSQL both take.</summary>
internal static class DeviceSessionSql
{
    public const string Insert = $"""
        INSERT INTO device_sessions (kitchen_id, id, name, hash, scopes, created_at, last_used_at, expires_at)
        VALUES (@kitchenId, @id, @name, @hash, @scopes, @Now, @Now, @expiresAt)
        RETURNING {DeviceSessionRow.Columns}
        """;

    public const string Find = $"SELECT {DeviceSessionRow.Columns} FROM device_sessions WHERE hash = @hash AND expires_at > @Now";

    public const string Renew = """
        UPDATE device_sessions SET last_used_at = @Now, expires_at = @expiresAt
        WHERE kitchen_id = @kitchenId AND id = @id AND expires_at > @Now
        """;

    public const string Delete = "DELETE FROM device_sessions WHERE kitchen_id = @kitchenId AND id = @id";

    public const string DeleteExpired = "DELETE FROM device_sessions WHERE expires_at <= @Now";

    public static string List(bool afterPosition) => $"""
        SELECT {DeviceSessionRow.Columns} FROM device_sessions
        WHERE kitchen_id = @kitchenId AND expires_at > @Now{(afterPosition ? " AND (created_at, id) > (@createdAt, @id)" : "")}
        ORDER BY created_at, id LIMIT @limit
        """;
}
