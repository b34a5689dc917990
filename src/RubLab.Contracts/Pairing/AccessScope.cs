namespace RubLab.Contracts.Pairing;

/// <summary>What a key or a paired device may do.</summary>
public enum AccessScope
{
    /// <summary>Read the kitchen and compute.</summary>
    Read,

    /// <summary>Change what the kitchen has stored.</summary>
    Write,

    /// <summary>Give out pairing codes, see the paired devices and unpair them.</summary>
    Pair,
}
