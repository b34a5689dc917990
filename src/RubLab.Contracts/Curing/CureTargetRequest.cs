using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Curing;

/// <summary>What is to be reached in the meat, by the line of an ingredient that leaves its amount out.</summary>
public sealed record CureTargetRequest
{
    /// <summary>Ingredient id of that line.</summary>
    public string? Ingredient { get; init; }

    /// <summary>What of it counts, from every line: nitrite (as sodium nitrite), nitrate (as sodium nitrate), ascorbate, ascorbic-acid, phosphate or sodium-chloride; if left out, the ingredient itself.</summary>
    public string? Additive { get; init; }

    /// <summary>ppm, g/kg or % of the green weight.</summary>
    public QuantityRequest? Reached { get; init; }
}
