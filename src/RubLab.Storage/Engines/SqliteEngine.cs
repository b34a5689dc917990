using System.Data.Common;
using System.Runtime.CompilerServices;
using Dapper;
using Microsoft.Data.Sqlite;
using RubLab.Storage.Refusals;
using SQLitePCL;

namespace RubLab.Storage.Engines;

/// <summary>All that is SQLite's own: connections, pragmas, write locking and the folder of migrations.</summary>
internal sealed class SqliteEngine : Engine
{
    /// <summary>The folder below Migrations.</summary>
    public const string Folder = "Sqlite";

    /// <summary>Connections are pooled and come back with their pragmas; this remembers which have them.</summary>
    private static readonly ConditionalWeakTable<sqlite3, SqliteEngine> Prepared = [];

    private readonly string _connectionString;

    /// <summary>Writers of this process queue here without holding a thread; SQLite's own wait for the lock would.</summary>
    private readonly SemaphoreSlim _turn = new(1, 1);

    /// <param name="path">A full path: no relative name is then mistaken for one of SQLite's special ones.</param>
    /// <param name="clock">Gives the time of all that is written.</param>
    /// <param name="patience">How long a writer waits for its turn, and then for the lock of another process.</param>
    public SqliteEngine(string path, TimeProvider clock, TimeSpan patience)
        : base(path, clock, patience)
    {
        _connectionString = new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = SqliteOpenMode.ReadWriteCreate,
            Pooling = true,
            DefaultTimeout = Math.Max(1, (int)patience.TotalSeconds),
        }.ToString();
    }

    public override string? HoldKitchen => null;

    public override async Task<Session> BeginAsync(Intent intent, CancellationToken cancellation)
    {
        var turn = intent == Intent.Write ? _turn : null;
        if (turn is not null && !await turn.WaitAsync(Patience, cancellation))
        {
            throw new BusyDatabaseException(Location, Patience);
        }

        SqliteConnection? connection = null;
        try
        {
            connection = await ConnectAsync(cancellation);

            // Immediate takes the write lock now: a lock taken at the first write could fail on a snapshot grown old.
            var transaction = connection.BeginTransaction(deferred: intent == Intent.Read);
            return new Session(this, connection, transaction, intent, turn);
        }
        catch (Exception fault)
        {
            connection?.Dispose();
            turn?.Release();
            if (fault is SqliteException sqlite && Refusal(sqlite) is { } refusal)
            {
                throw refusal;
            }

            throw;
        }
    }

    /// <summary>The write lock is on the whole file.</summary>
    public override Task<Session> BeginMigrationAsync(CancellationToken cancellation) => BeginAsync(Intent.Write, cancellation);

    public override StorageException? Refusal(DbException fault) =>
        fault is SqliteException { SqliteErrorCode: raw.SQLITE_BUSY or raw.SQLITE_LOCKED }
            ? new BusyDatabaseException(Location, Patience, fault)
            : null;

    /// <summary>Closes the idle connections, so that the file is whole in one piece and may be moved.</summary>
    public override void Dispose()
    {
        using var connection = new SqliteConnection(_connectionString);
        SqliteConnection.ClearPool(connection);
    }

    internal async Task<SqliteConnection> ConnectAsync(CancellationToken cancellation)
    {
        var connection = new SqliteConnection(_connectionString);
        try
        {
            await connection.OpenAsync(cancellation);
            if (!Prepared.TryGetValue(connection.Handle!, out _))
            {
                Prepare(connection);
                Prepared.TryAdd(connection.Handle!, this);
            }

            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    private void Prepare(SqliteConnection connection)
    {
        connection.Execute($"PRAGMA busy_timeout = {(long)Patience.TotalMilliseconds};");
        var mode = connection.ExecuteScalar<string>("PRAGMA journal_mode = WAL;");
        if (mode != "wal")
        {
            throw new IOException($"The file system does not allow SQLite's write-ahead log (journal mode is {mode}).");
        }

        // FULL: what was answered survives a power cut. No trusted schema: a file from elsewhere runs no functions.
        connection.Execute("PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON; PRAGMA trusted_schema = OFF;");
    }
}
