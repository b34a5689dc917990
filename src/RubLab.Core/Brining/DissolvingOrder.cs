using RubLab.Core.Ingredients;

namespace RubLab.Core.Brining;

/// <summary>The order in which the lines of a liquid go in: liquids, phosphate, salt, sugar, the rest, and a cure last; all of it cold.</summary>
public static class DissolvingOrder
{
    /// <summary>Indexes of the lines, first to last; lines of one step keep the order they were given in.</summary>
    public static IReadOnlyList<int> Of(IReadOnlyList<Ingredient> ingredients) =>
        Enumerable.Range(0, ingredients.Count).OrderBy(i => StepOf(ingredients[i])).ToList();

    /// <summary>Phosphates: alone of these additives they dissolve badly once salt is in.</summary>
    public static bool IsPhosphate(Ingredient ingredient) =>
        ingredient.Group == "additive" && ingredient.Id.Contains("phosphate", StringComparison.Ordinal);

    private static int StepOf(Ingredient ingredient) => ingredient switch
    {
        { Group: "liquid" } => 0,
        // A powder of broth or coffee is no liquid.
        { Group: "broth" or "beverage" } when ingredient.Forms.Any(form => form.Id == "liquid") => 0,
        _ when ingredient.IsCure => 5,
        _ when IsPhosphate(ingredient) => 1,
        { IsSalt: true } => 2,
        { Group: "sugar" or "syrup" } => 3,
        _ => 4,
    };
}
