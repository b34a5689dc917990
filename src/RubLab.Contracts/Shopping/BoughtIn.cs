namespace RubLab.Contracts.Shopping;

/// <summary>The unit meat is bought in.</summary>
public enum BoughtIn
{
    Kilogram,
    Pound,
}
