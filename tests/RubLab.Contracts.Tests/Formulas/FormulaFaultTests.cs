using System.Text.Json.Nodes;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Tests.Formulas;

/// <summary>What may be wrong with a formula, on its own: pointers start at the formula.</summary>
public class FormulaFaultTests
{
    private const string InParts =
        """
        {"name":"Rub","kind":"rub","dose":{"value":22,"unit":"g/kg"},"lines":[
          {"ingredient":"salt","form":"table","amount":{"value":2,"unit":"parts-by-mass"}},
          {"ingredient":"black-pepper","form":"ground","amount":{"value":3,"unit":"parts-by-mass"}}]}
        """;

    private const string Card =
        """
        {"name":"Card","kind":"rub","writtenFor":{"value":12,"unit":"lb"},"writtenForIs":"purchase","lines":[
          {"ingredient":"salt","form":"table","amount":{"value":3,"unit":"tbsp"}},
          {"ingredient":"paprika","amount":{"value":0.25,"unit":"cup"}}]}
        """;

    private const string InPercent =
        """
        {"name":"Shoulder pump","kind":"injection","dose":{"value":10,"unit":"%"},"lines":[
          {"ingredient":"water"},
          {"ingredient":"salt","form":"table","amount":{"value":8,"unit":"%-of-liquid"}}]}
        """;

    [Theory]
    [InlineData("- /dose", "/dose dose-required")]
    [InlineData("""/dose/unit = "g" """, "/dose/unit unit-not-allowed")]
    [InlineData("""/dose/unit = "g/100cm2" """, "/dose/unit unit-not-allowed")]
    [InlineData("""/dose/unit = "grams" """, "/dose/unit unknown-unit")]
    [InlineData("- /dose/unit", "/dose/unit required")]
    [InlineData("- /dose/value", "/dose/value required")]
    [InlineData("/dose/value = 0", "/dose/value out-of-range")]
    [InlineData("/dose/value = -22", "/dose/value out-of-range")]
    [InlineData("/dose/value = 1001", "/dose/value out-of-range")]
    [InlineData("/dose/value = 1e-300", "/dose/value out-of-range")]
    [InlineData("- /kind", "/kind required")]
    [InlineData("""/kind = "Rub" """, "/kind unknown-word")]
    [InlineData("""/kind = "injection" & /base = "cooked" """, "/base base-not-allowed")]
    [InlineData("""/base = "raw" """, "/base unknown-word")]
    [InlineData("""/base = "area" """, "/dose/unit unit-not-allowed")]
    [InlineData("""/writtenForIs = "green" """, "/writtenForIs needs-other")]
    [InlineData("""/writtenForIs = "gross" """, "/writtenForIs needs-other; /writtenForIs unknown-word")]
    [InlineData("- /name", "/name required")]
    [InlineData("""/name = "  " """, "/name required")]
    [InlineData("""/name = "a\u0000b" """, "/name bad-text")]
    [InlineData("""/name = "a\nb" """, "/name bad-text")]
    public void A_formula_in_parts_is_refused_where_it_is_wrong(string edits, string expected) => Refused(InParts, edits, expected);

