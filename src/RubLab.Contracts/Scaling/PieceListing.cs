namespace RubLab.Contracts.Scaling;

/// <summary>Whether a sheet lists each piece.</summary>
public enum PieceListing
{
    All,
    None,
}
