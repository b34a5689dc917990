namespace RubLab.Contracts.Timing;

/// <summary>A dimension of a piece; each has two faces across it.</summary>
public enum PieceDimension
{
    Thickness,
    Width,
    Length,
}
