using RubLab.Storage.Engines;

namespace RubLab.Storage.Keys;

/// <summary>Bearer keys, each tied to one kitchen and kept only as a hash.</summary>
public sealed class KeyStore
{
    private const string Insert = """
        INSERT INTO keys (kitchen_id, id, name, hash, scopes, created_at, revoked_at)
        VALUES (@kitchenId, @id, @name, @hash, @scopes, @Now, NULL)
        """;

    private readonly Session _session;

    internal KeyStore(Session session)
    {
        _session = session;
    }

    /// <summary>Draws a new key; its text is in the answer and nowhere else.</summary>
    public async Task<IssuedKey> IssueAsync(string kitchenId, string name, IReadOnlyCollection<string> scopes, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(name);
        var plainKey = PlainKey.Draw();
        var row = await _session.WriteReturningAsync<KeyRow>(
            $"{Insert} RETURNING {KeyRow.Columns}",
            new { kitchenId, id = NewId(), name, hash = PlainKey.Hash(plainKey), scopes = Scopes.Join(scopes), _session.Now },
            cancellation);
        return new IssuedKey(row!.ToKey(), plainKey);
    }

    /// <summary>The key of that text; null if it was never known or is revoked.</summary>
    public async Task<AccessKey?> FindAsync(string plainKey, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plainKey);
        var row = await _session.FirstAsync<KeyRow>(
            $"SELECT {KeyRow.Columns} FROM keys WHERE hash = @hash AND revoked_at IS NULL",
            new { hash = PlainKey.Hash(plainKey) },
            cancellation);
        return row?.ToKey();
    }

    /// <summary>All keys of a kitchen, the revoked ones too, oldest first.</summary>
    public Task<IReadOnlyList<AccessKey>> ListAsync(string kitchenId, CancellationToken cancellation = default) =>
        _session.ListAsync<KeyRow, AccessKey>(
            $"SELECT {KeyRow.Columns} FROM keys WHERE kitchen_id = @kitchenId ORDER BY created_at, id",
            new { kitchenId },
            row => row.ToKey(),
            cancellation);

    /// <summary>True if this call revoked it; false if there is no such key or it was revoked before.</summary>
    public async Task<bool> RevokeAsync(string kitchenId, string id, CancellationToken cancellation = default) =>
        await _session.WriteAsync(
            "UPDATE keys SET revoked_at = @Now WHERE kitchen_id = @kitchenId AND id = @id AND revoked_at IS NULL",
            new { kitchenId, id, _session.Now },
            cancellation) == 1;

    /// <summary>Whether any kitchen has a key that still opens it.</summary>
    public async Task<bool> AnyAsync(CancellationToken cancellation = default) =>
        await _session.NumberAsync("SELECT COUNT(*) FROM (SELECT id FROM keys WHERE revoked_at IS NULL LIMIT 1) AS usable", null, cancellation) > 0;

    private static string NewId() => Guid.CreateVersion7().ToString("n");
}
