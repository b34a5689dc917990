namespace RubLab.Core.Yields;

/// <summary>Where the yield a plan stands on comes from.</summary>
public enum YieldOrigin
{
    /// <summary>Given with the request.</summary>
    Stated,

    /// <summary>The kitchen's own records.</summary>
    Own,

    /// <summary>The reference's cooking yield, with trim and bone.</summary>
    Reference,

    /// <summary>A published yield straight from purchase to edible weight.</summary>
    PurchaseYield,
}
