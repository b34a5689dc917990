namespace RubLab.Storage.Refusals;

/// <summary>The file was written by a newer version; an older one would misread it, so it is left untouched.</summary>
public sealed class NewerDatabaseException : StorageException
{
    internal NewerDatabaseException(string path, long found, long known)
        : base(path, $"The database {path} has schema {found}, but this version knows schemas up to {known}: start a newer version, or restore a backup made by this one.", null)
    {
        Found = found;
        Known = known;
    }

    /// <summary>The schema number in the file.</summary>
    public long Found { get; }

    /// <summary>The highest schema number this version knows.</summary>
    public long Known { get; }
}
