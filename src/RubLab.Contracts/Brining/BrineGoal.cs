using RubLab.Core.Ingredients;

namespace RubLab.Contracts.Brining;

/// <summary>A target and the line that is free for it.</summary>
/// <param name="Target">Index of the target as sent.</param>
/// <param name="Line">Index of the line.</param>
/// <param name="Ingredient">What is to be reached.</param>
/// <param name="GramsPerKilogram">How much of it, per kilogram of green meat.</param>
internal readonly record struct BrineGoal(int Target, int Line, Ingredient Ingredient, double GramsPerKilogram)
{
    private const string PureSalt = "sodium-chloride";

    /// <summary>The salt of every line counts; otherwise grams of the ingredient named.</summary>
    public bool IsSalt => Ingredient.Id == PureSalt;
}
