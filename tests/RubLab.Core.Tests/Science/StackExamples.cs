using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Sauces;

namespace RubLab.Core.Tests.Science;

/// <summary>The worked examples about liquids on and in the meat.</summary>
internal static class StackExamples
{
    public static void Sauces(SciencePage page)
    {
        var left = page.Given("left");
        var juices = Given.Ingredient("cooking-juices").WithDeclaredSalt(
            Band.Exact(page.Given("salt of the juices")), Seed.Catalogue.Constants.SodiumInSodiumChlorideGramsPerGram);
        var pot = page.InBase("vinegar") + page.InBase("juices") + page.InBase("salt");
        var ratios = (Given.Draft(
            Given.Line("vinegar-cider", null, page.InBase("vinegar"), "g"),
            Given.Line(juices, page.InBase("juices"), "g"),
            Given.Line("salt", "table", page.InBase("salt"), "g")) with { Kind = FormulaKind.Sauce, PercentLeft = left }).Dosed(100).Ratios();
        var reduction = Reduction.Of(ratios);

        page.Finds("into the pot", pot);
        page.Finds("finished", pot * left / 100);
        page.Finds("solids of the pot", reduction.SolidsPercentAt(100));
        page.Finds("solids", reduction.SolidsPercentAt(left));
        page.Finds("salt per kg finished", ratios.SaltSharePercent.Typical * 10);
    }
}
