using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Ingredients;
using RubLab.Core.Remarks;

namespace RubLab.Contracts.Formulas;

/// <summary>Reads what a pack declares of nitrite or nitrate, and refuses what the name of the cure denies.</summary>
internal static class CureContents
{
    private const double LastBits = 1e-9;

    /// <summary>The part of it, 0 to 1; none where nothing is declared or it is at fault.</summary>
    /// <param name="fraction">As sent.</param>
    /// <param name="ingredient">The ingredient, where it is known.</param>
    /// <param name="heldGramsPer100Grams">What it holds by its name; none where only its pack knows.</param>
    /// <param name="additive">Nitrite or nitrate.</param>
    /// <param name="catalogue">The reference data.</param>
    /// <param name="at">Where the fraction stands.</param>
    public static double? Read(double? fraction, Ingredient? ingredient, double? heldGramsPer100Grams, string additive, Catalogue catalogue, Place at)
    {
        if (fraction is not { } given || Reader.Within(given, Bounds.CureContent, at) is not { } declared)
        {
            return null;
        }

        if (ingredient is not { IsOfCures: true } || heldGramsPer100Grams is not { } percent || Math.Abs((declared * 100) - percent) <= percent * LastBits)
        {
            return declared;
        }

        var other = catalogue.Ingredients.First(i => i.NeedsDeclaredContent && i.SaltMethod == ingredient.SaltMethod);
        at.Fault(
            "cure-content-contradicted",
            $"{ingredient.Name}, holds {Figures.Exact(percent)} % of {additive}, and {Figures.Exact(declared * 100)} % is declared here. If that is what the pack says, name the ingredient {other.Name} ({other.Id}).",
            ("ingredient", ingredient.Id), ("additive", additive), ("declared", declared), ("holds", percent / 100), ("other", other.Id));
        return null;
    }
}
