using System.Data.Common;
using RubLab.Storage.Refusals;

namespace RubLab.Storage.Engines;

/// <summary>What opening, migrating and units of work ask of every engine.</summary>
/// <param name="location">Where the database is, as people may see it: never with a password.</param>
/// <param name="clock">Gives the time of all that is written.</param>
/// <param name="patience">How long a writer waits for others before it gives up.</param>
internal abstract class Engine(string location, TimeProvider clock, TimeSpan patience) : IDisposable
{
    public string Location { get; } = location;

    public TimeProvider Clock { get; } = clock;

    public TimeSpan Patience { get; } = patience;

    /// <summary>
    /// What a writer runs to have a kitchen for itself until it ends; null where it has the whole database for itself.
    /// </summary>
    public abstract string? HoldKitchen { get; }

    /// <exception cref="BusyDatabaseException">Other writers took too long.</exception>
    /// <exception cref="UnreachableDatabaseException">The server does not answer.</exception>
    public abstract Task<Session> BeginAsync(Intent intent, CancellationToken cancellation);

    /// <summary>Begins a unit that no other migration of this database runs beside.</summary>
    public abstract Task<Session> BeginMigrationAsync(CancellationToken cancellation);

    /// <summary>What a fault within a unit of work means to whoever may try again; null for a fault of the statement itself.</summary>
    public abstract StorageException? Refusal(DbException fault);

    public abstract void Dispose();
}
