namespace RubLab.Storage.Refusals;

/// <summary>The store cannot be used; the message is written for the person who runs the server.</summary>
public abstract class StorageException : Exception
{
    private protected StorageException(string location, string message, Exception? cause)
        : base(message, cause)
    {
        Location = location;
    }

    /// <summary>The database file, or the address of the PostgreSQL database without its password.</summary>
    public string Location { get; }
}
