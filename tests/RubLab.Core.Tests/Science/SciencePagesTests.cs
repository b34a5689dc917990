using RubLab.Core.Formulas;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;
using RubLab.Core.Tests.Scaling;

namespace RubLab.Core.Tests.Science;

/// <summary>The worked example of every page of docs/science, computed.</summary>
public sealed class SciencePagesTests
{
    private static readonly Dictionary<string, Action<SciencePage>> Examples = new()
    {
        ["units"] = Units,
        ["ratios"] = Ratios,
        ["volume-and-mass"] = VolumeAndMass,
        ["blends"] = BlendsPage,
        ["scaling-and-weighing-steps"] = ScalingAndWeighingSteps,
        ["spoons"] = Spoons,
        ["salt-ledger"] = Ledger,
        ["salt-checks"] = Checks,
        ["surface-and-coverage"] = MeatAndMixExamples.SurfaceAndCoverage,
        ["grinds-by-size"] = MeatAndMixExamples.GrindsBySize,
        ["own-densities"] = MeatAndMixExamples.OwnDensities,
        ["blend-density"] = MeatAndMixExamples.BlendDensityPage,
        ["scales-and-bowls"] = MeatAndMixExamples.ScalesAndBowls,
        ["sauces"] = StackExamples.Sauces,
        ["slices"] = MeatAndMixExamples.Slices,
        ["brines"] = BrineExamples.Brines,
        ["soak"] = BrineExamples.Soaks,
        ["salting-time"] = TimingExamples.SaltingTime,
        ["stirred-bath"] = TimingExamples.StirredBath,
        ["purchase"] = ServingPageExamples.Purchase,
        ["own-yields"] = ServingPageExamples.OwnYieldsPage,
        ["cures"] = CureExamples.Cures,
    };

    public static TheoryData<string> Pages => new(Examples.Keys);

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_s_example_comes_out_as_printed(string name)
    {
        var page = SciencePage.Of(name);

        Examples[name](page);

        page.IsUsedUp();
    }

    [Fact]
    public void Every_page_has_an_example_and_stands_in_the_index()
    {
        var files = Directory.GetFiles(Repository.PathOf("docs", "science"), "*.md").Select(f => Path.GetFileNameWithoutExtension(f)).ToList();
        var index = File.ReadAllText(Repository.PathOf("docs", "science", "index.md"));

        Assert.Equal(Examples.Keys.Append("index").Order(StringComparer.Ordinal), files.Order(StringComparer.Ordinal));
        Assert.All(Examples.Keys, name => Assert.Contains($"]({name}.md)", index, StringComparison.Ordinal));
    }

    private static void Units(SciencePage page)
    {
        var inch = page.InBase("inch") / 10;
        page.Finds("gallon in millilitres", page.Given("gallon") * inch * inch * inch);
        page.Finds("gallon in millilitres", UnitTable.Get("gal").Factor);
        page.Finds("cup in millilitres", UnitTable.Get("cup").Factor);
        page.Finds("teaspoon in millilitres", UnitTable.Get("tsp").Factor);
        page.Finds("meat in grams", page.InBase("meat"));
        page.Finds("oven in Celsius", page.InBase("oven"));
    }

    private static void Ratios(SciencePage page)
    {
        var card = Given.Draft(Given.Line("salt", "table", page.Given("salt"), page.UnitOf("salt")))
            .WrittenFor(page.Given("bought"), page.UnitOf("bought"), WeightBasis.Purchase).Ratios();
        var piece = Given.Pieces("beef-brisket", page.InBase("bought")) with { WeightIs = WeightBasis.Purchase, TrimLossPercent = page.Given("trim") };
        page.Finds("ratio to purchase weight", card.DoseGramsPerKilogram);
        page.Finds("ratio to green weight", card.DoseGramsPerKilogram * BaseWeight.PerKilogramGreen(card, Given.Pile(piece), 0)!.Value);

        var mix = Given.Draft(
            Given.Line("salt", "table", page.Given("first part"), "parts-by-mass"),
            Given.Line("sugar-brown", null, page.Given("second part"), "parts-by-mass"),
            Given.Line("paprika", null, page.Given("third part"), "parts-by-mass")).Dosed(page.Given("dose")).Ratios();
        page.Finds("first ratio", mix.Lines[0].RatioGramsPerKilogram.Typical);
        page.Finds("second ratio", mix.Lines[1].RatioGramsPerKilogram.Typical);
        page.Finds("third ratio", mix.Lines[2].RatioGramsPerKilogram.Typical);
        page.Finds("ratio of the liquid", Injected("%-of-liquid"));
        page.Finds("ratio of the water", Injected("%-of-water"));

        double Injected(string unit) => Given.Liquid(Given.Rest("water"), Given.Line("salt", "table", page.Given("salt in the liquid"), unit))
            .Dosed(page.Given("pump"), page.UnitOf("pump")).Ratios().Lines[1].RatioGramsPerKilogram.Typical;
    }

    private static void VolumeAndMass(SciencePage page)
    {
        var pepper = Given.Ingredient("black-pepper");
        var mass = Convert("pepper", "g");
        page.Finds("density", pepper.DefaultForm.Density!.GramsPerMillilitre.Typical);
        page.Finds("mass", mass.Typical);
        page.Finds("mass low", mass.Low);
        page.Finds("mass high", mass.High);
        var volume = Convert("weighed", "mL");
        page.Finds("volume", volume.Typical);
        page.Finds("volume low", volume.Low);
        page.Finds("volume high", volume.High);

        Band Convert(string name, string to) => Conversion.Of(
            pepper, pepper.DefaultForm, page.Given(name), UnitTable.Get(page.UnitOf(name)), UnitTable.Get(to), 15)!.Amount;
    }

