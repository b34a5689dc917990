using RubLab.Storage.Engines;

namespace RubLab.Storage.Kitchens;

/// <summary>The kitchens of this installation.</summary>
public sealed class KitchenStore
{
    private readonly Session _session;

    internal KitchenStore(Session session)
    {
        _session = session;
    }

    /// <summary>The kitchen of that id, made now if there is none; one that exists keeps its name.</summary>
    public async Task<Kitchen> EnsureAsync(string id, string name, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(id);
        ArgumentException.ThrowIfNullOrEmpty(name);
        await _session.WriteAsync(
            "INSERT INTO kitchens (id, name, created_at) VALUES (@id, @name, @Now) ON CONFLICT (id) DO NOTHING",
            new { id, name, _session.Now },
            cancellation);
        return await GetAsync(id, cancellation) ?? throw new InvalidOperationException($"Kitchen {id} was neither there nor made.");
    }

    public async Task<Kitchen?> GetAsync(string id, CancellationToken cancellation = default)
    {
        await _session.HoldAsync(id, cancellation);
        var row = await _session.FirstAsync<KitchenRow>($"SELECT {KitchenRow.Columns} FROM kitchens WHERE id = @id", new { id }, cancellation);
        return row?.ToKitchen();
    }

    /// <summary>Notes that the kitchen is given its example formulas; true once only, for whoever is to insert them in this unit of work.</summary>
    /// <remarks>Later editions change nothing: the examples belong to the kitchen, which may have deleted them.</remarks>
    public async Task<bool> ClaimExamplesAsync(string id, string edition, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(edition);
        await _session.HoldAsync(id, cancellation);
        return await _session.WriteAsync(
            "UPDATE kitchens SET examples_edition = @edition WHERE id = @id AND examples_edition IS NULL",
            new { id, edition },
            cancellation) == 1;
    }
}