    [Theory]
    [InlineData("/lines = []", "/lines required")]
    [InlineData("- /lines", "/lines required")]
    [InlineData("/lines/1 = null", "/lines/1 required")]
    [InlineData("/lines/1 = {}", "/lines/1/amount required; /lines/1/ingredient required")]
    [InlineData("""/lines/0/ingredient = "slat" """, "/lines/0/ingredient unknown-ingredient")]
    [InlineData("""/lines/0/form = "dust" """, "/lines/0/form unknown-form")]
    [InlineData("""/lines/0/form = "ground" """, "/lines/0/form unknown-form")]
    [InlineData("""/lines/0/amount/unit = "spoons" """, "/lines/0/amount/unit unknown-unit")]
    [InlineData("""/lines/0/amount/unit = "%-of-liquid" """, "/lines/0/amount/unit unit-not-allowed")]
    [InlineData("""/lines/0/amount/unit = "cm" """, "/lines/0/amount/unit unit-not-allowed")]
    [InlineData("- /lines/0/amount/unit", "/lines/0/amount/unit required")]
    [InlineData("- /lines/0/amount/value", "/lines/0/amount/value required")]
    [InlineData("/lines/0/amount/value = -2", "/lines/0/amount/value out-of-range")]
    [InlineData("/lines/0/amount/value = 1e8", "/lines/0/amount/value out-of-range")]
    [InlineData("/lines/0/amount/value = 1e-300", "/lines/0/amount/value out-of-range")]
    [InlineData("/lines/0/amount/value = 0 & /lines/1/amount/value = 0", "/lines all-zero")]
    [InlineData("/lines/0/nitriteFraction = 1.5", "/lines/0/nitriteFraction out-of-range")]
    [InlineData("/lines/0/nitrateFraction = -0.1", "/lines/0/nitrateFraction out-of-range")]
    [InlineData("""/lines/1/amount/unit = "g" """, "/lines/1/amount/unit mixed-authoring")]
    [InlineData("""/lines/1/amount/unit = "%" """, "/lines/1/amount/unit mixed-authoring")]
    [InlineData("""/lines/1/amount/unit = "parts-by-volume" """, "/lines/1/amount/unit mixed-authoring")]
    [InlineData("""/lines/0 = {"ingredient":"ancho-dried","amount":{"value":1,"unit":"parts-by-volume"}} & /lines/1/amount/unit = "parts-by-volume" """, "/lines/0/amount no-density")]
    public void A_line_is_refused_where_it_is_wrong(string edits, string expected) => Refused(InParts, edits, expected);

    [Theory]
    [InlineData("- /dose", "/dose dose-required")]
    [InlineData("""- /dose & /writtenFor = {"value":6,"unit":"kg"}""", "/dose dose-required")]
    [InlineData("""/lines/0/amount = {"value":92,"unit":"%-of-liquid"}""", "/lines no-rest; /lines rest-missing")]
    [InlineData("""/lines/0/amount = {"value":90,"unit":"%-of-liquid"}""", "/lines rest-missing")]
    [InlineData("- /lines/1/amount", "/lines/1/amount required; /lines/0/amount required")]
    [InlineData("""/lines/2 = {"ingredient":"sugar-brown"}""", "/lines/2/amount rest-twice")]
    [InlineData("/lines/1/amount/value = 100", "/lines no-rest")]
    [InlineData("/lines/1/amount/value = 101", "/lines/1/amount/value out-of-range")]
    [InlineData("/lines/1/amount/value = -1", "/lines/1/amount/value out-of-range")]
    [InlineData("""/lines/2 = {"ingredient":"sugar-brown","amount":{"value":92,"unit":"%-of-liquid"}}""", "/lines no-rest")]
    [InlineData("""/lines/2 = {"ingredient":"sugar-brown","amount":{"value":2,"unit":"%-of-water"}}""", "/lines/2/amount/unit mixed-authoring")]
    [InlineData("""/lines/2 = {"ingredient":"sugar-brown","amount":{"value":2,"unit":"g"}}""", "/lines/2/amount/unit mixed-authoring")]
    [InlineData("""/kind = "rub" """, "/lines/0/amount required; /lines/1/amount/unit unit-not-allowed")]
    [InlineData("""/kind = "dry-brine" """, "/lines/0/amount required; /lines/1/amount/unit unit-not-allowed")]
    [InlineData("""/base = "area" & /dose = {"value":2,"unit":"g/100cm2"}""", "/base base-not-allowed")]
    [InlineData("/dose/value = 1001", "/dose/value out-of-range")]
    [InlineData("""/kind = "soak" & /dose/value = 20001""", "/dose/value out-of-range")]
    public void A_liquid_in_percent_is_refused_where_it_is_wrong(string edits, string expected) => Refused(
        InPercent, edits, string.Join("; ", expected.Split("; ").Order(StringComparer.Ordinal)));

    [Theory]
    [InlineData("/lines/1/amount/value = 99.9")]
    [InlineData("""/lines/1/amount = {"value":250,"unit":"%-of-water"}""")]
    [InlineData("/lines/1/amount/value = 0")]
    [InlineData("""/kind = "soak" & /dose = {"value":300,"unit":"%"}""")]
    [InlineData("""/kind = "mop" """)]
    [InlineData("""/kind = "sauce" & /base = "portion" """)]
    [InlineData("""/kind = "soak" & - /dose & /lines = [{"ingredient":"water","amount":{"value":2000,"unit":"g/kg"}}]""")]
    public void A_liquid_that_leaves_a_rest_is_taken(string edits) => Assert.Empty(FaultsOf(Document.Of(InPercent).Edit(edits).Json));

