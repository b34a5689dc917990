namespace RubLab.Storage.Formulas;

/// <summary>How a write ended.</summary>
public enum WriteOutcome
{
    /// <summary>Done.</summary>
    Written,

    /// <summary>A formula of that id exists; nothing was written.</summary>
    Taken,

    /// <summary>There is no formula of that id, or no longer; nothing was written.</summary>
    Missing,

    /// <summary>The formula is at another revision than the caller saw; nothing was written.</summary>
    Stale,
}
