using System.Text.Json.Nodes;

namespace RubLab.Contracts.Tests.Salt;

public class SaltCheckTests
{
    private const string CardInCups =
        """
        {"pile":[{"cut":"beef-brisket"}],"portion":{"value":150,"unit":"g"},"treatments":[{"retained":{"value":100,"unit":"%"},"formula":{
          "name":"The old card","kind":"rub","writtenFor":{"value":12,"unit":"lb"},"lines":[
            {"ingredient":"salt","form":"table","amount":{"value":3,"unit":"tbsp"}},
            {"ingredient":"paprika","amount":{"value":0.25,"unit":"cup"}}]}}]}
        """;

    [Fact]
    public void A_check_needs_no_weights_and_agrees_with_the_sheet_of_a_weighed_formula()
    {
        var sheet = Document.FirstSheet();
        var ledger = sheet.SheetAnswer()["salt"]![0]!["ledger"]!;
        var check = Document.Of(sheet.Json).Edit(
            "- /weighingStep & - /overage & - /pieces & - /pile/0/count & - /pile/0/weightEach").Set("/pile", new JsonArray(JsonNode.Parse(
            """{"id":"shoulders","cut":"pork-shoulder","weightIs":"purchase","trimLoss":{"value":8,"unit":"%"}}"""))).SaltCheckAnswer();
        Assert.Equal(ledger.ToJsonString(), check["ledger"]!.ToJsonString());
        Assert.Equal("2026.3", (string)check["dataVersion"]!);
    }

    [Fact]
    public void A_card_in_cups_is_less_certain_than_the_same_card_weighed()
    {
        var check = Document.Of(CardInCups).SaltCheckAnswer()["ledger"]!["saltPerKgGreen"]!;
        var sheet = Document.Of(CardInCups).Edit("""/pile/0/count = 1 & /pile/0/weightEach = {"value":12,"unit":"lb"}""")
            .SheetAnswer()["salt"]![0]!["ledger"]!["saltPerKgGreen"]!;
        Assert.Equal((double)sheet["typical"]!, (double)check["typical"]!);
        Assert.Equal((double)sheet["low"]!, (double)sheet["high"]!);
        // USDA's tablespoon of 18 g, filled 10 % more or less by hand.
        var salt = 3 * 18 * 0.985281 / (12 * 0.45359237);
        Assert.Equal(salt, (double)check["typical"]!, 0.005);
        Assert.Equal(salt * 0.9, (double)check["low"]!, 0.005);
        Assert.Equal(salt * 1.1, (double)check["high"]!, 0.005);
    }

    [Fact]
    public void A_card_that_does_not_name_its_salt_spans_all_salts_and_asks()
    {
        var answer = Document.Of(CardInCups).Edit("- /treatments/0/formula/lines/0/form").SaltCheckAnswer();
        var band = answer["ledger"]!["saltPerKgGreen"]!;
        Assert.True((double)band["high"]! / (double)band["low"]! > 4, band.ToJsonString());
        var finding = Assert.Single(answer["findings"]!.AsArray(), f => (string)f!["code"]! == "form-unnamed")!;
        Assert.Equal("/treatments/0/formula/lines/0", (string)finding["pointer"]!);
        Assert.Single(answer["findings"]!.AsArray(), f => (string)f!["code"]! == "density-spread");
    }

    [Fact]
    public void Of_two_cards_in_spoons_each_finding_names_its_own()
    {
        var second = Document.Of(CardInCups).Json;
        var answer = Document.Of(CardInCups).Set("/treatments/1", JsonNode.Parse(second)!["treatments"]![0]!.DeepClone()).Edit(
            """/treatments/1/formula/name = "The other card" & /treatments/1/formula/lines/0/form = "flake-hollow" """).SaltCheckAnswer();

        var said = answer["findings"]!.AsArray().Where(f => (string)f!["code"]! == "density-spread").Select(f => (string)f!["message"]!).ToList();
        Assert.Equal(2, said.Count);
        Assert.StartsWith("The card of The old card is written in spoons and cups.", said[0], StringComparison.Ordinal);
        Assert.StartsWith("The card of The other card is written in spoons and cups.", said[1], StringComparison.Ordinal);
        var flakes = Assert.Single(answer["findings"]!.AsArray(), f => (string)f!["code"]! == "rub-by-volume-on-flake")!;
        Assert.StartsWith("In The other card, ", (string)flakes["message"]!, StringComparison.Ordinal);
    }

