namespace RubLab.Storage.Refusals;

/// <summary>Another writer held the database for longer than a unit of work waits; nothing was written and the work may be tried again.</summary>
public sealed class BusyDatabaseException : StorageException
{
    internal BusyDatabaseException(string path, TimeSpan waited, Exception? cause = null)
        : base(path, $"The database {path} was held by another writer for more than {waited.TotalSeconds:0.#} s.", cause)
    {
    }
}
