namespace RubLab.Core.Meat;

/// <summary>The body a cut is taken as.</summary>
public enum ShapeKind
{
    /// <summary>A rectangular block.</summary>
    Brick,
    /// <summary>A cylinder with an elliptical section.</summary>
    Cylinder,
    Ellipsoid,
    /// <summary>A rectangular block of fixed thickness: a heavier piece is longer and wider, not thicker.</summary>
    Slab,
}
