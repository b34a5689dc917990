using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Reference;

/// <summary>An ingredient with its composition per 100 g, its forms and its household measures.</summary>
public sealed record IngredientResponse
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    /// <summary>The kind of ingredient.</summary>
    public required string Group { get; init; }

    /// <summary>All sodium, mg per 100 g.</summary>
    public required double SodiumMilligramsPer100Grams { get; init; }

    /// <summary>Sodium chloride, g per 100 g.</summary>
    public required QuantityBand Salt { get; init; }

    /// <summary>How the salt was worked out from the sodium.</summary>
    public required string SaltMethod { get; init; }

    /// <summary>Absent where not published.</summary>
    public double? WaterGramsPer100Grams { get; init; }

    /// <summary>Absent where not published.</summary>
    public double? SugarsGramsPer100Grams { get; init; }

    /// <summary>Allergens it always holds.</summary>
    public required IReadOnlyList<string> Allergens { get; init; }

    /// <summary>True: made to many recipes, read its own label.</summary>
    public required bool ReadYourLabel { get; init; }

    /// <summary>Additives with a legal limit that it carries; of a cure what its pack declares may stand in their place.</summary>
    public required IReadOnlyList<LimitedAdditiveResponse> LimitedAdditives { get; init; }

    public required string SourceId { get; init; }

    public required string Locator { get; init; }

    /// <summary>Its grinds or crystals.</summary>
    public required IReadOnlyList<FormResponse> Forms { get; init; }

    /// <summary>Published weights of household measures.</summary>
    public required IReadOnlyList<MeasureResponse> Measures { get; init; }

    /// <summary>Published weights of pieces and packs, such as a clove or a stick; empty where there are none.</summary>
    public required IReadOnlyList<PieceMeasureResponse> PieceMeasures { get; init; }
}
