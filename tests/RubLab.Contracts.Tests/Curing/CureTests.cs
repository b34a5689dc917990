using System.Text.Json;
using System.Text.Json.Nodes;
using RubLab.Contracts.Curing;
using RubLab.Contracts.Json;
using RubLab.Core.Faults;

namespace RubLab.Contracts.Tests.Curing;

/// <summary>Cures for whole pieces and ground meat.</summary>
public sealed class CureTests
{
    // 120 ppm on 1 kg at 6.25 % is 1.92 g.
    private const string Loin =
        """
        {"method":"dry","cut":"pork-loin","product":"other","meat":{"value":1,"unit":"kg"},
         "lines":[{"ingredient":"cure-6-25"},{"ingredient":"sodium-chloride"}],
         "targets":[{"ingredient":"cure-6-25","additive":"nitrite","reached":{"value":120,"unit":"ppm"} },
                    {"ingredient":"sodium-chloride","additive":"sodium-chloride","reached":{"value":2,"unit":"%"} }] }
        """;

    private const string Sausage =
        """
        {"method":"ground","cut":"beef-ground-80","product":"fresh-sausage","meat":{"value":950,"unit":"g"},
         "lines":[{"ingredient":"ice","amount":{"value":30,"unit":"g"} },{"ingredient":"salt","form":"table","amount":{"value":15,"unit":"g"} },{"ingredient":"sugar-granulated","amount":{"value":5,"unit":"g"} }] }
        """;

    [Fact]
    public void The_nitrite_and_the_salt_are_solved_and_the_cure_brings_some_of_the_salt()
    {
        var answer = Answer(Loin, "");
        // 20 g of salt, 1.92 x 0.9375 of them in the cure.
        Assert.Equal([1.92, 18.2], Exact(answer), Near);
        Assert.Equal(1.9, (double)answer["lines"]![0]!["weighed"]!["value"]!);
        Assert.Equal(-1.04, (double)answer["lines"]![0]!["errorPercent"]!);
        Assert.Equal(20, (double)answer["saltPerKgGreen"]!["typical"]!);
        // 1.92 g at 0.38961 and 18.2 at 0.39337 of sodium.
        Assert.Equal(7.91, (double)answer["sodiumPerKgGreen"]!["typical"]!, 0.005);
    }

    [Fact]
    public void Nitrite_is_told_as_the_potassium_salt_too()
    {
        var reached = Assert.Single(Answer(Loin, """/weighingStep = {"value":0.01,"unit":"g"}""")["reached"]!.AsArray())!;
        // 9 CFR 424.22(b): 120 ppm, or 148 of potassium nitrite.
        Assert.Equal(("nitrite", 120, 0.12), ((string)reached["additive"]!, (double)reached["ingoingPpm"]!["value"]!, (double)reached["perKgGreen"]!["value"]!));
        Assert.Equal(148, Math.Round((double)reached["asPotassiumNitritePpm"]!["value"]!));
    }

    [Fact]
    public void Targets_are_solved_whatever_order_they_stand_in()
    {
        var turned = Loin.Replace("\"targets\":[{\"ingredient\":\"cure-6-25\"", "\"targets\":[{\"ingredient\":\"sodium-chloride\",\"additive\":\"sodium-chloride\",\"reached\":{\"value\":2,\"unit\":\"%\"} },{\"ingredient\":\"cure-6-25\"", StringComparison.Ordinal);
        Assert.Equal([1.92, 18.2], Exact(Answer(turned, "- /targets/2")), Near);
    }

    [Fact]
    public void A_line_in_a_mass_and_one_in_percent_go_by_the_meat()
    {
        var answer = Answer(Loin, """- /targets & /meat/value = 4 & /lines/0/amount = {"value":10,"unit":"g"} & /lines/1/amount = {"value":2,"unit":"%"}""");
        Assert.Equal([10, 80], Exact(answer), Near);
        Assert.Equal([2.5, 20], answer["lines"]!.AsArray().Select(l => (double)l!["ratio"]!["value"]!), Near);
        Assert.Equal(156.25, (double)answer["reached"]![0]!["ingoingPpm"]!["value"]!);
    }