    [Fact]
    public void Treatments_add_up_over_the_stack_and_each_entry_names_its_own()
    {
        var answer = Document.Of(CardInCups).Edit(
            """/treatments/1 = {"formulaId":"pork-rub","retained":{"value":50,"unit":"%"},"applications":2}""").SaltCheckAnswer()["ledger"]!;
        var alone = Document.Of(CardInCups).SaltCheckAnswer()["ledger"]!;
        // The stored rub is 20 g/kg of table salt, half of it kept, twice.
        Assert.Equal(
            (double)alone["saltPerKgGreen"]!["typical"]! + (20 * 0.985281), (double)answer["saltPerKgGreen"]!["typical"]!, 0.011);
        Assert.Equal(
            (double)alone["saltWeighedPerKgGreen"]!["value"]! + 40, (double)answer["saltWeighedPerKgGreen"]!["value"]!, 1e-9);
        Assert.Equal([0, 0, 1], answer["entries"]!.AsArray().Select(e => (int)e!["treatment"]!));
        Assert.Equal(
            answer["entries"]!.AsArray().Sum(e => (double)e!["salt"]!["typical"]!), (double)answer["saltPerKgGreen"]!["typical"]!, 0.011);
    }

    [Fact]
    public void Nothing_said_about_what_stays_counts_all_of_it_and_says_so()
    {
        var answer = Document.Of(CardInCups).Edit("- /treatments/0/retained").SaltCheckAnswer();
        Assert.Equal(Document.Of(CardInCups).SaltCheckAnswer()["ledger"]!.ToJsonString(), answer["ledger"]!.ToJsonString());
        var finding = Assert.Single(answer["findings"]!.AsArray(), f => (string)f!["code"]! == "retained-assumed")!;
        Assert.Equal("/treatments/0", (string)finding["pointer"]!);
    }

    [Fact]
    public void Juices_returned_keep_all_of_the_salt()
    {
        var kept = Document.Of(CardInCups).Edit("/pile/0/juicesReturned = true").SaltCheckAnswer()["ledger"]!;
        var green = (double)kept["saltPerKgGreen"]!["typical"]!;
        // Smoked brisket: 56 % typical yield.
        Assert.Equal(green / 0.56, (double)kept["saltPerKgCooked"]!["typical"]!, 0.02);
    }

    [Theory]
    [InlineData(0.5, "below", "below")]
    [InlineData(1.0, "within", "within")]
    [InlineData(1.7, "above", "above")]
    public void The_range_for_roasts_judges_the_salt_of_green_weight(double percent, string verdict, string typical)
    {
        // Common practice: 0.75 to 1.5 % of green weight; table salt is 98.53 % sodium chloride.
        var check = Check(percent, """{"value":100,"unit":"%"}""");
        Assert.Equal((verdict, typical), ((string)check["verdict"]!, (string)check["typicalVerdict"]!));
        Assert.Equal((7.5, 15, "g/kg"), ((double)check["lowest"]!, (double)check["highest"]!, (string)check["unit"]!));
        Assert.Equal(("common-practice", "low"), ((string)check["sourceId"]!, (string)check["confidence"]!));
        Assert.Equal(percent * 9.85281, (double)check["measured"]!["typical"]!, 0.005);
    }

    [Fact]
    public void A_band_that_crosses_a_bound_cannot_be_judged_though_its_typical_value_can()
    {
        var check = Check(0.9, """{"low":70,"typical":90,"high":100,"unit":"%"}""");
        Assert.Equal(("cannot-tell", "within"), ((string)check["verdict"]!, (string)check["typicalVerdict"]!));
    }

    [Theory]
    [InlineData("/pile = []", "/pile required")]
    [InlineData("- /pile", "/pile required")]
    [InlineData("""/pile/1 = {"cut":"lamb-leg"}""", "/pile too-many")]
    [InlineData("""/pile/0/cut = "brisket" """, "/pile/0/cut unknown-cut")]
    [InlineData("/pile/0/count = 2", "/pile/0 one-or-the-other")]
    [InlineData("- /treatments", "/treatments required")]
    [InlineData("/portion/value = 0", "/portion/value out-of-range")]
    [InlineData("""/treatments/0/formula/base = "area" & /treatments/0/formula/dose = {"value":1,"unit":"g/100cm2"}""", "/treatments/0/formula base-unknown")]
    public void A_check_is_refused_where_it_is_wrong(string edits, string expected) =>
        Assert.Equal([expected], Document.Faults(Document.Of(CardInCups).Edit(edits).SaltCheck().Log));

    [Fact]
    public void Meat_with_added_solution_under_salty_treatments_is_called_salted_already()
    {
        var answer = Document.Of(CardInCups).Edit("""/pile/0/addedSolution = {"value":8,"unit":"%"}""").SaltCheckAnswer();
        Assert.Equal("/pile/0", (string)Assert.Single(answer["findings"]!.AsArray(), f => (string)f!["code"]! == "already-salted")!["pointer"]!);
    }

    private static JsonNode Check(double percent, string retained)
    {
        var ledger = Document.Of(
            $$"""
            {"pile":[{"cut":"pork-loin"}],"treatments":[{"retained":{{retained}},"formula":{"name":"Brine","kind":"dry-brine",
              "lines":[{"ingredient":"salt","form":"table","amount":{"value":{{percent}},"unit":"%"} }] } }]}
            """).SaltCheckAnswer()["ledger"]!;
        return Assert.Single(ledger["checks"]!.AsArray())!;
    }
}
