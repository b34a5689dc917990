using RubLab.Storage.Changes;
using RubLab.Storage.Engines;

namespace RubLab.Storage.Densities;

/// <summary>
/// The densities a kitchen has measured itself. Each write also adds to its change feed and raises its density revision, which
/// every figure computed from a volume depends on.
/// </summary>
public sealed class DensityStore
{
    /// <summary>The word for a density in the change feed, where its id is ingredient/form.</summary>
    public const string Noun = "density";

    private readonly Session _session;
    private readonly ChangeStore _changes;

    internal DensityStore(Session session, ChangeStore changes)
    {
        _session = session;
        _changes = changes;
    }

    /// <summary>The density; null if there is none or it was deleted.</summary>
    public async Task<StoredDensity?> GetAsync(string kitchenId, string ingredientId, string formId, CancellationToken cancellation = default)
    {
        await _session.HoldAsync(kitchenId, cancellation);
        var row = await _session.FirstAsync<DensityRow>(DensitySql.Get, new { kitchenId, ingredientId, formId }, cancellation);
        return row?.ToDensity();
    }

    /// <summary>By ingredient, then form; ask for one more than a page holds to learn if another follows.</summary>
    /// <param name="kitchenId">Whose densities.</param>
    /// <param name="limit">At most so many; at least 1.</param>
    /// <param name="after">Where the page before ended; null for the first.</param>
    /// <param name="cancellation">Stops the query.</param>
    public async Task<IReadOnlyList<StoredDensity>> ListAsync(
        string kitchenId, int limit, DensityPosition? after = null, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(limit, 1);
        await _session.HoldAsync(kitchenId, cancellation);
        return await _session.ListAsync<DensityRow, StoredDensity>(
            DensitySql.List(after is not null),
            new { kitchenId, ingredientId = after?.IngredientId, formId = after?.FormId, limit },
            row => row.ToDensity(),
            cancellation);
    }

    /// <summary>All of a kitchen, in the order of the list: there is at most one for each form of the reference data.</summary>
    public async Task<IReadOnlyList<StoredDensity>> AllAsync(string kitchenId, CancellationToken cancellation = default)
    {
        await _session.HoldAsync(kitchenId, cancellation);
        return await _session.ListAsync<DensityRow, StoredDensity>(DensitySql.All, new { kitchenId }, row => row.ToDensity(), cancellation);
    }

    /// <summary>From the oldest on, those of a deleted density too; empty if there never was one.</summary>
    public async Task<IReadOnlyList<StoredDensity>> ListRevisionsAsync(
        string kitchenId, string ingredientId, string formId, int limit, long after = 0, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(limit, 1);
        await _session.HoldAsync(kitchenId, cancellation);
        return await _session.ListAsync<DensityRow, StoredDensity>(
            DensitySql.ListRevisions, new { kitchenId, ingredientId, formId, limit, after }, row => row.ToDensity(), cancellation);
    }

    /// <summary>Written; for a new one Taken if there is one, else Missing, or Stale at another revision than the caller saw.</summary>
    /// <param name="kitchenId">Whose density.</param>
    /// <param name="ingredientId">Of which ingredient.</param>
    /// <param name="formId">Of which form.</param>
    /// <param name="expectedRevision">The revision to replace; null for a new density.</param>
    /// <param name="document">JSON text, opaque here.</param>
    /// <param name="cancellation">Stops the query.</param>
    public async Task<DensityWrite> PutAsync(
        string kitchenId, string ingredientId, string formId, long? expectedRevision, string document, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(ingredientId);
        ArgumentException.ThrowIfNullOrEmpty(formId);
        ArgumentNullException.ThrowIfNull(document);
        await _session.HoldAsync(kitchenId, cancellation);
        var row = await _session.WriteReturningAsync<DensityRow>(
            expectedRevision is null ? DensitySql.Create : DensitySql.Replace,
            new { kitchenId, ingredientId, formId, expectedRevision, document, _session.Now },
            cancellation);
        if (row is null)
        {
            var current = await CurrentRevisionAsync(kitchenId, ingredientId, formId, cancellation);
            return expectedRevision is null ? DensityWrite.Taken(current) : MissingOrStale(current);
        }

        await _session.WriteAsync(
            DensitySql.AddRevision,
            new { kitchenId, row.IngredientId, row.FormId, row.Revision, row.Document, _session.Now },
            cancellation);
        return await KeepAsync(kitchenId, row, ChangeAction.Put, cancellation);
    }

    /// <summary>Written if the density is still at the revision the caller saw, else Missing or Stale. Its revisions stay readable.</summary>
    public async Task<DensityWrite> DeleteAsync(
        string kitchenId, string ingredientId, string formId, long expectedRevision, CancellationToken cancellation = default)
    {
        await _session.HoldAsync(kitchenId, cancellation);
        var row = await _session.WriteReturningAsync<DensityRow>(
            DensitySql.Delete, new { kitchenId, ingredientId, formId, expectedRevision, _session.Now }, cancellation);
        return row is null
            ? MissingOrStale(await CurrentRevisionAsync(kitchenId, ingredientId, formId, cancellation))
            : await KeepAsync(kitchenId, row, ChangeAction.Deleted, cancellation);
    }

    private static DensityWrite MissingOrStale(long current) => current == 0 ? DensityWrite.Missing : DensityWrite.Stale(current);

    private async Task<DensityWrite> KeepAsync(string kitchenId, DensityRow row, ChangeAction action, CancellationToken cancellation)
    {
        await _session.WriteAsync(DensitySql.RaiseKitchen, new { kitchenId }, cancellation);
        await _changes.AppendAsync(kitchenId, Noun, $"{row.IngredientId}/{row.FormId}", row.Revision, action, cancellation);
        return DensityWrite.Written(row.ToDensity());
    }

    private Task<long> CurrentRevisionAsync(string kitchenId, string ingredientId, string formId, CancellationToken cancellation) =>
        _session.NumberAsync(DensitySql.CurrentRevision, new { kitchenId, ingredientId, formId }, cancellation);
}
