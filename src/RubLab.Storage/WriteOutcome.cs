namespace RubLab.Storage;

/// <summary>How a write ended.</summary>
public enum WriteOutcome
{
    /// <summary>Done.</summary>
    Written,

    /// <summary>An item of that id exists; nothing was written.</summary>
    Taken,

    /// <summary>There is no item of that id, or no longer; nothing was written.</summary>
    Missing,

    /// <summary>The item is at another revision than the caller saw; nothing was written.</summary>
    Stale,
}
