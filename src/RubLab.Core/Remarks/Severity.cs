namespace RubLab.Core.Remarks;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    Info,
    Advice,
    Warning,
    Danger,
}
