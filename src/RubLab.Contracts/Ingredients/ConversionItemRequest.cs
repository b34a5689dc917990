using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Ingredients;

/// <summary>One amount to convert.</summary>
public sealed record ConversionItemRequest
{
    /// <summary>Ingredient id.</summary>
    public string? Ingredient { get; init; }

    /// <summary>If left out and the forms differ by more than 15 %, the answer spans them and asks.</summary>
    public string? Form { get; init; }

    /// <summary>The grind as a US mesh number, instead of a form.</summary>
    public double? Mesh { get; init; }

    /// <summary>The grind in micrometres, instead of a form.</summary>
    public double? Micrometres { get; init; }

    /// <summary>A mass or a volume.</summary>
    public QuantityRequest? Amount { get; init; }

    /// <summary>A unit of mass or volume.</summary>
    public string? To { get; init; }
}
