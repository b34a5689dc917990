using RubLab.Storage.Engines;

namespace RubLab.Storage.Changes;

/// <summary>The change feed of a kitchen.</summary>
public sealed class ChangeStore
{
    private readonly Session _session;

    internal ChangeStore(Session session)
    {
        _session = session;
    }

    /// <summary>The changes after a number, oldest first; 0 starts at the beginning.</summary>
    public async Task<IReadOnlyList<Change>> ListAsync(string kitchenId, long after, int limit, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(limit, 1);
        await _session.HoldAsync(kitchenId, cancellation);
        return await _session.ListAsync<ChangeRow, Change>(
            $"SELECT {ChangeRow.Columns} FROM changes WHERE kitchen_id = @kitchenId AND number > @after ORDER BY number LIMIT @limit",
            new { kitchenId, after, limit },
            row => row.ToChange(),
            cancellation);
    }

    /// <summary>Takes the kitchen's next number, which holds other writers of that kitchen until this unit of work ends.</summary>
    internal async Task AppendAsync(
        string kitchenId, string noun, string itemId, long revision, ChangeAction action, CancellationToken cancellation)
    {
        var added = await _session.WriteAsync(
            "UPDATE kitchens SET last_change = last_change + 1 WHERE id = @kitchenId", new { kitchenId }, cancellation);
        if (added != 1)
        {
            throw new InvalidOperationException($"There is no kitchen {kitchenId}.");
        }

        await _session.WriteAsync(
            """
            INSERT INTO changes (kitchen_id, number, noun, item_id, revision, action, at)
            SELECT id, last_change, @noun, @itemId, @revision, @action, @Now FROM kitchens WHERE id = @kitchenId
            """,
            new { kitchenId, noun, itemId, revision, action = ChangeRow.Word(action), _session.Now },
            cancellation);
    }
}