    [Theory]
    [InlineData("- /writtenFor & - /writtenForIs", "/writtenFor written-for-required")]
    [InlineData("- /writtenFor", "/writtenFor written-for-required; /writtenForIs needs-other")]
    [InlineData("/writtenFor/value = 0", "/writtenFor/value out-of-range")]
    [InlineData("/writtenFor/value = 1e-300", "/writtenFor/value out-of-range")]
    [InlineData("""/writtenFor/unit = "cup" """, "/writtenFor/unit unit-not-allowed")]
    [InlineData("""/writtenForIs = "trimmed" """, "/writtenForIs unknown-word")]
    [InlineData("""/lines/1/ingredient = "sodium-chloride" """, "/lines/1/amount no-density")]
    public void A_card_is_refused_where_it_is_wrong(string edits, string expected) => Refused(Card, edits, expected);

    [Theory]
    [InlineData("/lines/0/amount/value = 0")]
    [InlineData("/dose/value = 1000")]
    [InlineData("""/dose = {"value":2.2,"unit":"%"}""")]
    [InlineData("""/dose = {"value":22000,"unit":"ppm"}""")]
    public void What_is_in_range_is_taken(string edits) => Assert.Empty(FaultsOf(Document.Of(InParts).Edit(edits).Json));

    [Fact]
    public void A_formula_by_area_needs_the_surface_of_weighed_pieces()
    {
        const string byArea = """/base = "area" & /dose = {"value":2,"unit":"g/100cm2"}""";
        Assert.Empty(FaultsOf(Document.Of(InParts).Edit(byArea).Json));
        var sheet = Document.FirstSheet().Set("/treatments/0/formula", JsonNode.Parse(Document.Of(InParts).Edit(byArea).Json));
        Assert.Empty(sheet.Sheet().Log.Faults);
        Assert.True((double)sheet.SheetAnswer()["treatments"]![0]!["onMeat"]!["value"]! > 0);
    }

    [Theory]
    [InlineData("cure-6-25", "", "")]
    [InlineData("cure-6-25", ",\"nitriteFraction\":0.0625", "")]
    [InlineData("cure-6-25", ",\"nitriteFraction\":0.06250000001", "")]
    [InlineData("cure-6-25", ",\"nitriteFraction\":0.0625001", "/lines/0/nitriteFraction cure-content-contradicted")]
    [InlineData("cure-6-25", ",\"nitriteFraction\":0.06", "/lines/0/nitriteFraction cure-content-contradicted")]
    [InlineData("cure-6-25", ",\"nitriteFraction\":0.01,\"nitrateFraction\":0.04", "/lines/0/nitrateFraction cure-content-contradicted; /lines/0/nitriteFraction cure-content-contradicted")]
    [InlineData("cure-6-25", ",\"nitriteFraction\":0.6,\"nitrateFraction\":0.6", "/lines/0/nitrateFraction cure-content-contradicted; /lines/0/nitriteFraction cure-content-contradicted")]
    [InlineData("cure-6-25-nitrate-4", ",\"nitriteFraction\":0.0625,\"nitrateFraction\":0.04", "")]
    [InlineData("cure-6-25-nitrate-4", ",\"nitrateFraction\":0.05", "/lines/0/nitrateFraction cure-content-contradicted")]
    [InlineData("cure-0-6", ",\"nitriteFraction\":0.006", "")]
    [InlineData("cure-0-6", ",\"nitriteFraction\":0.0625", "/lines/0/nitriteFraction cure-content-contradicted")]
    [InlineData("sodium-nitrite", ",\"nitriteFraction\":0.5", "/lines/0/nitriteFraction not-a-cure")]
    [InlineData("sodium-nitrite", "", "")]
    [InlineData("curing-salt", ",\"nitriteFraction\":0.0625,\"nitrateFraction\":0.04", "")]
    [InlineData("curing-salt", "", "/lines/0/nitriteFraction cure-content-unknown")]
    [InlineData("curing-salt", ",\"nitriteFraction\":0", "/lines/0/nitriteFraction out-of-range")]
    [InlineData("curing-salt", ",\"nitriteFraction\":1.2", "/lines/0/nitriteFraction out-of-range")]
    [InlineData("curing-salt", ",\"nitriteFraction\":0.6,\"nitrateFraction\":0.6", "/lines/0/nitrateFraction cure-over-whole")]
    [InlineData("plant-nitrite-powder", "", "/lines/0/nitriteFraction cure-content-unknown")]
    [InlineData("salt", ",\"nitriteFraction\":0.0625", "/lines/0/nitriteFraction not-a-cure")]
    [InlineData("black-pepper", ",\"nitrateFraction\":0.0625", "/lines/0/nitrateFraction not-a-cure")]
    public void A_cure_says_what_it_holds_and_nothing_else_is_one(string ingredient, string members, string expected) => Assert.Equal(
        expected.Split("; ", StringSplitOptions.RemoveEmptyEntries),
        FaultsOf(Document.Of(InParts).Edit($$"""/lines/0 = {"ingredient":"{{ingredient}}","amount":{"value":1,"unit":"parts-by-mass"}{{members}} }""").Json));

