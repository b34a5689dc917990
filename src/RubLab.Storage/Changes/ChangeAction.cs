namespace RubLab.Storage.Changes;

/// <summary>What happened to an item.</summary>
public enum ChangeAction
{
    /// <summary>It was created or replaced.</summary>
    Put,

    /// <summary>It was deleted; the change is its tombstone.</summary>
    Deleted,
}
