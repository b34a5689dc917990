using System.Diagnostics.CodeAnalysis;
using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Ingredients;

/// <summary>What goes in a mix, with its salt kept apart from its sodium.</summary>
public sealed record Ingredient
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    /// <summary>Salt, pepper, chilli, spice, sugar, liquid and so on.</summary>
    public required string Group { get; init; }

    /// <summary>All sodium, whatever it is bound to.</summary>
    public required double SodiumMilligramsPer100Grams { get; init; }

    /// <summary>Sodium chloride alone.</summary>
    public required Band SaltGramsPer100Grams { get; init; }

    /// <summary>How the salt was told from the sodium.</summary>
    public required string SaltMethod { get; init; }

    public required double? WaterGramsPer100Grams { get; init; }

    public required double? SugarsGramsPer100Grams { get; init; }

    /// <summary>Declared sodium nitrite; none where nothing is declared.</summary>
    public double? NitriteGramsPer100Grams { get; init; }

    /// <summary>Declared sodium nitrate; none where nothing is declared.</summary>
    public double? NitrateGramsPer100Grams { get; init; }

    /// <summary>Allergens the plain food carries by definition.</summary>
    public required IReadOnlyList<string> Allergens { get; init; }

    /// <summary>Made to many recipes: its own label is the authority on what is in it.</summary>
    public required bool IsGenericCompound { get; init; }

    public required Citation Citation { get; init; }

    public required IReadOnlyList<IngredientForm> Forms { get; init; }

    public required IReadOnlyList<HouseholdMeasure> Measures { get; init; }

    /// <summary>Weighed as salt, not merely containing some.</summary>
    public bool IsSalt => Group == "salt" || Id == "sodium-chloride";

    /// <summary>Carries nitrite or nitrate, whose load has legal limits.</summary>
    public bool IsCure => NitriteGramsPer100Grams > 0 || NitrateGramsPer100Grams > 0;

    public IngredientForm DefaultForm => Forms.First(f => f.IsDefault);

    public bool TryFindForm(string id, [NotNullWhen(true)] out IngredientForm? form)
    {
        form = Forms.FirstOrDefault(f => f.Id == id);
        return form is not null;
    }
}
