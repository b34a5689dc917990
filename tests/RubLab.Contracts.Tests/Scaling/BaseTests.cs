using System.Text.Json.Nodes;

namespace RubLab.Contracts.Tests.Scaling;

/// <summary>Ratios that stand on something other than green weight.</summary>
public class BaseTests
{
    private const string Fine = """/weighingStep = {"value":0.001,"unit":"g"}""";

    // 300 g of salt for 6 kg: 50 g/kg of the weight it was written for.
    private const string Card =
        """
        {"name":"Card","kind":"rub","writtenFor":{"value":6,"unit":"kg"},"lines":[{"ingredient":"salt","form":"table","amount":{"value":300,"unit":"g"}}]}
        """;

    [Theory]
    [InlineData(0)]
    [InlineData(8)]
    [InlineData(35)]
    public void A_card_for_meat_as_bought_puts_on_what_it_would_have_before_trimming(double trim)
    {
        var sheet = Post($$"""/treatments/0/formula = {{Card}} & /treatments/0/formula/writtenForIs = "purchase" & /pile/0/trimLoss/value = {{trim}}""");
        Assert.Equal(14.4 * 50, OnMeat(sheet));
        Assert.Equal("purchase", (string)sheet["treatments"]![0]!["base"]!);
        var finding = Assert.Single(sheet["findings"]!.AsArray(), f => (string)f!["code"]! == "written-for-purchase")!;
        Assert.Equal("/treatments/0/formula", (string)finding["pointer"]!);
        Assert.Equal(trim, (double)finding["parameters"]!["trim"]!);
        // Weighed per kg green it is more, by the trim.
        Assert.Equal(50 / (1 - (trim / 100)), (double)sheet["salt"]![0]!["ledger"]!["saltWeighedPerKgGreen"]!["value"]!, 1e-9);
    }

    [Theory]
    [InlineData("")]
    [InlineData(""" & /treatments/0/formula/writtenForIs = "green" """)]
    public void A_card_for_trimmed_meat_stands_on_green_weight(string also)
    {
        var sheet = Post($"/treatments/0/formula = {Card}{also}");
        Assert.Equal(13.248 * 50, OnMeat(sheet));
        Assert.Equal("green", (string)sheet["treatments"]![0]!["base"]!);
        Assert.DoesNotContain(sheet["findings"]!.AsArray(), f => (string)f!["code"]! == "written-for-purchase");
    }

    [Fact]
    public void A_card_for_meat_as_bought_on_meat_weighed_green_counts_the_cuts_typical_trim()
    {
        var sheet = Post(
            $$"""/treatments/0/formula = {{Card}} & /treatments/0/formula/writtenForIs = "purchase" & /treatments/0/on = ["legs"]""");
        // The reference's typical trim of chicken legs is 2 %, a recollection.
        Assert.Equal(0.608 * 50 / 0.98, OnMeat(sheet), 0.02);
    }

    [Fact]
    public void A_dose_per_cooked_weight_is_less_per_green_by_the_yield()
    {
        const string edits = """/treatments/0/formula/base = "cooked" """;
        // The meat of pork shoulder is left at 69.5 % by default, and its 15 % of bone whole.
        Assert.Equal(13.248 * (0.15 + (0.85 * 0.695)) * 22, OnMeat(Post(edits)), 0.0006);
        var own = Post(edits + """ & /pile/0/cookYield = {"value":50,"unit":"%"}""");
        Assert.Equal(13.248 * 0.5 * 22, OnMeat(own), 0.0006);
        Assert.Equal("cooked", (string)own["treatments"]![0]!["base"]!);
        Assert.Equal(4.4, (double)own["salt"]![0]!["ledger"]!["saltWeighedPerKgGreen"]!["value"]!);
    }

    [Fact]
    public void A_dose_per_portion_counts_whole_portions_of_cooked_meat_without_bone()
    {
        // Of 13.248 kg green 70 % are left, and 10 % are bone: 7.9488 kg are 46 portions of 170 g.
        var sheet = Post(
            """
            /treatments/0/formula/base = "portion" & /pile/0/cookYield = {"value":70,"unit":"%"} & /pile/0/bone = {"value":10,"unit":"%"}
            """.Trim());
        Assert.Equal(46 * 0.170 * 22, OnMeat(sheet), 0.0006);
    }

    [Fact]
    public void A_dose_per_portion_without_a_portion_is_refused_clearly()
    {
        var log = Document.FirstSheet().Edit("""- /portion & /treatments/0/formula/base = "portion" """).Sheet().Log;
        var fault = Assert.Single(log.Faults);
        Assert.Equal("/treatments/0/formula base-unknown", $"{fault.Pointer} {fault.Code}");
        Assert.Equal(("portion", "shoulders"), (fault.Parameters["base"], fault.Parameters["line"]));
        Assert.Contains("portion", fault.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lines_own_portion_goes_before_the_sheets()
    {
        var sheet = Post("""/pile/0/portion = {"value":85,"unit":"g"}""");
        var whole = Post("");
        double Sodium(JsonNode answer) => (double)answer["salt"]![0]!["ledger"]!["sodiumPerPortion"]!["typical"]!;
        Assert.Equal(Sodium(whole) / 2, Sodium(sheet), 1.0);
        Assert.Equal(
            whole["salt"]![1]!.ToJsonString(), sheet["salt"]![1]!.ToJsonString());
    }

    [Fact]
    public void Parts_by_volume_are_not_parts_by_mass()
    {
        // USDA's teaspoons: 6.0 g of table salt, 2.3 g of ground pepper; equal cups hold 72.29 % salt.
        var sheet = Post(
            """
            /treatments/0/formula/lines/0/amount = {"value":1,"unit":"parts-by-volume"} & /treatments/0/formula/lines/1/amount = {"value":1,"unit":"parts-by-volume"}
            """.Trim());
        var ratio = (double)sheet["treatments"]![0]!["lines"]![0]!["ratio"]!["value"]!;
        Assert.InRange(ratio / 22, 0.7229 - 0.005, 0.7229 + 0.005);
        Sums.AreExact(sheet["treatments"]![0]!, 0.001m, "g");
    }

    private static JsonNode Post(string edits) => Document.FirstSheet().Edit(Fine).Edit(edits).SheetAnswer();

    private static double OnMeat(JsonNode sheet) => (double)sheet["treatments"]![0]!["onMeat"]!["value"]!;
}
