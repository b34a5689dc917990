using System.Text.Json.Nodes;

namespace RubLab.Contracts.Tests.Salt;

public sealed class ProductTests
{
    private const string Seasoning =
        """
        {"pile":[{"cut":"beef-ground-80"}],"treatments":[{"retained":{"value":100,"unit":"%"},"formula":{"name":"Sausage seasoning","kind":"rub",
          "lines":[{"ingredient":"salt","form":"table","amount":{"value":1.6,"unit":"%"} }] } }]}
        """;

    [Fact]
    public void A_named_product_is_judged_by_its_own_ranges_alone()
    {
        // 9 CFR 318.10(c)(3)(ii), 2015: coppa gets at least 4.5 lb of salt per hundredweight.
        var coppa = Checks("""/pile/0/product = "coppa" """);
        Assert.Equal(("S11", "below"), ((string)Assert.Single(coppa)!["id"]!, (string)coppa[0]!["verdict"]!));
    }

    [Fact]
    public void Without_a_product_the_cut_says_what_it_is_compared_with() =>
        Assert.Equal(["S01", "S02", "S03", "S04", "S17"], Checks("").Select(c => (string)c!["id"]!).Order(StringComparer.Ordinal));

    [Fact]
    public void Of_a_sausage_s_levels_only_the_range_says_how_to_come_inside()
    {
        var checks = Checks("""/pile/0/product = "fresh-sausage" & /treatments/0/formula/lines/0/amount/value = 2.2 """)
            .Where(c => c!["additive"] is null).ToDictionary(c => (string)c!["id"]!);

        Assert.Equal(["S01", "S02", "S03", "S04"], checks.Keys.Order(StringComparer.Ordinal));
        Assert.All(checks.Values, c => Assert.Equal("above", (string)c!["verdict"]!));
        Assert.Equal(["S04"], checks.Where(c => c.Value!["restore"] is not null).Select(c => c.Key));
        Assert.StartsWith("Take", (string)checks["S04"]!["advice"]!, StringComparison.Ordinal);
        Assert.DoesNotContain(checks.Where(c => c.Key != "S04"), c => ((string)c.Value!["advice"]!).Contains("Take", StringComparison.Ordinal));
    }

    [Fact]
    public void A_product_the_reference_does_not_know_is_refused_with_those_it_does()
    {
        var result = Document.Of(Seasoning).Edit("""/pile/0/product = "pudding" """).SaltCheck();
        var fault = Assert.Single(result.Log.Faults);
        Assert.Equal(("/pile/0/product", "unknown-product"), (fault.Pointer, fault.Code));
        Assert.Contains("fresh-sausage", fault.Detail, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("beef-brisket", "/pile/0/bladeTenderised = false", "temperature-red-meat")]
    [InlineData("beef-brisket", "/pile/0/bladeTenderised = true", "injected-not-intact")]
    [InlineData("beef-brisket", """/pile/0/addedSolution = {"value":8,"unit":"%"}""", "injected-not-intact")]
    [InlineData("beef-ground-80", "/pile/0/bladeTenderised = false", "temperature-ground")]
    public void Meat_that_is_not_whole_inside_gets_another_caution_than_a_whole_roast(string cut, string edit, string caution)
    {
        var shown = Document.Of(Seasoning).Edit($"""/pile/0/cut = "{cut}" """).Edit(edit)
            .SaltCheckAnswer()["cautions"]!.AsArray().Select(c => (string)c!["id"]!)
            .Where(id => id is "temperature-red-meat" or "injected-not-intact" or "temperature-ground");
        Assert.Equal([caution], shown);
    }

    private static JsonArray Checks(string edits) =>
        Document.Of(Seasoning).Edit(edits).SaltCheckAnswer()["ledger"]!["checks"]!.AsArray();
}
