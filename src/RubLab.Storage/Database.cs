using RubLab.Storage.Engines;
using RubLab.Storage.Refusals;

namespace RubLab.Storage;

/// <summary>The store of one installation, open and at the newest schema. Safe to share between threads.</summary>
public sealed class Database : IAsyncDisposable
{
    /// <summary>How long a writer waits for others before it gives up.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(15);

    private readonly Engine _engine;

    private Database(Engine engine)
    {
        _engine = engine;
    }

    /// <summary>The full path of the SQLite file, or the address of the PostgreSQL database without its password.</summary>
    public string Location => _engine.Location;

    /// <summary>Opens a database, creating what is missing, and migrates it.</summary>
    /// <param name="location">
    /// A PostgreSQL connection string (an address that begins with postgresql:// or postgres://, or settings such as
    /// <c>Host=localhost;Database=rublab</c>); anything else is the path of a SQLite file. A file named like settings is
    /// meant by <c>./Host=x</c>.
    /// </param>
    /// <param name="clock">Gives the time of all that is written.</param>
    /// <param name="cancellation">Stops between two steps.</param>
    /// <remarks>
    /// A SQLite file and its directory are created where they are missing; a PostgreSQL database must exist. A file is first
    /// checked for damage throughout. Nothing is written to a database that is refused.
    /// </remarks>
    /// <exception cref="NewerDatabaseException">A newer version wrote it.</exception>
    /// <exception cref="UnreadableDatabaseException">It is no database, damaged, or another program's.</exception>
    /// <exception cref="UnreachableDatabaseException">It cannot be created or opened, or the connection string cannot be read.</exception>
    /// <exception cref="BusyDatabaseException">Another process held it for too long.</exception>
    public static async Task<Database> OpenAsync(string location, TimeProvider clock, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(location);
        ArgumentNullException.ThrowIfNull(clock);
        return new Database(PostgresLocation.TryRead(location, out var postgres)
            ? await PostgresOpening.OpenAsync(postgres, clock, Patience, cancellation)
            : await SqliteOpening.OpenAsync(location, clock, Patience, cancellation));
    }

    /// <summary>Begins a unit of work; dispose it in every case, commit it to keep what it wrote.</summary>
    /// <remarks>
    /// On SQLite writers take turns on the database. On PostgreSQL they take turns on each kitchen, from the first time they
    /// touch it, so that <see cref="BusyDatabaseException"/> may also come from a store.
    /// </remarks>
    /// <exception cref="BusyDatabaseException">Other writers did not finish in time.</exception>
    /// <exception cref="UnreachableDatabaseException">The PostgreSQL server does not answer.</exception>
    public async Task<UnitOfWork> BeginAsync(Intent intent, CancellationToken cancellation = default) =>
        new(await _engine.BeginAsync(intent, cancellation));

    public ValueTask DisposeAsync()
    {
        _engine.Dispose();
        return ValueTask.CompletedTask;
    }
}
