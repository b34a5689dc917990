using System.Data.Common;
using Dapper;

namespace RubLab.Storage.Engines;

/// <summary>One connection with its open transaction: the only way the stores reach an engine.</summary>
internal sealed class Session(Engine engine, DbConnection connection, DbTransaction transaction, Intent intent, SemaphoreSlim? turn) : IAsyncDisposable
{
    private readonly HashSet<string> _held = [];
    private bool _ended;

    /// <summary>
    /// One instant for all that a unit writes, taken at its first write: its turn has come by then, so times follow the order of commits.
    /// </summary>
    public string Now => field ??= Timestamp.Write(engine.Clock.GetUtcNow());

    /// <summary>Keeps other writers off a kitchen until this unit ends, so that what it reads of it stays true; nothing when reading.</summary>
    public async Task HoldAsync(string kitchenId, CancellationToken cancellation)
    {
        if (intent == Intent.Write && engine.HoldKitchen is { } sql && _held.Add(kitchenId))
        {
            await TryAsync(() => connection.ExecuteScalarAsync(Reading(sql, new { kitchenId }, cancellation)));
        }
    }

    /// <summary>The first row, or null.</summary>
    public Task<TRow?> FirstAsync<TRow>(string sql, object parameters, CancellationToken cancellation)
        where TRow : class =>
        TryAsync(() => connection.QueryFirstOrDefaultAsync<TRow>(Reading(sql, parameters, cancellation)));

    public async Task<IReadOnlyList<T>> ListAsync<TRow, T>(string sql, object parameters, Func<TRow, T> map, CancellationToken cancellation)
    {
        var rows = await TryAsync(() => connection.QueryAsync<TRow>(Reading(sql, parameters, cancellation)));
        return [.. rows.Select(map)];
    }

    /// <summary>A single number; 0 where there is none.</summary>
    public Task<long> NumberAsync(string sql, object? parameters, CancellationToken cancellation) =>
        TryAsync(() => connection.ExecuteScalarAsync<long>(Reading(sql, parameters, cancellation)));

    /// <summary>How many rows were written.</summary>
    public Task<int> WriteAsync(string sql, object? parameters, CancellationToken cancellation) =>
        TryAsync(() => connection.ExecuteAsync(Writing(sql, parameters, cancellation)));

    /// <summary>The first row of a RETURNING clause, or null when nothing was written.</summary>
    public Task<TRow?> WriteReturningAsync<TRow>(string sql, object parameters, CancellationToken cancellation)
        where TRow : class =>
        TryAsync(() => connection.QueryFirstOrDefaultAsync<TRow>(Writing(sql, parameters, cancellation)));

    public async Task CommitAsync(CancellationToken cancellation)
    {
        EnsureOpen();
        cancellation.ThrowIfCancellationRequested();

        // Not cancelled midway: nobody could tell then whether the work was kept.
        await TryAsync(async () =>
        {
            await transaction.CommitAsync(CancellationToken.None);
            return true;
        });
        _ended = true;
    }

    public async ValueTask DisposeAsync()
    {
        _ended = true;
        try
        {
            await transaction.DisposeAsync();
        }
        finally
        {
            await connection.DisposeAsync();
            turn?.Release();
            turn = null;
        }
    }

    private async Task<T> TryAsync<T>(Func<Task<T>> run)
    {
        try
        {
            return await run();
        }
        catch (DbException fault) when (engine.Refusal(fault) is { } refusal)
        {
            throw refusal;
        }
    }

    private CommandDefinition Reading(string sql, object? parameters, CancellationToken cancellation)
    {
        EnsureOpen();
        return new CommandDefinition(sql, parameters, transaction, cancellationToken: cancellation);
    }

    private CommandDefinition Writing(string sql, object? parameters, CancellationToken cancellation) =>
        intent == Intent.Write
            ? Reading(sql, parameters, cancellation)
            : throw new InvalidOperationException("This unit of work was begun for reading.");

    private void EnsureOpen()
    {
        if (_ended)
        {
            throw new InvalidOperationException("This unit of work has ended.");
        }
    }
}
