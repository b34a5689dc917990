namespace RubLab.Contracts.Scaling;

/// <summary>What a sheet is asked for: amounts to weigh, or the checks alone.</summary>
public enum SheetPurpose
{
    Sheet,
    Check,
}
