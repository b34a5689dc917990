namespace RubLab.Storage.Refusals;

/// <summary>A newer version wrote the database; an older one would misread it, so it is left untouched.</summary>
public sealed class NewerDatabaseException : StorageException
{
    internal NewerDatabaseException(string location, long found, long known)
        : base(location, $"The database {location} has schema {found}, but this version knows schemas up to {known}: start a newer version, or restore a backup made by this one.", null)
    {
        Found = found;
        Known = known;
    }

    /// <summary>The schema number found.</summary>
    public long Found { get; }

    /// <summary>The highest schema number this version knows.</summary>
    public long Known { get; }
}
