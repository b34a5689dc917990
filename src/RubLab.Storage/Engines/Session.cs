using System.Data.Common;
using Dapper;

namespace RubLab.Storage.Engines;

/// <summary>One connection with its open transaction: the only way the stores reach an engine.</summary>
internal sealed class Session(DbConnection connection, DbTransaction transaction, Intent intent, DateTimeOffset now, SemaphoreSlim? turn) : IAsyncDisposable
{
    private bool _ended;

    /// <summary>One instant for all that a unit writes, taken once its turn has come, so that times follow the order of commits.</summary>
    public string Now { get; } = Timestamp.Write(now);

    /// <summary>The first row, or null.</summary>
    public Task<TRow?> FirstAsync<TRow>(string sql, object parameters, CancellationToken cancellation)
        where TRow : class =>
        connection.QueryFirstOrDefaultAsync<TRow>(Reading(sql, parameters, cancellation));

    public async Task<IReadOnlyList<T>> ListAsync<TRow, T>(string sql, object parameters, Func<TRow, T> map, CancellationToken cancellation)
    {
        var rows = await connection.QueryAsync<TRow>(Reading(sql, parameters, cancellation));
        return [.. rows.Select(map)];
    }

    /// <summary>A single number; 0 where there is none.</summary>
    public Task<long> NumberAsync(string sql, object? parameters, CancellationToken cancellation) =>
        connection.ExecuteScalarAsync<long>(Reading(sql, parameters, cancellation));

    /// <summary>How many rows were written.</summary>
    public Task<int> WriteAsync(string sql, object? parameters, CancellationToken cancellation) =>
        connection.ExecuteAsync(Writing(sql, parameters, cancellation));

    /// <summary>The first row of a RETURNING clause, or null when nothing was written.</summary>
    public Task<TRow?> WriteReturningAsync<TRow>(string sql, object parameters, CancellationToken cancellation)
        where TRow : class =>
        connection.QueryFirstOrDefaultAsync<TRow>(Writing(sql, parameters, cancellation));

    public async Task CommitAsync(CancellationToken cancellation)
    {
        EnsureOpen();
        cancellation.ThrowIfCancellationRequested();

        // Not cancelled midway: nobody could tell then whether the work was kept.
        await transaction.CommitAsync(CancellationToken.None);
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
