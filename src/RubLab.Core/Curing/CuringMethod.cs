namespace RubLab.Core.Curing;

/// <summary>How an additive gets into or onto the meat, as the limits tell methods apart.</summary>
public enum CuringMethod
{
    /// <summary>On whole pieces, dry or wet.</summary>
    Dry,
    /// <summary>Mixed into chopped or ground meat.</summary>
    Ground,
    /// <summary>Pumped or massaged in as a liquid.</summary>
    Injection,
    /// <summary>Lying in a liquid.</summary>
    Soak,
}
