using System.Text.Json.Nodes;

namespace RubLab.Contracts.Tests.Scaling;

/// <summary>Limited additives in a stack: a sheet above a level is refused, a check says by how much.</summary>
public sealed class CureTests
{
    // 2.5 g/kg of a cure of 6.25 %: 156.25 ppm.
    private const string Cured =
        """
        {"pile":[{"id":"bellies","cut":"pork-belly","product":"other","pieces":[{"weight":{"value":2000,"unit":"g"} }] }],
         "treatments":[{"formula":{"name":"Lock cure","kind":"dry-brine","lines":[
             {"ingredient":"cure-6-25","amount":{"value":2.5,"unit":"g/kg"} },{"ingredient":"salt","form":"table","amount":{"value":20,"unit":"g/kg"} }] } }],
         "weighingStep":{"value":0.01,"unit":"g"} }
        """;

    [Fact]
    public void A_cure_within_its_level_is_weighed_and_checked()
    {
        var sheet = Answer("");
        var check = Check(sheet, "nitrite-dry");

        Assert.Equal(("within", 156.25, 625), ((string)check["verdict"]!, (double)check["measured"]!["typical"]!, (double)check["highest"]!));
        Assert.Equal(("us-9cfr424-21", "ppm", "green-ingoing"), ((string)check["sourceId"]!, (string)check["unit"]!, (string)check["base"]!));
        Assert.Contains(sheet["cautions"]!.AsArray(), c => (string)c!["id"]! == "cure-out-of-reach");
        Assert.Equal([5, 40], sheet["treatments"]![0]!["lines"]!.AsArray().Select(l => (double)l!["toMix"]!["value"]!));
    }

    // 9 CFR 424.21(c): chopped meat takes 156.25 ppm, and a fresh pork sausage (319.141) no more than 3 % of water.
    [Fact]
    public void A_whole_cut_that_becomes_sausage_is_held_against_the_levels_of_chopped_meat()
    {
        const string Ice = """/treatments/0/formula/lines/1 = {"ingredient":"ice","amount":{"value":32,"unit":"g/kg"} }""";
        var sheet = Answer("/pile/0/product = \"cooked-sausage\"");

        Assert.Equal(156.25, (double)Check(sheet, "nitrite-ground")["highest"]!);
        Assert.Contains(sheet["cautions"]!.AsArray(), c => (string)c!["id"]! == "temperature-ground");
        Assert.DoesNotContain(sheet["cautions"]!.AsArray(), c => (string)c!["id"]! == "temperature-red-meat");
        Assert.Equal(
            ["/treatments/0/formula limit-exceeded"],
            Document.Faults(Document.Of(Cured).Edit("/pile/0/product = \"cooked-sausage\" & /treatments/0/formula/lines/0/amount/value = 2.51").Sheet().Log));
        Assert.Equal(
            ["/treatments/0/formula limit-exceeded"], Document.Faults(Document.Of(Cured).Edit("/pile/0/product = \"fresh-sausage\" & " + Ice).Sheet().Log));
    }

    // 627 g at 2.5 and 15.1 g/kg: of 1.5675 g of cure 1 g is weighed, and of the 11.035 g of mix 11 g go on.
    [Fact]
    public void A_level_to_be_met_is_judged_on_what_is_weighed()
    {
        const string Coarse = """
            /pile/0/product = "cooked-sausage" & /pile/0/pieces/0/weight/value = 627 & /treatments/0/formula/lines/1/amount/value = 15.1 & /weighingStep/value = 1
            """;
        var sheet = Answer(Coarse);
        var treatment = sheet["treatments"]![0]!;
        var weighed = treatment["lines"]!.AsArray().Select(l => (double)l!["toMix"]!["value"]!).ToArray();
        var check = Check(sheet, "nitrite-keep-cold");

        Assert.Equal(1, weighed[0]);
        Assert.Equal((double)treatment["onMeat"]!["value"]! * weighed[0] / weighed.Sum() * 62_500 / 627, (double)check["measured"]!["low"]!, 0.005);
        Assert.Equal(156.25, (double)check["measured"]!["high"]!, 1e-9);
        Assert.Equal(("cannot-tell", "below"), ((string)check["verdict"]!, (string)check["typicalVerdict"]!));
        Assert.Equal("within", (string)Check(Answer(Coarse + """ & /purpose = "check" """), "nitrite-keep-cold")["verdict"]!);
    }

    [Fact]
    public void A_cure_that_declares_what_its_name_denies_is_refused_in_sheet_and_check()
    {
        const string Weaker = "/treatments/0/formula/lines/0/nitriteFraction = 0.01 & /treatments/0/formula/lines/0/amount/value = 60";
        string[] expected = ["/treatments/0/formula/lines/0/nitriteFraction cure-content-contradicted"];

        Assert.Equal(expected, Document.Of(Cured).Edit(Weaker).SheetFaults());
        Assert.Equal(expected, Document.Faults(Document.Of(Cured).Edit(Weaker + " & - /weighingStep").SaltCheck().Log));
    }

