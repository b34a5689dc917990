using RubLab.Core.Curing;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;

namespace RubLab.Core.Formulas;

/// <summary>One ingredient of a formula, its amount exactly as authored.</summary>
/// <param name="Ingredient">The ingredient.</param>
/// <param name="NamedForm">The form the author named; none when left open.</param>
/// <param name="Amount">The number as written; on the line that makes up the rest, what the others leave.</param>
/// <param name="Unit">A unit of mass, volume, ratio or parts, or percent of the liquid or the water.</param>
/// <param name="NitriteFraction">Sodium nitrite in a cure, 0 to 1; never assumed.</param>
/// <param name="NitrateFraction">Sodium nitrate in a cure, 0 to 1; never assumed.</param>
/// <param name="IsRest">The author left out the amount: this line makes up the rest of the liquid.</param>
public sealed record FormulaLine(
    Ingredient Ingredient, IngredientForm? NamedForm, double Amount, Unit Unit, double? NitriteFraction, double? NitrateFraction,
    bool IsRest = false)
{
    /// <summary>Sodium chloride as declared for this line's ingredient, percent of its weight; the ingredient then carries it.</summary>
    public Band? DeclaredSaltPercent { get; init; }

    /// <summary>Carries an additive whose amount is limited: it is never rounded up.</summary>
    public bool CarriesLimited => Ingredient.IsCure || Ingredient.LimitedGramsPer100Grams.Any(a => a.Key != AdditiveLoads.Water);

    /// <summary>The limited additives in a gram of this line's ingredient, grams: nitrite and nitrate as the sodium salt, and each by the
    /// weight of the salt that is used.</summary>
    public IEnumerable<(string Additive, double GramsPerGram, double OwnGramsPerGram)> AdditivesGramsPerGram()
    {
        if (Ingredient.NitriteGramsPer100Grams is > 0 and var nitrite)
        {
            yield return (AdditiveLoads.Nitrite, nitrite / 100, nitrite / 100 * Ingredient.OwnPerSodiumNitrite);
        }

        if (Ingredient.NitrateGramsPer100Grams is > 0 and var nitrate)
        {
            yield return (AdditiveLoads.Nitrate, nitrate / 100, nitrate / 100 * Ingredient.OwnPerSodiumNitrate);
        }

        foreach (var (additive, grams) in Ingredient.LimitedGramsPer100Grams)
        {
            yield return (additive, grams / 100, grams / 100);
        }
    }

    public IngredientForm Form => NamedForm ?? Ingredient.DefaultForm;
}
