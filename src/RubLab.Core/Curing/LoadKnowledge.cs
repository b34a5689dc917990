namespace RubLab.Core.Curing;

/// <summary>How far a load is known.</summary>
public enum LoadKnowledge
{
    /// <summary>What is put on or in.</summary>
    Known,
    /// <summary>The figure rests on something nobody stated: it may pass a cap, and never breaks one.</summary>
    Assumed,
    /// <summary>Some of it is not computed.</summary>
    Unknown,
}
