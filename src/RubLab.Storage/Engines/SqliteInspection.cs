using Dapper;
using Microsoft.Data.Sqlite;
using RubLab.Storage.Refusals;
using SQLitePCL;

namespace RubLab.Storage.Engines;

/// <summary>Looks at a file before anything is written to it.</summary>
/// <remarks>
/// Always through SQLite: closing a plain file handle would drop the locks this process holds on the file.
/// </remarks>
internal static class SqliteInspection
{
    /// <summary>Set by the first migration.</summary>
    private const long ApplicationId = 1383424561;

    /// <summary>The schema number of the file; 0 for a file that is missing or still empty.</summary>
    /// <exception cref="UnreadableDatabaseException">Not a database, damaged, or another program's.</exception>
    public static async Task<long> SchemaOfAsync(string path, TimeSpan patience, CancellationToken cancellation)
    {
        if (!File.Exists(path))
        {
            return 0;
        }

        try
        {
            return await SchemaOfAsync(path, SqliteOpenMode.ReadOnly, patience, cancellation);
        }
        catch (SqliteException fault) when (fault.SqliteErrorCode == raw.SQLITE_READONLY)
        {
            // A journal left by a crash has to be rolled back first, which a read-only connection may not do.
            return await SchemaOfAsync(path, SqliteOpenMode.ReadWrite, patience, cancellation);
        }
    }

    private static async Task<long> SchemaOfAsync(string path, SqliteOpenMode mode, TimeSpan patience, CancellationToken cancellation)
    {
        var text = new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = mode,
            Pooling = false,
            DefaultTimeout = Math.Max(1, (int)patience.TotalSeconds),
        };
        await using var connection = new SqliteConnection(text.ToString());
        await connection.OpenAsync(cancellation);

        // One read transaction: a migration committed by another process between two questions would look like damage.
        await using var transaction = connection.BeginTransaction(deferred: true);
        var tables = connection.ExecuteScalar<long>("SELECT COUNT(*) FROM sqlite_schema", transaction: transaction);
        var pageSize = connection.ExecuteScalar<long>("PRAGMA page_size", transaction: transaction);
        if (new FileInfo(path).Length % pageSize != 0 && !HasLog(path))
        {
            // SQLite takes a last page that is cut short for one that ends in zeros.
            throw new UnreadableDatabaseException(path, "it does not end with a whole page.");
        }

        if (tables == 0)
        {
            return 0;
        }

        if (connection.ExecuteScalar<long>("PRAGMA application_id", transaction: transaction) != ApplicationId)
        {
            throw new UnreadableDatabaseException(path, "it is the database of another program.");
        }

        var verdict = connection.ExecuteScalar<string>("PRAGMA quick_check(1)", transaction: transaction);
        if (verdict != "ok")
        {
            throw new UnreadableDatabaseException(path, $"it is damaged ({verdict}).");
        }

        var ledgers = connection.ExecuteScalar<long>("SELECT COUNT(*) FROM sqlite_schema WHERE name = 'schema_migrations'", transaction: transaction);
        if (ledgers == 0)
        {
            throw new UnreadableDatabaseException(path, "its list of migrations is missing.");
        }

        return connection.ExecuteScalar<long>("SELECT MAX(number) FROM schema_migrations", transaction: transaction);
    }

    /// <summary>A log left by a crash may hold the very pages that the file lacks.</summary>
    private static bool HasLog(string path) => new FileInfo(path + "-wal") is { Exists: true, Length: > 0 };
}
