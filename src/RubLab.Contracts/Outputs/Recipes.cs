using RubLab.Contracts.Formulas;
using RubLab.Contracts.Quantities;
using RubLab.Core.Catalogues;

namespace RubLab.Contracts.Outputs;

/// <summary>Formulas as recipes.</summary>
public static class Recipes
{
    public static RecipeResponse From(FormulaResponse formula, Catalogue catalogue)
    {
        // Amounts written for meat as bought, without a dose of their own, are ratios to that weight.
        var ratioBase = formula is { WrittenForIs: "purchase", Dose: null } ? "purchase" : formula.Base;
        var one = BaseWords.OneOf(ratioBase);
        return new RecipeResponse
        {
            Identifier = formula.Id,
            Version = formula.Revision,
            DateModified = formula.UpdatedAt,
            Name = formula.Name,
            RecipeCategory = CategoryOf(formula.Kind),
            RecipeYield = $"For {one}: {PlainNumber.Readable(formula.TotalRatio.Value)} g{BoiledDown(formula)}",
            RecipeIngredient = formula.Lines.Select(line =>
                $"{Grams(line.Ratio)} {IngredientNames.Of(line.Ingredient, line.Form, catalogue)} for {one} (as authored: {Authored(line.Amount)})").ToList(),
        };
    }

    private static string BoiledDown(FormulaResponse formula) =>
        formula.ReducedTo is { } left ? $", boiled down to {PlainNumber.Of(left.Value)} % of what goes into the pot" : "";

    private static string CategoryOf(string kind) => char.ToUpperInvariant(kind[0]) + kind[1..].Replace('-', ' ');

    private static string Grams(QuantityBand ratio) => ratio.Low == ratio.High
        ? $"{PlainNumber.Readable(ratio.Typical)} g"
        : $"{PlainNumber.Readable(ratio.Typical)} g ({PlainNumber.Readable(ratio.Low)} to {PlainNumber.Readable(ratio.High)} g)";

    private static string Authored(Quantity? authored)
    {
        if (authored is not { } amount)
        {
            return "the rest";
        }

        var unit = amount.Unit.Replace('-', ' ');
        return $"{PlainNumber.Of(amount.Value)} {(amount.Value == 1 ? unit.Replace("parts", "part", StringComparison.Ordinal) : unit)}";
    }
}
