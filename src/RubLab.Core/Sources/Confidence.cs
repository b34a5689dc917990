namespace RubLab.Core.Sources;

/// <summary>How far a figure can be trusted, from a measured and published one to a recollection.</summary>
public enum Confidence
{
    High,
    Good,
    Fair,
    Low,
    VeryLow,
}
