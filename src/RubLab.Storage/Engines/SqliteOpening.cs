using Microsoft.Data.Sqlite;
using RubLab.Storage.Migrations;
using RubLab.Storage.Refusals;
using SQLitePCL;

namespace RubLab.Storage.Engines;

/// <summary>From a path to an engine at the newest schema, or to the reason why not.</summary>
internal static class SqliteOpening
{
    public static async Task<SqliteEngine> OpenAsync(string path, TimeProvider clock, TimeSpan patience, CancellationToken cancellation)
    {
        SqliteEngine? engine = null;
        try
        {
            path = Path.GetFullPath(path);
            var migrations = Migration.ReadAll(SqliteEngine.Folder);
            var newest = migrations[^1].Number;
            var schema = await SqliteInspection.SchemaOfAsync(path, patience, cancellation);
            if (schema > newest)
            {
                throw new NewerDatabaseException(path, schema, newest);
            }

            if (!File.Exists(path))
            {
                Create(path);
            }

            engine = new SqliteEngine(path, clock, patience);
            if (schema < newest)
            {
                await Migrator.ApplyAsync(engine, migrations, cancellation);
            }

            return engine;
        }
        catch (Exception fault)
        {
            engine?.Dispose();
            if (Refusal(path, patience, fault) is { } refusal)
            {
                throw refusal;
            }

            throw;
        }
    }

    /// <summary>For its owner alone: the file holds the hashes of keys and the secrets. SQLite gives its log the same mode.</summary>
    private static void Create(string path)
    {
        const UnixFileMode File600 = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        var directory = Path.GetDirectoryName(path)!;
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(directory);
            return;
        }

        Directory.CreateDirectory(directory, File600 | UnixFileMode.UserExecute);

        // Created by SQLite, not as a plain file: see the remark on SqliteInspection.
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString());
        connection.Open();
        File.SetUnixFileMode(path, File600);
    }

    private static StorageException? Refusal(string path, TimeSpan patience, Exception fault) => fault switch
    {
        SqliteException sqlite => sqlite.SqliteErrorCode switch
        {
            raw.SQLITE_NOTADB => new UnreadableDatabaseException(path, "it is not a SQLite database.", fault),
            raw.SQLITE_CORRUPT => new UnreadableDatabaseException(path, "it is damaged or cut short.", fault),
            raw.SQLITE_BUSY or raw.SQLITE_LOCKED => new BusyDatabaseException(path, patience, fault),
            raw.SQLITE_CANTOPEN or raw.SQLITE_IOERR or raw.SQLITE_PERM or raw.SQLITE_READONLY or raw.SQLITE_FULL => new UnreachableDatabaseException(path, fault.Message, fault),
            _ => null,
        },
        IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException => new UnreachableDatabaseException(path, fault.Message, fault),
        _ => null,
    };
}
