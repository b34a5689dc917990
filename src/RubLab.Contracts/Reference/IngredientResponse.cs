using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Reference;

/// <summary>An ingredient with its composition per 100 g, its forms and its household measures.</summary>
public sealed record IngredientResponse
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required string Group { get; init; }

    /// <summary>All sodium, mg per 100 g.</summary>
    public required double SodiumMilligramsPer100Grams { get; init; }

    /// <summary>Sodium chloride, g per 100 g.</summary>
    public required QuantityBand Salt { get; init; }

    public required string SaltMethod { get; init; }

    public double? WaterGramsPer100Grams { get; init; }

    public double? SugarsGramsPer100Grams { get; init; }

    public required IReadOnlyList<string> Allergens { get; init; }

    /// <summary>True: made to many recipes, read its own label.</summary>
    public required bool ReadYourLabel { get; init; }

    public required string SourceId { get; init; }

    public required string Locator { get; init; }

    public required IReadOnlyList<FormResponse> Forms { get; init; }

    public required IReadOnlyList<MeasureResponse> Measures { get; init; }
}
