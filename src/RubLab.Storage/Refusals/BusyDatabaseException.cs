namespace RubLab.Storage.Refusals;

/// <summary>Others held the database for longer than a unit of work waits; nothing was written and the work may be tried again.</summary>
public sealed class BusyDatabaseException : StorageException
{
    internal BusyDatabaseException(string location, TimeSpan waited, Exception? cause = null)
        : this(location, $"was held by another writer for more than {waited.TotalSeconds:0.#} s", cause)
    {
    }

    internal BusyDatabaseException(string location, string reason, Exception? cause)
        : base(location, $"The database {location} {reason}.", cause)
    {
    }
}
