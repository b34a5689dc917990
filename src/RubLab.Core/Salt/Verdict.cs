namespace RubLab.Core.Salt;

/// <summary>Where a measured figure stands to a range.</summary>
public enum Verdict
{
    Within,
    Below,
    Above,
    /// <summary>The band crosses a bound, or the two are not on one base.</summary>
    CannotTell,
}
