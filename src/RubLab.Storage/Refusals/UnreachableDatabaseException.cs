namespace RubLab.Storage.Refusals;

/// <summary>The path cannot be created, opened or written.</summary>
public sealed class UnreachableDatabaseException : StorageException
{
    internal UnreachableDatabaseException(string path, Exception cause)
        : base(path, $"The database {path} cannot be opened or created: {cause.Message}", cause)
    {
    }
}
