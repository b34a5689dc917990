using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Shopping;

/// <summary>A pack an ingredient is sold in.</summary>
public sealed record PackRequest
{
    /// <summary>Ingredient id.</summary>
    public string? Ingredient { get; init; }

    /// <summary>Form id; the ingredient's default if left out.</summary>
    public string? Form { get; init; }

    /// <summary>What one pack holds: a mass, or a volume of a form whose density is known.</summary>
    public QuantityRequest? Size { get; init; }

    /// <summary>What one pack costs.</summary>
    public MoneyRequest? Price { get; init; }
}
