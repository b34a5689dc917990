using RubLab.Storage.Engines;
using RubLab.Storage.Refusals;

namespace RubLab.Storage;

/// <summary>The store of one installation, open and at the newest schema. Safe to share between threads.</summary>
public sealed class Database : IAsyncDisposable
{
    /// <summary>How long a writer waits for others before it gives up.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(15);

    private readonly SqliteEngine _engine;

    private Database(SqliteEngine engine)
    {
        _engine = engine;
    }

    /// <summary>The database file.</summary>
    public string Path => _engine.Path;

    /// <summary>Opens the SQLite file at a path, creating it and its directory where they are missing, and migrates it.</summary>
    /// <remarks>The whole file is checked for damage first, and nothing is written to a file that is refused.</remarks>
    /// <exception cref="NewerDatabaseException">A newer version wrote the file.</exception>
    /// <exception cref="UnreadableDatabaseException">It is no database, damaged, or another program's.</exception>
    /// <exception cref="UnreachableDatabaseException">The path cannot be created or opened.</exception>
    /// <exception cref="BusyDatabaseException">Another process held it for too long.</exception>
    public static async Task<Database> OpenSqliteAsync(string path, TimeProvider clock, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        ArgumentNullException.ThrowIfNull(clock);
        return new Database(await SqliteOpening.OpenAsync(path, clock, Patience, cancellation));
    }

    /// <summary>Begins a unit of work; dispose it in every case, commit it to keep what it wrote.</summary>
    /// <exception cref="BusyDatabaseException">Another writer did not finish in time.</exception>
    public async Task<UnitOfWork> BeginAsync(Intent intent, CancellationToken cancellation = default) =>
        new(await _engine.BeginAsync(intent, cancellation));

    public ValueTask DisposeAsync()
    {
        _engine.Dispose();
        return ValueTask.CompletedTask;
    }
}
