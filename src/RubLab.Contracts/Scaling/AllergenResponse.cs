using RubLab.Core.Ingredients;

namespace RubLab.Contracts.Scaling;

/// <summary>An allergen and what brings it.</summary>
/// <param name="Allergen">In plain words, as in the reference data.</param>
/// <param name="Ingredients">Ids of the ingredients that hold it by their nature.</param>
public sealed record AllergenResponse(string Allergen, IReadOnlyList<string> Ingredients)
{
    public static IReadOnlyList<AllergenResponse> Of(IEnumerable<Ingredient> ingredients) =>
        ingredients.Distinct()
            .SelectMany(i => i.Allergens, (ingredient, allergen) => (allergen, ingredient.Id))
            .GroupBy(pair => pair.allergen, pair => pair.Id, StringComparer.Ordinal)
            .Select(group => new AllergenResponse(group.Key, group.ToList()))
            .ToList();
}
