using RubLab.Contracts.Quantities;
using RubLab.Contracts.Remarks;
using RubLab.Core.Brining;
using RubLab.Core.Catalogues;
using RubLab.Core.Formulas;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;

namespace RubLab.Contracts.Brining;

/// <summary>What a cook should know about a liquid.</summary>
internal static class BrineFindings
{
    public static void Notice(Brine liquid, BrineReader read, Catalogue catalogue, FindingLog findings)
    {
        var ingredients = read.Lines.Ingredients;
        var other = 0.0;
        for (var i = 0; i < ingredients.Count; i++)
        {
            // The traces in salt itself are too little for a float.
            var rest = 100 - (ingredients[i].WaterGramsPer100Grams ?? 0) - ingredients[i].SaltGramsPer100Grams.Typical;
            other += ingredients[i].IsSalt ? 0 : liquid.Shares[i] * Math.Max(0, rest);
        }

        if (other > Whole.LastBits)
        {
            findings.Add("float-reads-otherwise", "/lines", null, ("other", Rounded.Estimate(other)));
        }

        if (ingredients.Any(DissolvingOrder.IsPhosphate) && ingredients.Any(i => i.IsSalt))
        {
            findings.Add("phosphate-first", "/lines", null);
        }

        for (var i = 0; i < ingredients.Count; i++)
        {
            if (ingredients[i].WaterGramsPer100Grams is null && !ingredients[i].IsCure)
            {
                findings.Add("water-unknown", i < read.Lines.Formula.Lines.Count ? $"/lines/{i}" : null, null, ("ingredient", ingredients[i].Name));
            }
        }
    }

    /// <summary>The cautions that go with it.</summary>
    public static IReadOnlyList<CautionResponse> CautionsOf(BrineReader read, Catalogue catalogue) => new CautionSubject(
        [read.Kind], read.Lines.Ingredients, read.Cut is { } cut ? [(GroundProducts.ClassOf(cut, read.Product), read.Kind == FormulaKind.Injection)] : []).Cautions(catalogue);
}
