namespace RubLab.Storage.Refusals;

/// <summary>The file cannot be created, opened or written, or the PostgreSQL server does not answer or does not let us in.</summary>
public sealed class UnreachableDatabaseException : StorageException
{
    internal UnreachableDatabaseException(string location, string reason, Exception? cause)
        : base(location, $"The database {location} cannot be opened or created: {reason}", cause)
    {
    }
}
