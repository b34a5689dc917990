namespace RubLab.Core.Scaling;

/// <summary>When in the cook a treatment goes on.</summary>
public enum Stage
{
    Before,
    During,
    Wrap,
    After,
}
