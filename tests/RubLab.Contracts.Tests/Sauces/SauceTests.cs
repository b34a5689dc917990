using System.Text.Json;
using System.Text.Json.Nodes;
using RubLab.Contracts.Json;
using RubLab.Contracts.Sauces;

namespace RubLab.Contracts.Tests.Sauces;

public sealed class SauceTests
{
    // 20 g of salt in a kilogram, boiled down to half: 40 g per kg, at any amount made.
    private const string HalfAndHalf =
        """
        {"formula":{"name":"Glaze","kind":"sauce","reducedTo":{"value":50,"unit":"%"},"lines":[
            {"ingredient":"sodium-chloride","amount":{"value":20,"unit":"g"} },
            {"ingredient":"sucrose","amount":{"value":180,"unit":"g"} },
            {"ingredient":"water","amount":{"value":800,"unit":"g"} }]},
         "portion":{"value":30,"unit":"g"} }
        """;

    [Fact]
    public void A_sauce_boiled_down_to_half_is_twice_as_salty()
    {
        var sauce = Answer("");

        Assert.Equal((1000, 500, 500), (Value(sauce, "intoPot"), Value(sauce, "boiledOff"), Value(sauce, "finished")));
        Assert.Equal(40, (double)sauce["saltPerKgFinished"]!["typical"]!, 1e-9);
        Assert.Equal(40, (double)sauce["solids"]!["value"]!, 0.11);
        // 0.39337 g of sodium in a gram of sodium chloride: 30 g of sauce hold 1.2 g of salt.
        Assert.Equal(472, (double)sauce["portion"]!["sodium"]!["typical"]!);
        Assert.Equal(1573, (double)sauce["sodiumPer100g"]!["typical"]!, 1.5);
        Assert.NotEmpty(sauce["checks"]!.AsArray());
    }

    [Fact]
    public void The_weight_wanted_scales_the_pot_and_not_the_salt()
    {
        var sauce = Answer("""/make = {"value":3,"unit":"kg"}""");

        Assert.Equal((6000, 3000), (Value(sauce, "intoPot"), Value(sauce, "finished")));
        Assert.Equal([120, 1080, 4800], sauce["lines"]!.AsArray().Select(l => Value(l!, "intoPot")));
        Assert.Equal(40, (double)sauce["saltPerKgFinished"]!["typical"]!, 1e-9);
    }

    [Theory]
    [InlineData("""/reduce = {"left":{"value":80,"unit":"%"} }""", 800)]
    [InlineData("""/reduce = {"salt":{"value":5,"unit":"%"} }""", 400)]
    [InlineData("""/reduce = {"salt":{"value":2,"unit":"%"} }""", 1000)]
    public void A_reduction_can_be_asked_for_by_what_is_left_or_by_its_salt(string edit, double finished) =>
        Assert.Equal(finished, Value(Answer(edit), "finished"), 1e-9);

    [Fact]
    public void Solids_asked_for_are_the_solids_answered()
    {
        var sauce = Answer("""/reduce = {"solids":{"value":50,"unit":"%"} }""");
        Assert.Equal(50, (double)sauce["solids"]!["value"]!, 1e-9);
        // Tap water leaves a trace behind: 200 g of salt and sugar are half of a little more than 400 g.
        Assert.InRange(Value(sauce, "finished"), 400, 403);
    }

    [Fact]
    public void Reference_amounts_by_volume_carry_the_doubt_of_the_density_until_a_cup_is_weighed()
    {
        var guessed = Answer("")["referenceAmounts"]!.AsArray().Single(a => (string)a!["id"]! == "barbecue-sauce")!;
        var weighed = Answer("""/density = {"value":1.2,"unit":"g/mL"}""");
        var known = weighed["referenceAmounts"]!.AsArray().Single(a => (string)a!["id"]! == "barbecue-sauce")!;

        // 21 CFR 101.12(b): two tablespoons, 30 mL by 101.9(b)(5)(viii).
        Assert.Equal((30, "mL"), ((double)guessed["amount"]!["value"]!, (string)guessed["amount"]!["unit"]!));
        Assert.True((double)guessed["sodium"]!["low"]! < (double)guessed["sodium"]!["high"]!);
        Assert.Equal(36, (double)known["weight"]!["typical"]!);
        Assert.Equal(Math.Round(36 * 40 * 0.39337), (double)known["sodium"]!["high"]!);
        Assert.DoesNotContain(weighed["findings"]!.AsArray(), f => (string)f!["code"]! == "sauce-density-assumed");
    }

