using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Formulas;

/// <summary>A formula line as authored, with what it comes to.</summary>
public sealed record FormulaLineResponse
{
    public required string Ingredient { get; init; }

    /// <summary>As authored; absent when left open.</summary>
    public string? Form { get; init; }

    /// <summary>As authored; absent on the line that makes up the rest of a liquid.</summary>
    public Quantity? Amount { get; init; }

    /// <summary>Sodium chloride as declared, percent of the ingredient's weight.</summary>
    public QuantityBand? Salt { get; init; }

    /// <summary>As authored.</summary>
    public double? NitriteFraction { get; init; }

    /// <summary>As authored.</summary>
    public double? NitrateFraction { get; init; }

    /// <summary>g/kg of the base (g/100cm2 for an area base).</summary>
    public required QuantityBand Ratio { get; init; }

    /// <summary>Percent of the formula.</summary>
    public required QuantityBand Share { get; init; }

    /// <summary>The density a volume was turned into a mass with; absent where none was needed or known.</summary>
    public DensityResponse? Density { get; init; }
}
