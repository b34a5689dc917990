using RubLab.Storage.Changes;
using RubLab.Storage.Engines;

namespace RubLab.Storage.OwnNumbers;

/// <summary>
/// The numbers of one kind that a kitchen has measured itself: densities, or cooking yields. Each write also adds to its change feed
/// and raises its revision of that kind, which every figure computed from such a number depends on.
/// </summary>
public sealed class OwnNumberStore<TKey>
    where TKey : IOwnNumberKey<TKey>
{
    private readonly OwnNumberTable _table;
    private readonly Session _session;
    private readonly ChangeStore _changes;

    internal OwnNumberStore(OwnNumberTable table, Session session, ChangeStore changes)
    {
        _table = table;
        _session = session;
        _changes = changes;
    }

    private OwnNumberSql Sql => _table.Sql;

    /// <summary>The number; null if there is none or it was deleted.</summary>
    public async Task<StoredOwnNumber<TKey>?> GetAsync(string kitchenId, TKey key, CancellationToken cancellation = default)
    {
        await _session.HoldAsync(kitchenId, cancellation);
        var row = await _session.FirstAsync<OwnNumberRow>(Sql.Get, new { kitchenId, key.First, key.Second }, cancellation);
        return row?.ToStored<TKey>();
    }

    /// <summary>By the ids of the key; ask for one more than a page holds to learn if another follows.</summary>
    /// <param name="kitchenId">Whose numbers.</param>
    /// <param name="limit">At most so many; at least 1.</param>
    /// <param name="after">Where the page before ended, even if that one has been deleted since; null for the first page.</param>
    /// <param name="cancellation">Stops the query.</param>
    public Task<IReadOnlyList<StoredOwnNumber<TKey>>> ListAsync(
        string kitchenId, int limit, TKey? after = default, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(limit, 1);
        return after is null
            ? ListAsync(kitchenId, Sql.FirstPage, new { kitchenId, limit }, cancellation)
            : ListAsync(kitchenId, Sql.NextPage, new { kitchenId, after.First, after.Second, limit }, cancellation);
    }

    /// <summary>All of a kitchen, in the order of the list: there is at most one for each key of the reference data.</summary>
    public Task<IReadOnlyList<StoredOwnNumber<TKey>>> AllAsync(string kitchenId, CancellationToken cancellation = default) =>
        ListAsync(kitchenId, Sql.All, new { kitchenId }, cancellation);

    /// <summary>From the oldest on, those of a deleted number too; empty if there never was one.</summary>
    public Task<IReadOnlyList<StoredOwnNumber<TKey>>> ListRevisionsAsync(
        string kitchenId, TKey key, int limit, long after = 0, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(limit, 1);
        return ListAsync(kitchenId, Sql.ListRevisions, new { kitchenId, key.First, key.Second, limit, after }, cancellation);
    }

    /// <summary>Written; for a new one Taken if there is one, else Missing, or Stale at another revision than the caller saw.</summary>
    /// <param name="kitchenId">Whose number.</param>
    /// <param name="key">Of what.</param>
    /// <param name="expectedRevision">The revision to replace; null for a new number.</param>
    /// <param name="document">JSON text, opaque here.</param>
    /// <param name="cancellation">Stops the query.</param>
    public async Task<OwnNumberWrite<TKey>> PutAsync(
        string kitchenId, TKey key, long? expectedRevision, string document, CancellationToken cancellation = default)
    {
        foreach (var id in key.Parts)
        {
            ArgumentException.ThrowIfNullOrEmpty(id, nameof(key));
        }

        ArgumentNullException.ThrowIfNull(document);
        await _session.HoldAsync(kitchenId, cancellation);
        var row = await _session.WriteReturningAsync<OwnNumberRow>(
            expectedRevision is null ? Sql.Create : Sql.Replace,
            new { kitchenId, key.First, key.Second, expectedRevision, document, _session.Now },
            cancellation);
        if (row is null)
        {
            var current = await CurrentRevisionAsync(kitchenId, key, cancellation);
            return expectedRevision is null ? OwnNumberWrite<TKey>.Taken(current) : MissingOrStale(current);
        }

        await _session.WriteAsync(
            Sql.AddRevision,
            new { kitchenId, row.First, row.Second, row.Revision, row.Document, _session.Now },
            cancellation);
        return await KeepAsync(kitchenId, row, ChangeAction.Put, cancellation);
    }

    /// <summary>Written if the number is still at the revision the caller saw, else Missing or Stale. Its revisions stay readable.</summary>
    public async Task<OwnNumberWrite<TKey>> DeleteAsync(
        string kitchenId, TKey key, long expectedRevision, CancellationToken cancellation = default)
    {
        await _session.HoldAsync(kitchenId, cancellation);
        var row = await _session.WriteReturningAsync<OwnNumberRow>(
            Sql.Delete, new { kitchenId, key.First, key.Second, expectedRevision, _session.Now }, cancellation);
        return row is null
            ? MissingOrStale(await CurrentRevisionAsync(kitchenId, key, cancellation))
            : await KeepAsync(kitchenId, row, ChangeAction.Deleted, cancellation);
    }

    private static OwnNumberWrite<TKey> MissingOrStale(long current) =>
        current == 0 ? OwnNumberWrite<TKey>.Missing : OwnNumberWrite<TKey>.Stale(current);

    private async Task<IReadOnlyList<StoredOwnNumber<TKey>>> ListAsync(
        string kitchenId, string sql, object parameters, CancellationToken cancellation)
    {
        await _session.HoldAsync(kitchenId, cancellation);
        return await _session.ListAsync<OwnNumberRow, StoredOwnNumber<TKey>>(sql, parameters, row => row.ToStored<TKey>(), cancellation);
    }

    private async Task<OwnNumberWrite<TKey>> KeepAsync(string kitchenId, OwnNumberRow row, ChangeAction action, CancellationToken cancellation)
    {
        var stored = row.ToStored<TKey>();
        await _session.WriteAsync(Sql.RaiseKitchen, new { kitchenId }, cancellation);
        await _changes.AppendAsync(kitchenId, _table.Noun, stored.Key.Id, stored.Revision, action, cancellation);
        return OwnNumberWrite<TKey>.Written(stored);
    }

    private Task<long> CurrentRevisionAsync(string kitchenId, TKey key, CancellationToken cancellation) =>
        _session.NumberAsync(Sql.CurrentRevision, new { kitchenId, key.First, key.Second }, cancellation);
}
