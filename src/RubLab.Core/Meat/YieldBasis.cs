namespace RubLab.Core.Meat;

/// <summary>What a published cooking yield is a part of.</summary>
public enum YieldBasis
{
    /// <summary>The whole piece, with its bone: cooked over green.</summary>
    Green,

    /// <summary>The meat without bone and trim, raw and cooked.</summary>
    EdiblePortion,
}
