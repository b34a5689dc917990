namespace RubLab.Storage.Refusals;

/// <summary>The store cannot be used; the message is written for the person who runs the server.</summary>
public abstract class StorageException : Exception
{
    private protected StorageException(string path, string message, Exception? cause)
        : base(message, cause)
    {
        Path = path;
    }

    /// <summary>The database file.</summary>
    public string Path { get; }
}
