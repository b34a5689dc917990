namespace RubLab.Contracts.Scaling;

/// <summary>Whether pieces weighed after injection had drained by then.</summary>
public enum WeighedBackState
{
    Undrained,
    Drained,
}
