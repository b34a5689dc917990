namespace RubLab.Contracts.Serving;

/// <summary>How a purchase is reckoned.</summary>
public enum PlannedBy
{
    /// <summary>By trim, bone and cooking yield.</summary>
    Chain,

    /// <summary>By a published yield straight from purchase weight.</summary>
    PurchaseYield,
}
