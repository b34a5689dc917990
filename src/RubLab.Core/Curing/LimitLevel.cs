namespace RubLab.Core.Curing;

/// <summary>What a limit asks.</summary>
public enum LimitLevel
{
    /// <summary>No more than this.</summary>
    Cap,
    /// <summary>This level, which is a cap as well.</summary>
    Required,
    /// <summary>A level that may stand in for the required one, with whatever else it asks for.</summary>
    Alternative,
    /// <summary>No less than this; falling short is told and not refused.</summary>
    Minimum,
}