    private static void BlendsPage(SciencePage page)
    {
        var share = Blends.Share([Density("first"), Density("second")], 0);
        page.Finds("first share low", share.Low * 100);
        page.Finds("first share high", share.High * 100);

        var mix = Given.Draft(
            Given.Line("salt", "table", page.Given("salt"), page.UnitOf("salt")),
            Given.Line("black-pepper", "ground", page.Given("pepper"), page.UnitOf("pepper"))).Dosed(20).Ratios();
        page.Finds("salt weighed in the mix", mix.Lines[0].Share.Typical * 100);
        page.Finds("sodium chloride in the mix", mix.SaltSharePercent.Typical);
        page.Finds("sodium chloride low", mix.SaltSharePercent.Low);
        page.Finds("sodium chloride high", mix.SaltSharePercent.High);

        Band Density(string name)
        {
            double low = page.Given($"{name} density low"), high = page.Given($"{name} density high");
            return new Band(low, (low + high) / 2, high);
        }
    }

    private static void ScalingAndWeighingSteps(SciencePage page)
    {
        var ratios = Given.Draft(
            Given.Line("salt", "table", page.Given("salt"), page.UnitOf("salt")),
            Given.Line("black-pepper", "ground", page.Given("pepper"), page.UnitOf("pepper"))).Ratios();
        var step = Given.Step(page.Given("step"), page.UnitOf("step"));
        var sheet = Given.Sheet(
            Given.Pile(Given.Pieces("beef-brisket", page.InBase("first piece"), page.InBase("second piece"))),
            step, page.Given("overage"), ratios.On(0)).Treatments[0];
        page.Finds("on the first piece", step.ValueOf(sheet.Pieces.Steps[0]));
        page.Finds("on the second piece", step.ValueOf(sheet.Pieces.Steps[1]));
        page.Finds("on the meat", step.ValueOf(sheet.Pieces.TotalSteps));
        page.Finds("to mix", (double)sheet.ToMix);
        page.Finds("salt to weigh", (double)sheet.Lines[0].Value);
        page.Finds("pepper to weigh", (double)sheet.Lines[1].Value);
    }

    private static void Spoons(SciencePage page)
    {
        var spoons = SpoonMeasure.Of(page.Given("salt"), Given.Ingredient("salt").DefaultForm.Density)!;
        var teaspoons = spoons.Text.Split(" + ").ToDictionary(part => part.Split(' ')[^1], SpoonText.Teaspoons);
        page.Finds("quarter cups", teaspoons["cup"] / 12);
        page.Finds("tablespoons", teaspoons["tbsp"] / 3);
        page.Finds("teaspoons", teaspoons["tsp"]);
        page.Finds("grams held", spoons.Grams.Typical);
        page.Finds("grams held low", spoons.Grams.Low);
        page.Finds("grams held high", spoons.Grams.High);
        page.Finds("rounding error", spoons.RoundingErrorGrams);
        Assert.Contains($"*{spoons.Text}*", File.ReadAllText(Repository.PathOf("docs", "science", "spoons.md")), StringComparison.Ordinal);
    }

    private static void Ledger(SciencePage page)
    {
        var treatment = Given.Draft(Given.Line("salt", "table", page.Given("salt"), page.UnitOf("salt"))).Ratios().On(0) with
        {
            RetainedPercent = Band.Exact(page.Given("retained")),
        };
        var ledger = SaltLedger.Of(
            Given.Pile(Given.Pieces("beef-brisket", 6000) with { PortionGrams = page.Given("portion") }), 0, [treatment], isWeighed: true);
        page.Finds("salt weighed", ledger.SaltWeighedGramsPerKilogramGreen);
        page.Finds("salt per kg green", ledger.SaltGramsPerKilogramGreen.Typical);
        page.Finds("sodium added", ledger.AddedSodiumGramsPerKilogramGreen.Typical);
        page.Finds("own sodium", ledger.OwnSodiumGramsPerKilogramGreen!.Value);
        page.Finds("salt per kg cooked low", ledger.SaltGramsPerKilogramCooked!.Value.Low);
        page.Finds("salt per kg cooked", ledger.SaltGramsPerKilogramCooked.Value.Typical);
        page.Finds("salt per kg cooked high", ledger.SaltGramsPerKilogramCooked.Value.High);
        page.Finds("sodium per portion", ledger.SodiumMilligramsPerPortion!.Value.Typical);
    }

    private static void Checks(SciencePage page)
    {
        var treatment = Given.Draft(Given.Line("salt", "table", page.Given("salt"), page.UnitOf("salt"))).Ratios().On(0);
        var roast = SaltCheck.Of(SaltLedger.Of(Given.Pile(Given.Pieces("beef-brisket", 6000)), 0, [treatment], isWeighed: true), Seed.Catalogue).Single(check => check.Id == "S25");
        page.Finds("measured", roast.Measured!.Value.Typical);
        page.Finds("lowest", roast.Lowest!.Value);
        page.Finds("highest", roast.Highest!.Value);
        page.Finds("salt to add", double.Parse(roast.Advice.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture));
        page.Finds("part of a day", page.Given("sodium") / Seed.Catalogue.SodiumReferences.Single(r => r.Id == "us-daily-value").SodiumMilligrams * 100);
    }
}
