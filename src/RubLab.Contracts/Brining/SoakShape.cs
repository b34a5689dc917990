namespace RubLab.Contracts.Brining;

/// <summary>What a measured thickness is of.</summary>
public enum SoakShape
{
    /// <summary>A flat piece, its thickness from face to face.</summary>
    Slab,
    /// <summary>A long round piece, its diameter.</summary>
    Cylinder,
}
