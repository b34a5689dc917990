namespace RubLab.Storage.Refusals;

/// <summary>The database is damaged, no SQLite file, or belongs to another program; it is left untouched.</summary>
public sealed class UnreadableDatabaseException : StorageException
{
    internal UnreadableDatabaseException(string location, string reason, Exception? cause = null)
        : base(location, $"{location} cannot be used as a database and was left as it is: {reason}", cause)
    {
    }
}
