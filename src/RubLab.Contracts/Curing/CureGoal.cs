using RubLab.Core.Curing;
using RubLab.Core.Formulas;
using RubLab.Core.Ingredients;

namespace RubLab.Contracts.Curing;

/// <summary>A target and the line that is free for it.</summary>
/// <param name="Target">Index of the target as sent.</param>
/// <param name="Line">Index of the line.</param>
/// <param name="Ingredient">The ingredient of that line.</param>
/// <param name="Additive">What counts; none for the ingredient itself.</param>
/// <param name="GramsPerKilogram">How much of it, per kilogram of green meat.</param>
internal readonly record struct CureGoal(int Target, int Line, Ingredient Ingredient, string? Additive, double GramsPerKilogram)
{
    public const string PureSalt = "sodium-chloride";

    /// <summary>What a target may count.</summary>
    public static IReadOnlyList<string> Additives { get; } = [AdditiveLoads.Nitrite, AdditiveLoads.Nitrate, "ascorbate", "ascorbic-acid", "phosphate", PureSalt];

    /// <summary>How much a gram of a line brings of what counts, grams.</summary>
    public double PerGram(FormulaLineDraft line) => Additive switch
    {
        null => line.Ingredient!.Id == Ingredient.Id ? 1 : 0,
        PureSalt => line.Ingredient!.SaltGramsPerGram.Typical,
        AdditiveLoads.Nitrite => (line.Ingredient!.NitriteGramsPer100Grams ?? 0) / 100,
        AdditiveLoads.Nitrate => (line.Ingredient!.NitrateGramsPer100Grams ?? 0) / 100,
        _ => line.Ingredient!.LimitedGramsPer100Grams.GetValueOrDefault(Additive) / 100,
    };
}
