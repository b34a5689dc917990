using System.Data;
using System.Data.Common;
using System.Globalization;
using System.Net.Sockets;
using Dapper;
using Npgsql;
using RubLab.Storage.Refusals;

namespace RubLab.Storage.Engines;

/// <summary>All that is PostgreSQL's own: the pool, isolation, locks and the folder of migrations.</summary>
internal sealed class PostgresEngine : Engine
{
    /// <summary>The folder below Migrations.</summary>
    public const string Folder = "PostgreSql";

    /// <summary>The number of our databases; any other program's advisory locks are unlikely to have it.</summary>
    private const string LockMigrations = "SELECT pg_advisory_xact_lock(1383424561)";

    private readonly NpgsqlDataSource _source;
    private readonly string _beginWriting;

    /// <summary>Half of the pool: writers may all wait for one kitchen, and readers are not to wait behind them.</summary>
    private readonly SemaphoreSlim _writers;

    public PostgresEngine(PostgresLocation location, TimeProvider clock, TimeSpan patience)
        : base(location.Shown, clock, patience)
    {
        _source = NpgsqlDataSource.Create(location.ConnectionString);
        _writers = new SemaphoreSlim(Math.Max(1, location.Connections / 2));
        _beginWriting = string.Create(CultureInfo.InvariantCulture, $"SET LOCAL lock_timeout = {(long)patience.TotalMilliseconds}");
    }

    /// <summary>The row holds the counter of changes. Not FOR UPDATE, which would also hold up whoever refers to the kitchen.</summary>
    public override string? HoldKitchen => "SELECT last_change FROM kitchens WHERE id = @kitchenId FOR NO KEY UPDATE";

    public override async Task<Session> BeginAsync(Intent intent, CancellationToken cancellation)
    {
        var turn = intent == Intent.Write ? _writers : null;
        if (turn is not null && !await turn.WaitAsync(Patience, cancellation))
        {
            throw new BusyDatabaseException(Location, Patience);
        }

        try
        {
            return await TryBeginAsync(intent, turn, cancellation);
        }
        catch (Exception fault) when (OutOfReach(fault) is { } refusal)
        {
            turn?.Release();
            throw refusal;
        }
        catch
        {
            turn?.Release();
            throw;
        }
    }

    public override async Task<Session> BeginMigrationAsync(CancellationToken cancellation)
    {
        var session = await BeginAsync(Intent.Write, cancellation);
        try
        {
            await session.WriteAsync(LockMigrations, null, cancellation);
            return session;
        }
        catch
        {
            await session.DisposeAsync();
            throw;
        }
    }

    public override StorageException? Refusal(DbException fault) => fault switch
    {
        PostgresException { SqlState: PostgresErrorCodes.LockNotAvailable } => new BusyDatabaseException(Location, Patience, fault),
        PostgresException { SqlState: PostgresErrorCodes.DeadlockDetected or PostgresErrorCodes.SerializationFailure } =>
            new BusyDatabaseException(Location, "had two writers waiting for each other", fault),
        PostgresException refused => IsAboutReach(refused.SqlState) ? new UnreachableDatabaseException(Location, refused.MessageText, fault) : null,
        NpgsqlException => OutOfReach(fault),
        _ => null,
    };

    public override void Dispose()
    {
        _source.Dispose();
        _writers.Dispose();
    }

    /// <summary>Connections, rights, resources, shutting down, a standby: nothing that another statement would be spared.</summary>
    private static bool IsAboutReach(string state) =>
        state[..2] is "08" or "28" or "3D" or "53" or "57" || state is PostgresErrorCodes.InsufficientPrivilege or PostgresErrorCodes.ReadOnlySqlTransaction;

    private StorageException? OutOfReach(Exception fault) => fault switch
    {
        PostgresException refused => Refusal(refused),
        NpgsqlException or SocketException or IOException or TimeoutException => new UnreachableDatabaseException(Location, Reason(fault), fault),
        _ => null,
    };

    private static string Reason(Exception fault) =>
        fault.InnerException is { } inner && inner.Message != fault.Message ? $"{fault.Message.TrimEnd('.')}: {inner.Message}" : fault.Message;

    private async Task<Session> TryBeginAsync(Intent intent, SemaphoreSlim? turn, CancellationToken cancellation)
    {
        try
        {
            return await BeginOnceAsync(intent, turn, cancellation);
        }
        catch (NpgsqlException fault) when (fault.InnerException is IOException or SocketException or EndOfStreamException || fault.SqlState == PostgresErrorCodes.AdminShutdown)
        {
            // The server was restarted and the pooled connections are dead; nothing was done yet, so a new one may do it.
            _source.Clear();
            return await BeginOnceAsync(intent, turn, cancellation);
        }
    }

    private async Task<Session> BeginOnceAsync(Intent intent, SemaphoreSlim? turn, CancellationToken cancellation)
    {
        var connection = await _source.OpenConnectionAsync(cancellation);
        try
        {
            // A reader sees one moment throughout. A writer sees what was committed before it got hold of the kitchen.
            var isolation = intent == Intent.Read ? IsolationLevel.RepeatableRead : IsolationLevel.ReadCommitted;
            var transaction = await connection.BeginTransactionAsync(isolation, cancellation);
            var begin = intent == Intent.Read ? "SET TRANSACTION READ ONLY" : _beginWriting;
            await connection.ExecuteAsync(new CommandDefinition(begin, transaction: transaction, cancellationToken: cancellation));
            return new Session(this, connection, transaction, intent, turn);
        }
        catch
        {
            await connection.DisposeAsync();
            throw;
        }
    }
}
