namespace RubLab.Core.Diffusion;

/// <summary>The body salt travels through.</summary>
public enum SaltedShape
{
    /// <summary>A plate much longer and wider than thick; its edges are left out.</summary>
    Slab,
    /// <summary>A long round piece, salted all round; its ends are left out.</summary>
    Cylinder,
    /// <summary>A rectangular block, any of its faces treated.</summary>
    Brick,
}