    [Fact]
    public void Juices_carry_the_salt_that_was_measured_in_them()
    {
        const string Juices = """/formula/lines/3 = {"ingredient":"cooking-juices","amount":{"value":1000,"unit":"g"} } & /formula/reducedTo/value = 60""";
        var guessed = Answer(Juices);
        var measured = Answer(Juices + """ & /formula/lines/3/salt = {"low":0.8,"typical":1,"high":1.2,"unit":"%"}""");

        var told = Assert.Single(guessed["findings"]!.AsArray(), f => (string)f!["code"]! == "salt-low-confidence")!;
        Assert.StartsWith("In Glaze, Meat juices from the cook holds ", (string)told["message"]!, StringComparison.Ordinal);
        Assert.DoesNotContain(measured["findings"]!.AsArray(), f => (string)f!["code"]! == "salt-low-confidence");
        // (20 + 1000 x 1 %) g in 1200 g.
        Assert.Equal(
            [28.0 / 1.2, 30.0 / 1.2, 32.0 / 1.2],
            new[] { "low", "typical", "high" }.Select(end => (double)measured["saltPerKgFinished"]![end]!), new Near(0.005));
    }

    [Fact]
    public void A_card_without_a_dose_is_a_sauce_all_the_same() =>
        Assert.Equal(40, (double)Answer("- /portion")["saltPerKgFinished"]!["typical"]!, 1e-9);

    [Theory]
    [InlineData("/formula/reducedTo/value = 15", "/formula/reducedTo/value reduced-below-solids")]
    [InlineData("/formula/reducedTo/value = 0", "/formula/reducedTo/value out-of-range")]
    [InlineData("""/formula/kind = "rub" """, "/formula/reducedTo reduction-not-allowed")]
    [InlineData("""/formula/kind = "rub" & - /formula/reducedTo""", "/formula no-sauce")]
    [InlineData("- /formula", " one-or-the-other")]
    [InlineData("/reduce = {}", "/reduce one-or-the-other")]
    [InlineData("""/reduce = {"left":{"value":50,"unit":"%"},"salt":{"value":4,"unit":"%"} }""", "/reduce one-or-the-other")]
    [InlineData("""/reduce = {"salt":{"value":1,"unit":"%"} }""", "/reduce/salt/value reduction-adds-water")]
    [InlineData("""/reduce = {"salt":{"value":0,"unit":"%"} }""", "/reduce/salt/value out-of-range")]
    [InlineData("""/reduce = {"salt":{"value":4,"unit":"g/kg"} }""", "/reduce/salt/unit unit-not-allowed")]
    [InlineData("""/reduce = {"salt":{"value":30,"unit":"%"} }""", "/reduce/salt/value reduced-below-solids")]
    [InlineData("""/make = {"value":0,"unit":"g"}""", "/make/value out-of-range")]
    [InlineData("""/portion = {"value":2,"unit":"h"}""", "/portion/unit unit-not-allowed")]
    [InlineData("""/density = {"value":9,"unit":"g/mL"}""", "/density/value out-of-range")]
    [InlineData("""/referenceAmounts = []""", "/referenceAmounts out-of-range")]
    [InlineData("""/referenceAmounts = ["pudding",null]""", "/referenceAmounts/0 unknown-reference-amount,/referenceAmounts/1 required")]
    [InlineData("""/formula/lines/0/salt = {"value":120,"unit":"%"}""", "/formula/lines/0/salt/value out-of-range")]
    public void A_sauce_is_refused_where_it_is_wrong(string edits, string expected) =>
        Assert.Equal(expected.Split(','), Document.Faults(Compute(edits).Log));

    [Fact]
    public void All_faults_come_at_once() => Assert.Equal(
        ["/density/value out-of-range", "/make/value out-of-range", "/portion/unit unknown-unit", "/reduce one-or-the-other"],
        Document.Faults(Compute(
            """/reduce = {} & /make = {"value":-1,"unit":"kg"} & /portion/unit = "ladle" & /density = {"value":0,"unit":"g/mL"}""").Log));

    private static JsonNode Answer(string edits)
    {
        var result = Compute(edits);
        Assert.True(result.IsGood, string.Join('\n', result.Log.Faults.Select(f => $"{f.Pointer} {f.Code} {f.Detail}")));
        return JsonNode.Parse(JsonSerializer.Serialize(result.Value, RubLabJson.Default.SauceResponse))!;
    }

    private static Core.Faults.Result<SauceResponse> Compute(string edits) => SauceAnswers.Compute(
        JsonSerializer.Deserialize(Document.Of(HalfAndHalf).Edit(edits).Json, RubLabJson.Default.SauceRequest)!, Seed.Catalogue, (_, _) => null);

    private static double Value(JsonNode node, string member) => (double)node[member]!["value"]!;

    private sealed class Near(double tolerance) : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) <= tolerance;

        public int GetHashCode(double obj) => 0;
    }
}
