using System.Text.Json.Nodes;

namespace RubLab.Contracts.Tests.Scaling;

/// <summary>A soak in a stack: what the meat takes up stands where an injection has what is retained.</summary>
public sealed class SoakTests
{
    // Equal weights of meat and of a liquid of 5 % sodium chloride.
    private const string Bath =
        """
        {"pile":[{"id":"legs","cut":"chicken-leg","pieces":[{"weight":{"value":500,"unit":"g"} },{"weight":{"value":1500,"unit":"g"} }],"bone":{"value":0,"unit":"%"} }],
         "treatments":[{"formula":{"name":"Lock bath","kind":"soak","dose":{"value":100,"unit":"%"},
             "lines":[{"ingredient":"water"},{"ingredient":"sodium-chloride","amount":{"value":5,"unit":"%-of-liquid"} }] },"temperature":{"value":4,"unit":"C"} }] }
        """;

    // USDA SR28 05075, chicken leg with skin: 67.30 % water.
    private const double MeatWater = 673.0;

    [Fact]
    public void What_is_told_of_a_bath_names_it()
    {
        var untold = Answer("- /treatments/0/temperature");
        var name = (string)untold["treatments"]![0]!["name"]!;

        Assert.Contains($" given for {name}. ", Told(untold, "temperature-assumed"), StringComparison.Ordinal);
        Assert.Contains($" given for {name}. ", Told(untold, "soak-until-even"), StringComparison.Ordinal);
        Assert.Contains($" {name} is at 20 C. ", Told(Answer("/treatments/0/temperature/value = 20"), "brine-warm"), StringComparison.Ordinal);

        static string Told(JsonNode sheet, string code) =>
            (string)Assert.Single(sheet["findings"]!.AsArray(), f => (string)f!["code"]! == code)!["message"]!;
    }

    [Fact]
    public void Until_even_the_meat_s_water_is_as_salt_as_the_liquid()
    {
        var sheet = Answer("");
        // By conservation: 50 g of salt over 950 g of water and the meat's own.
        Assert.Equal(50 * MeatWater / (950 + MeatWater), Salt(sheet), 0.0051);
        Assert.Equal(50 - Salt(sheet), (double)Ledger(sheet)["saltDiscardedPerKgGreen"]!["typical"]!, 0.011);
        Assert.Contains(sheet["findings"]!.AsArray(), f => (string)f!["code"]! == "soak-until-even");
        Assert.DoesNotContain(sheet["findings"]!.AsArray(), f => (string)f!["code"]! == "retained-assumed");
        Assert.Equal([100.0, 1900.0], sheet["treatments"]![0]!["lines"]!.AsArray().Select(l => (double)l!["toMix"]!["value"]!).Order());
    }

    [Fact]
    public void More_liquid_of_the_same_strength_gives_more_and_never_more_than_its_strength()
    {
        var more = Salt(Answer("""/treatments/0/liquid = {"value":20,"unit":"kg"} & - /treatments/0/formula/dose & /treatments/0/formula/dose = {"value":1,"unit":"%"}"""));
        Assert.Equal(500 * MeatWater / (9500 + MeatWater), more, 0.0051);
        Assert.InRange(more, Salt(Answer("")), 0.05 / 0.95 * MeatWater);
    }

    [Fact]
    public void In_a_time_it_gets_as_far_as_a_stirred_bath_does_and_the_rest_is_doubt()
    {
        var hours = Ledger(Answer("""/treatments/0/time = {"value":4,"unit":"h"}"""))["saltPerKgGreen"]!;
        var day = Ledger(Answer("""/treatments/0/time = {"value":24,"unit":"h"}"""))["saltPerKgGreen"]!;
        Assert.True((double)hours["low"]! < (double)hours["typical"]! && (double)hours["typical"]! < (double)hours["high"]!);
        Assert.True((double)hours["typical"]! < (double)day["typical"]! && (double)day["high"]! <= Salt(Answer("")) + 0.01);
    }

    [Fact]
    public void A_soak_a_rub_and_a_finishing_salt_are_one_total()
    {
        const string More =
            """
            /treatments/1 = {"formula":{"name":"Rub","kind":"rub","lines":[{"ingredient":"sodium-chloride","amount":{"value":5,"unit":"g/kg"} }] },"retained":{"value":80,"unit":"%"} } & /treatments/2 = {"formula":{"name":"At table","kind":"rub","base":"cooked","lines":[{"ingredient":"sodium-chloride","amount":{"value":2,"unit":"g/kg"} }] },"retained":{"value":100,"unit":"%"},"stage":"after"} & /pile/0/cookYield = {"value":75,"unit":"%"} & /pile/0/keptInCooking = {"value":80,"unit":"%"}
            """;
        var sheet = Answer(More.Trim());
        var soaked = Salt(Answer(""));
        Assert.Equal(soaked + 4 + 1.5, Salt(sheet), 0.011);
        Assert.Equal((((soaked + 4) * 0.8) + 1.5) / 0.75, (double)Ledger(sheet)["saltPerKgCooked"]!["typical"]!, 0.011);
    }

    [Fact]
    public void A_salt_check_needs_no_weights_where_the_dose_is_given() => Assert.Equal(
        Salt(Answer("")),
        (double)Document.Of(Bath).Edit("- /pile/0/pieces").SaltCheckAnswer()["ledger"]!["saltPerKgGreen"]!["typical"]!, 1e-9);

    [Theory]
    [InlineData("""/treatments/0/retained = {"value":50,"unit":"%"}""", "/treatments/0/retained not-for-kind")]
    [InlineData("/treatments/0/applications = 2", "/treatments/0/applications not-for-kind")]
    [InlineData("""/treatments/0/liquid = {"value":2,"unit":"L"} & /treatments/0/dose = {"value":50,"unit":"%"}""", "/treatments/0/liquid one-or-the-other")]
    [InlineData("""/treatments/0/liquid = {"value":0,"unit":"L"}""", "/treatments/0/liquid/value out-of-range")]
    [InlineData("""/treatments/0/time = {"value":0,"unit":"h"}""", "/treatments/0/time/value out-of-range")]
    [InlineData("""/treatments/0/temperature = {"value":60,"unit":"C"}""", "/treatments/0/temperature/value out-of-range")]
    [InlineData("/treatments/0/formula/lines/1/amount/value = 30", "/treatments/0/formula above-saturation")]
    [InlineData("""/treatments/0/formula = {"name":"Rub","kind":"rub","lines":[{"ingredient":"salt","form":"table","amount":{"value":1,"unit":"%"} }] }""", "/treatments/0/temperature not-for-kind")]
    [InlineData("""/treatments/0/formula/lines = [{"ingredient":"sucrose","amount":{"value":1,"unit":"parts-by-mass"} }]""", "/treatments/0/formula no-water")]
    public void A_soak_is_refused_where_it_is_wrong(string edits, string expected) =>
        Assert.Equal([expected], Document.Of(Bath).Edit(edits).SheetFaults());

    [Fact]
    public void A_bath_by_weight_needs_the_weight_of_the_meat() => Assert.Equal(
        ["/treatments/0/liquid needs-other"],
        Document.Faults(Document.Of(Bath).Edit("""- /pile/0/pieces & /treatments/0/liquid = {"value":2,"unit":"L"}""").SaltCheck().Log));

    private static JsonNode Answer(string edits) => Document.Of(Bath).Edit(edits).SheetAnswer();

    private static JsonNode Ledger(JsonNode sheet) => sheet["salt"]![0]!["ledger"]!;

    private static double Salt(JsonNode sheet) => (double)Ledger(sheet)["saltPerKgGreen"]!["typical"]!;
}
