using RubLab.Storage.Engines;

namespace RubLab.Storage.Replays;

/// <summary>Answers kept for requests that are sent twice; saved in the unit of work whose result they describe.</summary>
public sealed class ReplayStore
{
    private readonly Session _session;

    internal ReplayStore(Session session)
    {
        _session = session;
    }

    public async Task<Replay?> FindAsync(string kitchenId, string key, CancellationToken cancellation = default)
    {
        await _session.HoldAsync(kitchenId, cancellation);
        var row = await _session.FirstAsync<ReplayRow>(
            $"SELECT {ReplayRow.Columns} FROM replays WHERE kitchen_id = @kitchenId AND idempotency_key = @key",
            new { kitchenId, key },
            cancellation);
        return row?.ToReplay();
    }

    /// <summary>False if the key has an answer already: the same request was faster, so drop this unit of work and give that answer.</summary>
    public async Task<bool> SaveAsync(
        string kitchenId, string key, string requestHash, StoredAnswer answer, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(key);
        ArgumentNullException.ThrowIfNull(answer);
        await _session.HoldAsync(kitchenId, cancellation);
        return await _session.WriteAsync(
            """
            INSERT INTO replays (kitchen_id, idempotency_key, request_hash, status, headers, body, created_at)
            VALUES (@kitchenId, @key, @requestHash, @Status, @Headers, @Body, @Now)
            ON CONFLICT (kitchen_id, idempotency_key) DO NOTHING
            """,
            new { kitchenId, key, requestHash, answer.Status, answer.Headers, answer.Body, _session.Now },
            cancellation) == 1;
    }

    /// <summary>Forgets the answers of all kitchens from before an instant, and says how many.</summary>
    public Task<int> DeleteOlderThanAsync(DateTimeOffset instant, CancellationToken cancellation = default) =>
        _session.WriteAsync("DELETE FROM replays WHERE created_at < @limit", new { limit = Timestamp.Write(instant) }, cancellation);
}
