namespace RubLab.Storage.Refusals;

/// <summary>The file is not a SQLite database, is damaged, or belongs to another program; it is left untouched.</summary>
public sealed class UnreadableDatabaseException : StorageException
{
    internal UnreadableDatabaseException(string path, string reason, Exception? cause = null)
        : base(path, $"The file {path} cannot be used as a database and was left as it is: {reason}", cause)
    {
    }
}
