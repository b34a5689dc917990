namespace RubLab.Storage.Pairing;

/// <summary>Plain SQL that SQLite and PostgreSQL both take.</summary>
internal static class PairingCodeSql
{
    /// <summary>Changes nothing, but holds the row until the unit ends: codes are given out and tried one after another.</summary>
    public const string TakeTurn = "UPDATE pairing_tries SET wrong = wrong";

    public const string CountWrongTry = "UPDATE pairing_tries SET wrong = wrong + 1";

    /// <summary>Where no code is open there is nothing to guess, and the next codes start afresh.</summary>
    public const string ForgetTriesOfNone = "UPDATE pairing_tries SET wrong = 0 WHERE NOT EXISTS (SELECT 1 FROM pairing_codes)";

    public const string DeleteExpired = "DELETE FROM pairing_codes WHERE expires_at <= @Now";

    public const string DeleteAllWhenTriedTooOften = "DELETE FROM pairing_codes WHERE (SELECT MAX(wrong) FROM pairing_tries) >= @most";

    public const string Delete = "DELETE FROM pairing_codes WHERE kitchen_id = @KitchenId AND id = @Id";

    public const string DeleteOldest = """
        DELETE FROM pairing_codes WHERE kitchen_id = @kitchenId AND id NOT IN (
            SELECT id FROM pairing_codes WHERE kitchen_id = @kitchenId ORDER BY created_at DESC, id DESC LIMIT @kept)
        """;

    public const string All = $"SELECT {PairingCodeRow.Columns} FROM pairing_codes";

    public const string Insert = $"""
        INSERT INTO pairing_codes (kitchen_id, id, hash, scopes, device_name, created_at, expires_at)
        VALUES (@kitchenId, @id, @hash, @scopes, @deviceName, @Now, @expiresAt)
        RETURNING {PairingCodeRow.Columns}
        """;
}
