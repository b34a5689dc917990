namespace RubLab.Page.Tests.Harness;

/// <summary>A test in a real browser; skipped, with the reason, where there is none.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class RequiresChromiumFactAttribute : FactAttribute
{
    public RequiresChromiumFactAttribute() => Skip = Chromium.Missing;
}
