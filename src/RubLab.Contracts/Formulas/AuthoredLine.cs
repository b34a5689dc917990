using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Formulas;

/// <summary>A formula line as it would be sent.</summary>
public sealed record AuthoredLine
{
    /// <summary>Ingredient id.</summary>
    public required string Ingredient { get; init; }

    /// <summary>Form id; absent when left open.</summary>
    public string? Form { get; init; }

    /// <summary>In the unit the line is written in; absent on the line that makes up the rest of a liquid.</summary>
    public Quantity? Amount { get; init; }

    /// <summary>Sodium chloride as declared, percent of the ingredient's weight.</summary>
    public QuantityBand? Salt { get; init; }

    /// <summary>Sodium nitrite in a cure, 0 to 1.</summary>
    public double? NitriteFraction { get; init; }

    /// <summary>Sodium nitrate in a cure, 0 to 1.</summary>
    public double? NitrateFraction { get; init; }
}
