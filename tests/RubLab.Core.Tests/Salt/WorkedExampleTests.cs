using RubLab.Core.Quantities;
using RubLab.Core.Salt;
using RubLab.Core.Tests.Published;

namespace RubLab.Core.Tests.Salt;

/// <summary>Published amounts and what follows from them, each through formula, ratios and ledger.</summary>
public sealed class WorkedExampleTests
{
    private static readonly List<PublishedCase> Cases = PublishedCase.Read("worked-examples.csv");

    private static readonly Dictionary<string, Func<PublishedCase, double>> Computed = new()
    {
        ["E01"] = c => Given.Draft(
                Given.Line("salt", "table", c.Input("salt_tsp"), "tsp"),
                Given.Line("black-pepper", "ground", c.Input("pepper_tsp"), "tsp")).Dosed(20).Ratios()
            .Lines[0].Share.Typical * 100,
        ["E02-sodium"] = c => MilligramsIn(c.Input("salt_tsp")),
        ["E02-day"] = c => MilligramsIn(c.Input("salt_tsp"))
            / Seed.Catalogue.SodiumReferences.Single(r => r.Id == "us-daily-value").SodiumMilligrams * 100,
        ["E03-weighed"] = c => Ledger(c.Input("salt_tbsp"), "tbsp", c.Input("meat_lb")).SaltWeighedGramsPerKilogramGreen,
        ["E03-sodium-chloride"] = c => Ledger(c.Input("salt_tbsp"), "tbsp", c.Input("meat_lb")).SaltGramsPerKilogramGreen.Typical,
        ["E04-weighed"] = c => Ledger(c.Input("salt_tbsp"), "tbsp", c.Input("meat_lb")).SaltWeighedGramsPerKilogramGreen,
        ["E04-sodium-chloride"] = c => Ledger(c.Input("salt_tbsp"), "tbsp", c.Input("meat_lb")).SaltGramsPerKilogramGreen.Typical,
        ["E08-pound"] = c => Ledger(c.Input("amount"), c.InputText("unit"), c.Input("meat_lb")).SaltWeighedGramsPerKilogramGreen,
        ["E08-ounce"] = c => Ledger(c.Input("amount"), c.InputText("unit"), c.Input("meat_lb")).SaltWeighedGramsPerKilogramGreen,
        ["E12-low"] = c => EqualVolumes(c).Low * 100,
        ["E12-high"] = c => EqualVolumes(c).High * 100,
        ["W19"] = c => UnitTable.Get("%").FromBase(
            Given.Draft(Given.Line("water", "liquid", c.Input("solution_g"), "g")).WrittenFor(c.Input("raw_g"), "g").Ratios().DoseGramsPerKilogram),
        ["NaCl-fraction"] = _ => Seed.Catalogue.Constants.SodiumInSodiumChlorideGramsPerGram * 100,
        ["NaCl-in-table-salt"] = _ => Given.Ingredient("salt").SaltGramsPer100Grams.Typical,
    };

    public static TheoryData<string> Ids => new(Cases.Select(c => c.Id));

    [Fact]
    public void Every_published_case_is_computed() =>
        Assert.Equal(Cases.Select(c => c.Id).Order(StringComparer.Ordinal), Computed.Keys.Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_published_case_comes_out_as_printed(string id)
    {
        var published = Cases.Single(c => c.Id == id);

        published.AssertIs(Computed[id](published));
    }

    [Fact]
    public void Every_published_case_names_its_source_and_why_it_is_as_close_as_it_is() => Assert.All(Cases, c =>
    {
        Assert.NotEmpty(c.Source);
        Assert.NotEmpty(c.Locator);
        Assert.NotEmpty(c.Why);
        Assert.NotEmpty(c.Unit);
        Assert.InRange(c.Tolerance, 1e-15, Math.Abs(c.Answer) / 100);
    });

    // A kilogram of meat, so that grams per kilogram are grams.
    private static double MilligramsIn(double teaspoons) => 1000 * SaltLedger.Of(
        Given.Pile(Given.Pieces("beef-brisket", 1000)), 0,
        [Given.Draft(Given.Line("salt", "table", teaspoons, "tsp")).WrittenFor(1, "kg").Ratios().On(0)], isWeighed: true)
        .AddedSodiumGramsPerKilogramGreen.Typical;

    private static SaltLedger Ledger(double amount, string unit, double pounds) => SaltLedger.Of(
        Given.Pile(Given.Pieces("beef-brisket", 5000)), 0,
        [Given.Draft(Given.Line("salt", "table", amount, unit)).WrittenFor(pounds, "lb").Ratios().On(0)], isWeighed: false);

    private static Band EqualVolumes(PublishedCase c) => Given.Draft(
            Given.Line(Given.MadeUp("first", BandOf(c.InputText("first")), default, 0), 1, "parts-by-volume"),
            Given.Line(Given.MadeUp("second", BandOf(c.InputText("second")), default, 0), 1, "parts-by-volume")).Dosed(10).Ratios()
        .Lines[0].Share;

    private static Band BandOf(string text)
    {
        var ends = text.Split('-').Select(PublishedCase.NumberOf).ToArray();
        return new Band(ends[0], (ends[0] + ends[1]) / 2, ends[1]);
    }
}