    // 9 CFR 424.21(c): 1/4 oz of nitrite to 100 lb of chopped meat is 156.25 ppm, whatever cut is chopped.
    [Fact]
    public void A_cut_that_becomes_sausage_is_held_against_the_level_of_chopped_meat_and_to_its_temperature()
    {
        const string Chopped = """/method = "ground" & /cut = "pork-shoulder" & /product = "cooked-sausage" & /meat = {"value":100,"unit":"lb"} & - /targets & /lines/1/amount = {"value":2,"unit":"lb"} & /lines/0/amount = """;
        var answer = Answer(Loin, Chopped + """{"value":4,"unit":"oz"}""");

        var check = Check(answer, "nitrite-ground");
        Assert.Equal(("within", 156.25), ((string)check["verdict"]!, (double)check["measured"]!["typical"]!));
        var cautions = answer["cautions"]!.AsArray().Select(c => (string)c!["id"]!).ToList();
        Assert.Contains("temperature-ground", cautions);
        Assert.DoesNotContain("temperature-red-meat", cautions);
        Assert.Contains("/lines/0 limit-exceeded", Document.Faults(Compute(Loin, Chopped + """{"value":4.01,"unit":"oz"}""").Log));
    }

    [Fact]
    public void A_target_without_an_additive_is_grams_of_the_ingredient() => Assert.Equal(
        [1.92, 20], Exact(Answer(Loin, "- /targets/1/additive")), Near);

    [Theory]
    [InlineData("/method = \"ground\"", "/method method-not-for-cut")]
    [InlineData("/cut = \"beef-ground-80\"", "/method method-not-for-cut")]
    [InlineData("/product = \"cooked-sausage\"", "/method method-not-for-cut")]
    [InlineData("/method = \"pumped\"", "/method unknown-word")]
    [InlineData("/method = \"dry\" & - /meat", "/meat required")]
    [InlineData("/targets/0/additive = \"caffeine\"", "/targets/0/additive unknown-word")]
    [InlineData("/targets/1/additive = \"nitrite\"", "/targets/1/additive additive-not-carried")]
    [InlineData("- /targets/1", "/lines/1/amount required")]
    [InlineData("/lines/0/amount = {\"value\":1,\"unit\":\"g\"}", "/targets/0/ingredient target-not-free")]
    [InlineData("/lines/1/amount = {\"value\":1,\"unit\":\"tsp\"} & - /targets/1", "/lines/1/amount/unit unit-not-allowed")]
    [InlineData("/lines/1/amount = {\"value\":1001,\"unit\":\"g\"} & - /targets/1", "/lines/1/amount/value out-of-range")]
    [InlineData("/targets/0/reached/value = 0", "/targets/0/reached/value out-of-range")]
    [InlineData("/targets/0/reached = {\"value\":900,\"unit\":\"g/kg\"}", "/targets/0/reached/value out-of-range")]
    [InlineData("/targets/1/reached = {\"value\":1,\"unit\":\"g/kg\"}", "/targets/1/reached target-below-present")]
    [InlineData("/lines/0/ingredient = \"curing-salt\" & /targets/0/ingredient = \"curing-salt\"", "/lines/0/nitriteFraction cure-content-unknown")]
    // Six and a quarter percent is 0.0625, not 6.25.
    [InlineData("/lines/0/nitriteFraction = 6.25", "/lines/0/nitriteFraction out-of-range")]
    [InlineData("/weighingStep = {\"value\":0,\"unit\":\"g\"}", "/weighingStep/value out-of-range")]
    [InlineData("/skin = {\"value\":100,\"unit\":\"%\"}", "/skin/value out-of-range")]
    [InlineData("/product = \"moon\"", "/product unknown-product")]
    public void What_cannot_be_is_refused_where_it_stands(string edits, string fault) => Assert.Contains(fault, Document.Faults(Compute(Loin, edits).Log));

    // 60 g/kg of 6.25 % is 3750 ppm; as 1 % it would be 600, within 625.
    [Theory]
    [InlineData("0.01", "/lines/0/nitriteFraction cure-content-contradicted")]
    [InlineData("0.0625", "/lines/0 limit-exceeded")]
    public void A_cure_never_counts_as_weaker_than_its_name_says(string fraction, string fault) => Assert.Equal(
        [fault],
        Document.Faults(Compute(Loin, $$"""- /targets & /lines/0 = {"ingredient":"cure-6-25","nitriteFraction":{{fraction}},"amount":{"value":60,"unit":"g/kg"} } & /lines/1/amount = {"value":1,"unit":"g/kg"}""").Log));