    [Fact]
    public void A_content_that_the_cure_s_name_denies_is_told_with_what_it_holds_and_the_ingredient_for_another_pack()
    {
        var request = new FormulaRequest
        {
            Name = "Lock cure", Kind = "dry-brine", Lines = [new() { Ingredient = "cure-6-25", Amount = QuantityRequest.Of(2, "g/kg"), NitriteFraction = 0.01 }],
        };

        var fault = Assert.Single(FormulaAnswers.Check(request, Seed.Catalogue).Log.Faults);

        Assert.Equal(
            "Curing salt, 6.25 % nitrite, holds 6.25 % of nitrite, and 1 % is declared here. If that is what the pack says, name the ingredient Curing salt, content as on its pack (curing-salt).",
            fault.Detail);
        Assert.Equal(("curing-salt", 0.01, 0.0625), (fault.Parameters["other"], fault.Parameters["declared"], fault.Parameters["holds"]));
    }

    [Fact]
    public void A_hundred_lines_are_a_formula_and_a_hundred_and_one_are_not()
    {
        Assert.Empty(FaultsOf(WithLines(100)));
        Assert.Equal(["/lines too-many"], FaultsOf(WithLines(101)));
    }

    [Theory]
    [InlineData(200, "")]
    [InlineData(201, "/name too-long")]
    [InlineData(10_000, "/name too-long")]
    public void A_name_has_at_most_200_characters(int length, string expected) =>
        Assert.Equal(
            expected.Length == 0 ? [] : [expected],
            FaultsOf(Document.Of(InParts).Set("/name", new string('n', length)).Json));

    [Fact]
    public void A_name_with_half_a_surrogate_pair_is_refused()
    {
        string[] broken = ["\ud83c", "rub \udf56", "\udf56\ud83c", "\ud83c\ud83c\udf56"];
        Assert.All(broken, name =>
        {
            var request = new FormulaRequest
            {
                Name = name, Kind = "rub", Lines = [new() { Ingredient = "salt", Amount = QuantityRequest.Of(1, "%") }],
            };
            Assert.Equal(["/name bad-text"], Document.Faults(FormulaAnswers.Check(request, Seed.Catalogue).Log));
        });
    }

    private static void Refused(string formula, string edits, string expected) =>
        Assert.Equal(expected.Split("; "), FaultsOf(Document.Of(formula).Edit(edits).Json));

    private static IReadOnlyList<string> FaultsOf(string json) => Document.Faults(FormulaAnswers.Check(
        System.Text.Json.JsonSerializer.Deserialize(json, RubLab.Contracts.Json.RubLabJson.Default.FormulaRequest)!, Seed.Catalogue).Log);

    private static string WithLines(int count)
    {
        var lines = new JsonArray();
        for (var i = 0; i < count; i++)
        {
            lines.Add(JsonNode.Parse("""{"ingredient":"salt","form":"table","amount":{"value":1,"unit":"parts-by-mass"}}"""));
        }

        return Document.Of(InParts).Set("/lines", lines).Json;
    }
}
