using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Formulas;

/// <summary>One ingredient of a formula.</summary>
public sealed record FormulaLineRequest
{
    /// <summary>Ingredient id.</summary>
    public string? Ingredient { get; init; }

    /// <summary>Form id; the ingredient's default when a mass is given.</summary>
    public string? Form { get; init; }

    /// <summary>A mass, a volume, g/kg, %, ppm, parts-by-mass, parts-by-volume; in a liquid also %-of-liquid or %-of-water, where exactly one line leaves the amount out and makes up the rest.</summary>
    public QuantityRequest? Amount { get; init; }

    /// <summary>Sodium chloride in this ingredient as measured or as its label states it, percent of its weight; in place of the reference's figure.</summary>
    public EstimateRequest? Salt { get; init; }

    /// <summary>Share of sodium nitrite in a cure, 0 to 1. A cure whose name states its content takes no other; curing-salt is for a pack that declares its own.</summary>
    public double? NitriteFraction { get; init; }

    /// <summary>Share of sodium nitrate in a cure, 0 to 1, under the same rule.</summary>
    public double? NitrateFraction { get; init; }
}
