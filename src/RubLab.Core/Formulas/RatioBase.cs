namespace RubLab.Core.Formulas;

/// <summary>The weight (or surface) a formula's ratios stand on.</summary>
public enum RatioBase
{
    /// <summary>After trimming, before anything is put on or in.</summary>
    Green,
    /// <summary>What leaves the cooker.</summary>
    Cooked,
    /// <summary>What is served: whole portions times the portion's weight.</summary>
    Portion,
    /// <summary>The piece's surface.</summary>
    Area,
}
