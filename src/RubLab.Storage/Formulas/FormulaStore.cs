using RubLab.Storage.Changes;
using RubLab.Storage.Engines;

namespace RubLab.Storage.Formulas;

/// <summary>The formulas of a kitchen with all their revisions; each write also adds to the kitchen's change feed.</summary>
public sealed class FormulaStore
{
    /// <summary>The word for a formula in the change feed.</summary>
    public const string Noun = "formula";

    private readonly Session _session;
    private readonly ChangeStore _changes;

    internal FormulaStore(Session session, ChangeStore changes)
    {
        _session = session;
        _changes = changes;
    }

    /// <summary>Written, or Taken. An id that was deleted may be used again and goes on with its numbering.</summary>
    public async Task<FormulaWrite> CreateAsync(string kitchenId, string id, FormulaContent draft, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(id);
        ArgumentNullException.ThrowIfNull(draft);
        await _session.HoldAsync(kitchenId, cancellation);
        var row = await _session.WriteReturningAsync<FormulaRow>(
            FormulaSql.Create,
            new { kitchenId, id, draft.Name, nameKey = KeyOf(draft.Name), draft.Kind, draft.Document, _session.Now },
            cancellation);
        return row is null
            ? FormulaWrite.Taken(await CurrentRevisionAsync(kitchenId, id, cancellation))
            : await KeepAsync(kitchenId, row, cancellation);
    }

    /// <summary>The formula; null if there is none or it was deleted.</summary>
    public async Task<StoredFormula?> GetAsync(string kitchenId, string id, CancellationToken cancellation = default)
    {
        await _session.HoldAsync(kitchenId, cancellation);
        var row = await _session.FirstAsync<FormulaRow>(FormulaSql.Get, new { kitchenId, id }, cancellation);
        return row?.ToFormula();
    }

    /// <summary>Written if the formula is still at the revision the caller saw, else Missing or Stale.</summary>
    public async Task<FormulaWrite> ReplaceAsync(
        string kitchenId, string id, long expectedRevision, FormulaContent draft, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(draft);
        await _session.HoldAsync(kitchenId, cancellation);
        var row = await _session.WriteReturningAsync<FormulaRow>(
            FormulaSql.Replace,
            new { kitchenId, id, expectedRevision, draft.Name, nameKey = KeyOf(draft.Name), draft.Kind, draft.Document, _session.Now },
            cancellation);
        return row is null
            ? await MissingOrStaleAsync(kitchenId, id, cancellation)
            : await KeepAsync(kitchenId, row, cancellation);
    }

    /// <summary>Written if the formula is still at the revision the caller saw, else Missing or Stale. Its revisions stay readable.</summary>
    public async Task<FormulaWrite> DeleteAsync(string kitchenId, string id, long expectedRevision, CancellationToken cancellation = default)
    {
        await _session.HoldAsync(kitchenId, cancellation);
        var row = await _session.WriteReturningAsync<FormulaRow>(
            FormulaSql.Delete, new { kitchenId, id, expectedRevision, _session.Now }, cancellation);
        if (row is null)
        {
            return await MissingOrStaleAsync(kitchenId, id, cancellation);
        }

        await _changes.AppendAsync(kitchenId, Noun, id, row.Revision, ChangeAction.Deleted, cancellation);
        return FormulaWrite.Written(row.ToFormula());
    }

    /// <summary>By name without regard to case, then by id; ask for one more than a page holds to learn if another follows.</summary>
    /// <param name="kitchenId">Whose formulas.</param>
    /// <param name="limit">At most so many; at least 1.</param>
    /// <param name="after">Where the page before ended; null for the first.</param>
    /// <param name="kind">Only this kind; null for all.</param>
    /// <param name="cancellation">Stops the query.</param>
    public async Task<IReadOnlyList<StoredFormula>> ListAsync(
        string kitchenId, int limit, FormulaPosition? after = null, string? kind = null, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(limit, 1);
        await _session.HoldAsync(kitchenId, cancellation);
        return await _session.ListAsync<FormulaRow, StoredFormula>(
            FormulaSql.List(kind is not null, after is not null),
            new { kitchenId, kind, nameKey = after is null ? null : KeyOf(after.Name), id = after?.Id, limit },
            row => row.ToFormula(),
            cancellation);
    }

    /// <summary>From the oldest on, those of a deleted formula too; empty if the id was never used.</summary>
    public async Task<IReadOnlyList<FormulaRevision>> ListRevisionsAsync(
        string kitchenId, string id, int limit, long after = 0, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(limit, 1);
        await _session.HoldAsync(kitchenId, cancellation);
        return await _session.ListAsync<FormulaRevisionRow, FormulaRevision>(
            FormulaSql.ListRevisions, new { kitchenId, id, limit, after }, row => row.ToRevision(), cancellation);
    }

    public async Task<FormulaRevision?> GetRevisionAsync(string kitchenId, string id, long revision, CancellationToken cancellation = default)
    {
        await _session.HoldAsync(kitchenId, cancellation);
        var row = await _session.FirstAsync<FormulaRevisionRow>(FormulaSql.GetRevision, new { kitchenId, id, revision }, cancellation);
        return row?.ToRevision();
    }

    private static string KeyOf(string name) => name.ToLowerInvariant();

    private async Task<FormulaWrite> KeepAsync(string kitchenId, FormulaRow row, CancellationToken cancellation)
    {
        await _session.WriteAsync(
            FormulaSql.AddRevision,
            new { kitchenId, row.Id, row.Revision, row.Name, row.Kind, row.Document, _session.Now },
            cancellation);
        await _changes.AppendAsync(kitchenId, Noun, row.Id, row.Revision, ChangeAction.Put, cancellation);
        return FormulaWrite.Written(row.ToFormula());
    }

    private async Task<FormulaWrite> MissingOrStaleAsync(string kitchenId, string id, CancellationToken cancellation)
    {
        var current = await CurrentRevisionAsync(kitchenId, id, cancellation);
        return current == 0 ? FormulaWrite.Missing : FormulaWrite.Stale(current);
    }

    private Task<long> CurrentRevisionAsync(string kitchenId, string id, CancellationToken cancellation) =>
        _session.NumberAsync(FormulaSql.CurrentRevision, new { kitchenId, id }, cancellation);
}