    [Fact]
    public void Water_in_ground_meat_of_no_named_product_is_told_with_the_level_of_fresh_sausage()
    {
        const string Unnamed = """- /product & /lines/0/amount = {"value":10,"unit":"%"}""";
        var finding = Assert.Single(Answer(Sausage, Unnamed)["findings"]!.AsArray(), f => (string)f!["code"]! == "water-not-held")!;

        // 9 CFR 319.141: no more than 3 % of water or ice.
        Assert.Equal(("warning", "us-9cfr319-141", 3), ((string)finding["severity"]!, (string)finding["sourceId"]!, (double)finding["parameters"]!["highest"]!));
        Assert.EndsWith("Water and ice in fresh pork sausage: 3 % of all ingredients at most, for product fresh-sausage.", (string)finding["message"]!, StringComparison.Ordinal);
        Assert.DoesNotContain("water-not-held", CodesOf(Answer(Sausage, "")));
        Assert.DoesNotContain("water-not-held", CodesOf(Answer(Sausage, Unnamed + """ & /product = "patty" """)));
        Assert.DoesNotContain("water-not-held", CodesOf(Answer(Sausage, "- /product & - /lines/0")));
        Assert.DoesNotContain("water-not-held", CodesOf(Answer(Loin, "- /product & - /targets/1 & /lines/1 = {\"ingredient\":\"ice\",\"amount\":{\"value\":1,\"unit\":\"%\"} }")));
    }

    [Fact]
    public void Targets_that_hang_on_one_another_are_refused() => Assert.Equal(
        ["/targets/0 targets-undetermined", "/targets/1 targets-undetermined"],
        Document.Faults(Compute(
            Loin,
            """/lines/1/ingredient = "cure-6-25-nitrate-4" & /targets/1/ingredient = "cure-6-25-nitrate-4" """).Log));

    [Fact]
    public void A_cure_above_a_level_is_refused_as_a_sheet_and_answered_as_a_check()
    {
        // 4 g of 6.25 % on 1 kg is 250 ppm.
        const string above = """- /targets/0 & /lines/0/amount = {"value":4,"unit":"g"} & /product = "bacon" """;
        var log = Compute(Loin, above).Log;
        Assert.Equal(["/lines/0 limit-exceeded"], Document.Faults(log));
        Assert.Equal(50, (double)log.Faults[0].Parameters["over"], 1e-6);
        Assert.Equal(0.05, (double)log.Faults[0].Parameters["overGrams"], 1e-9);
        Assert.Matches(
            "^Nitrite of dry cured bacon: the meat would get 250 ppm, all of it by .+[.] Take 50 ppm out: 200 ppm is the most[.] That is 0.05 g of nitrite too much, in 0.8 g of .+[.]$",
            log.Faults[0].Detail);

        var check = Answer(Loin, above + """ & /purpose = "check" """);
        Assert.Equal("above", (string)Check(check, "nitrite-bacon-dry")["verdict"]!);
        Assert.All(check["lines"]!.AsArray(), l => Assert.Null(l!["weighed"]));
    }

    // 9 CFR 424.21(c) for the cap of 156.25 ppm, 120 ppm for what is kept cold. 627 g at 2.5 g/kg are 1.5675 g: 1 g is weighed, 99.68 ppm.
    [Fact]
    public void A_level_to_be_met_is_judged_on_what_is_weighed_and_a_cap_on_what_is_written()
    {
        const string Coarse = """
            /method = "ground" & /cut = "pork-shoulder" & /product = "cooked-sausage" & /meat = {"value":627,"unit":"g"} & - /targets &
            /lines/0/amount = {"value":2.5,"unit":"g/kg"} & /lines/1/amount = {"value":15.1,"unit":"g/kg"} & /weighingStep = {"value":1,"unit":"g"}
            """;
        var coarse = Coarse.ReplaceLineEndings(" ");
        var answer = Answer(Loin, coarse);
        var check = Check(answer, "nitrite-keep-cold");

        Assert.Equal(1, (double)answer["lines"]![0]!["weighed"]!["value"]!);
        Assert.Equal(62_500.0 / 627, (double)answer["reached"]![0]!["ingoingPpm"]!["value"]!, 0.005);
        Assert.Equal(("cannot-tell", "below"), ((string)check["verdict"]!, (string)check["typicalVerdict"]!));
        Assert.Equal(62_500.0 / 627, (double)check["measured"]!["low"]!, 0.005);
        Assert.Equal(156.25, (double)check["measured"]!["high"]!, 1e-9);
        Assert.StartsWith("120 ppm is required, and it may be only 99.7 ppm.", (string)check["advice"]!, StringComparison.Ordinal);
        Assert.Equal(("within", 156.25), ((string)Check(answer, "nitrite-ground")["verdict"]!, (double)Check(answer, "nitrite-ground")["measured"]!["low"]!));

        // Nothing is weighed of a check.
        var written = Answer(Loin, coarse + """ & /purpose = "check" """);
        Assert.Equal("within", (string)Check(written, "nitrite-keep-cold")["verdict"]!);
        Assert.Equal(156.25, (double)written["reached"]![0]!["ingoingPpm"]!["value"]!);
    }

