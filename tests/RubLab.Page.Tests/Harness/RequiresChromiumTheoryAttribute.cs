namespace RubLab.Page.Tests.Harness;

/// <summary>Like <see cref="RequiresChromiumFactAttribute"/>, for several cases.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class RequiresChromiumTheoryAttribute : TheoryAttribute
{
    public RequiresChromiumTheoryAttribute() => Skip = Chromium.Missing;
}