    [Fact]
    public void Water_in_ground_meat_of_no_named_product_is_told_line_by_line()
    {
        var sheet = Answer(
            """
            - /pile/0/product & /pile/1 = {"id":"mince","cut":"beef-ground-80","pieces":[{"weight":{"value":1,"unit":"kg"} }] } & /treatments/0/formula/lines/0 = {"ingredient":"ice","amount":{"value":100,"unit":"g/kg"} }
            """);

        var finding = Assert.Single(sheet["findings"]!.AsArray(), f => (string)f!["code"]! == "water-not-held")!;
        Assert.Equal(("/pile/1", "mince"), ((string)finding["pointer"]!, (string)finding["parameters"]!["line"]!));
    }

    [Fact]
    public void A_sheet_above_a_level_is_refused_at_every_treatment_that_brings_some()
    {
        var second = """/treatments/1 = {"formula":{"name":"More","kind":"rub","lines":[{"ingredient":"curing-salt","nitriteFraction":0.1,"amount":{"value":5,"unit":"g/kg"} }] } }""";
        var log = Document.Of(Cured).Edit(second).Sheet().Log;

        Assert.Equal(["/treatments/0/formula limit-exceeded", "/treatments/1/formula limit-exceeded"], Document.Faults(log));
        Assert.Equal(656.25, (double)log.Faults[0].Parameters["ppm"], 1e-9);
        Assert.Equal(31.25, (double)log.Faults[0].Parameters["over"], 1e-9);

        // 31.25 ppm of 2 kg.
        Assert.Equal(0.0625, (double)log.Faults[0].Parameters["overGrams"], 1e-9);
        Assert.Equal(("Nitrite in a dry cure", "nitrite", "bellies"), (log.Faults[0].Parameters["title"], log.Faults[0].Parameters["additive"], log.Faults[0].Parameters["line"]));
        Assert.EndsWith("That is 0.0625 g of nitrite too much.", log.Faults[0].Detail, StringComparison.Ordinal);
        Assert.Contains("nitrite-dry", (string)log.Faults[0].Parameters["limit"], StringComparison.Ordinal);
    }

    [Fact]
    public void Two_lines_of_one_treatment_are_refused_once_together()
    {
        var log = Document.Of(Cured).Edit("""/treatments/0/formula/lines/2 = {"ingredient":"sodium-nitrite","amount":{"value":0.5,"unit":"g/kg"} }""").Sheet().Log;

        Assert.Equal(["/treatments/0/formula limit-exceeded"], Document.Faults(log));
        Assert.Contains("656 ppm, all of it by 'Lock cure'", log.Faults[0].Detail, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""/pile/0/product = "bacon" & /treatments/0/formula/lines/0/amount/value = 3.3""", "nitrite-bacon-dry", "above")]
    [InlineData("- /pile/0/product & /treatments/0/formula/lines/0/amount/value = 3.3", "nitrite-bacon-dry", "above")]
    [InlineData("""/pile/0/product = "bacon" & /pile/0/skin = {"value":25,"unit":"%"}""", "nitrite-bacon-dry", "above")]
    public void Asked_for_as_a_check_it_is_answered(string edits, string limit, string verdict)
    {
        Assert.NotEmpty(Document.Of(Cured).Edit(edits).Sheet().Log.Faults);
        var check = Check(Answer(edits + """ & /purpose = "check" """), limit);
        Assert.Equal(verdict, (string)check["verdict"]!);
        Assert.StartsWith("Take ", (string)check["advice"]!, StringComparison.Ordinal);
    }

    [Fact]
    public void A_salt_check_tells_the_load_too()
    {
        var checks = Document.Of(Cured).Edit("- /pile/0/pieces & - /weighingStep").SaltCheckAnswer()["ledger"]!["checks"]!.AsArray();
        Assert.Equal(156.25, (double)checks.Single(c => (string)c!["id"]! == "nitrite-dry")!["measured"]!["typical"]!);
    }

    [Fact]
    public void The_salt_of_the_cure_counts_as_salt_and_its_nitrite_as_sodium()
    {
        var ledger = Answer("")["salt"]![0]!["ledger"]!;
        // 2.5 x 0.9375 and 20 x 0.98528 g/kg.
        Assert.Equal(22.05, (double)ledger["saltPerKgGreen"]!["typical"]!, 0.005);
        Assert.Equal(0.97, (double)ledger["entries"]![0]!["sodium"]!["typical"]!, 0.005);
    }

    private static JsonNode Check(JsonNode sheet, string id) =>
        Assert.Single(sheet["salt"]![0]!["ledger"]!["checks"]!.AsArray(), c => (string)c!["id"]! == id)!;

    private static JsonNode Answer(string edits) => Document.Of(Cured).Edit(edits).SheetAnswer();
}