    [Fact]
    public void Of_two_lines_above_a_level_each_is_told_its_own_part()
    {
        // 4 g of 6.25 % and 1 g of 10 % on 1 kg are 250 and 100 ppm.
        var log = Compute(Loin, """
            - /targets & /product = "bacon" & /lines/0/amount = {"value":4,"unit":"g"} & /lines/1 = {"ingredient":"curing-salt","nitriteFraction":0.1,"amount":{"value":1,"unit":"g"} }
            """).Log;

        Assert.Equal(["/lines/0 limit-exceeded", "/lines/1 limit-exceeded"], Document.Faults(log));
        Assert.Contains("would get 350 ppm in all, 250 ppm of it by", log.Faults[0].Detail, StringComparison.Ordinal);
        Assert.Contains("would get 350 ppm in all, 100 ppm of it by", log.Faults[1].Detail, StringComparison.Ordinal);
        Assert.EndsWith("That is 0.15 g of nitrite too much.", log.Faults[1].Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void Bacon_s_levels_leave_out_its_skin()
    {
        // 3 g is 187.5 ppm of all, and 208.3 of nine tenths.
        const string edits = """- /targets/0 & /lines/0/amount = {"value":3,"unit":"g"} & /product = "bacon" """;
        Assert.Equal(187.5, (double)Check(Answer(Loin, edits), "nitrite-bacon-dry")["measured"]!["typical"]!);
        var log = Compute(Loin, edits + """ & /skin = {"value":10,"unit":"%"}""").Log;
        Assert.Equal(208.33, (double)Assert.Single(log.Faults).Parameters["ppm"], 0.005);
    }

    [Fact]
    public void Fresh_sausage_takes_three_percent_of_ice_and_is_held_against_its_own_salt()
    {
        var answer = Answer(Sausage, "");
        var water = Check(answer, "water-fresh-sausage");
        Assert.Equal(("within", 30_000), ((string)water["verdict"]!, (double)water["measured"]!["typical"]!));
        Assert.Contains(answer["checks"]!.AsArray(), c => (string)c!["unit"]! != "ppm" && (string)c["verdict"]! == "within");
        Assert.Contains(answer["cautions"]!.AsArray(), c => ((string)c!["text"]!).Contains("ground", StringComparison.OrdinalIgnoreCase));
        Assert.Empty(answer["reached"]!.AsArray());
        Assert.Equal(["/lines/0 limit-exceeded"], Document.Faults(Compute(Sausage, "/lines/0/amount/value = 31").Log));
    }

    [Fact]
    public void A_plant_powder_s_celery_is_told()
    {
        var answer = Answer(Loin, """- /targets/0 & /lines/0 = {"ingredient":"plant-nitrite-powder","nitriteFraction":0.02,"amount":{"value":2,"unit":"g"} }""");
        Assert.Contains(answer["cautions"]!.AsArray(), c => (string)c!["id"]! == "celery-in-plant-cure");
        Assert.DoesNotContain(Answer(Loin, "")["cautions"]!.AsArray(), c => (string)c!["id"]! == "celery-in-plant-cure");
    }

    private static IEnumerable<string> CodesOf(JsonNode answer) => answer["findings"]!.AsArray().Select(f => (string)f!["code"]!);

    private static IEnumerable<double> Exact(JsonNode answer) => answer["lines"]!.AsArray().Select(l => (double)l!["exact"]!["value"]!);

    private static bool Near(double expected, double actual) => Math.Abs(expected - actual) <= 1e-9 * expected;

    private static JsonNode Check(JsonNode answer, string id) => Assert.Single(answer["checks"]!.AsArray(), c => (string)c!["id"]! == id)!;

    private static JsonNode Answer(string body, string edits)
    {
        var result = Compute(body, edits);
        Assert.True(result.IsGood, string.Join('\n', result.Log.Faults.Select(f => $"{f.Pointer} {f.Code} {f.Detail}")));
        return JsonNode.Parse(JsonSerializer.Serialize(result.Value, RubLabJson.Default.CureResponse))!;
    }

    private static Result<CureResponse> Compute(string body, string edits) => Cures.Compute(
        JsonSerializer.Deserialize(Document.Of(body).Edit(edits).Json, RubLabJson.Default.CureRequest)!, Seed.Catalogue);
}
