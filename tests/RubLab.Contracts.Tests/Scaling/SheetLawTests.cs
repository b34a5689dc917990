using System.Text.Json.Nodes;

namespace RubLab.Contracts.Tests.Scaling;

/// <summary>What must hold of every sheet, told from its answer alone.</summary>
public class SheetLawTests
{
    private const string Stack =
        """
        /treatments/0/on = ["shoulders","legs"] & /treatments/1 = {"formulaId":"pork-rub","stage":"after"}
         & /treatments/2 = {"formula":{"name":"Brine","kind":"dry-brine","lines":[{"ingredient":"salt","form":"table","amount":{"value":0.7,"unit":"%"}},{"ingredient":"sugar-brown","amount":{"value":0.35,"unit":"%"}}]},"on":["legs"]}
        """;

    [Theory]
    [InlineData(1, "g")]
    [InlineData(0.1, "g")]
    [InlineData(5, "g")]
    [InlineData(0.01, "oz")]
    [InlineData(0.05, "oz")]
    [InlineData(0.3, "g")]
    [InlineData(0.03125, "oz")]
    [InlineData(0.123456, "g")]
    [InlineData(1, "mg")]
    [InlineData(0.002, "kg")]
    [InlineData(0.005, "lb")]
    public void Pieces_sum_to_onMeat_and_lines_to_toMix_exactly_in_decimal(double step, string unit)
    {
        var answer = WithStack().Edit($$"""/weighingStep = {"value":{{step}},"unit":"{{unit}}"}""").SheetAnswer();
        Assert.Equal(3, answer["treatments"]!.AsArray().Count);
        Assert.All(answer["treatments"]!.AsArray(), t => Sums.AreExact(t!, (decimal)step, unit));
    }

    [Fact]
    public void Doubling_every_weight_doubles_the_amounts_within_one_step()
    {
        var once = WithStack().SheetAnswer();
        var twice = WithStack().Edit(
            "/pile/0/weightEach/value = 7.2 & /pile/1/pieces/0/weight/value = 620 & /pile/1/pieces/1/weight/value = 596").SheetAnswer();
        Assert.Equal(2 * 13856, (double)twice["greenWeight"]!["value"]!);
        for (var t = 0; t < 3; t++)
        {
            foreach (var total in new[] { "onMeat", "toMix" })
            {
                Assert.InRange(Amount(twice, t, total) - (2 * Amount(once, t, total)), -1, 1);
            }

            Assert.Equal(
                once["treatments"]![t]!["lines"]!.AsArray().Select(l => l!["ratio"]!.ToJsonString()),
                twice["treatments"]![t]!["lines"]!.AsArray().Select(l => l!["ratio"]!.ToJsonString()));
        }

        Assert.Equal(once["salt"]!.ToJsonString(), twice["salt"]!.ToJsonString());
    }

    [Fact]
    public void Two_piles_sheeted_apart_or_together_agree_within_one_step()
    {
        var shoulders = Document.FirstSheet().SheetAnswer();
        var legs = Document.FirstSheet().Edit("""/treatments/0/on = ["legs"]""").SheetAnswer();
        var both = Document.FirstSheet().Edit("- /treatments/0/on").SheetAnswer();
        Assert.InRange(Amount(both, 0, "onMeat") - Amount(shoulders, 0, "onMeat") - Amount(legs, 0, "onMeat"), -1, 1);
    }

    [Fact]
    public void The_order_of_the_treatments_changes_only_the_order_of_the_answer()
    {
        var sheet = WithStack();
        var forth = sheet.SheetAnswer();
        var treatments = JsonNode.Parse(sheet.Json)!["treatments"]!.AsArray();
        var back = sheet.Set("/treatments", new JsonArray(treatments.Reverse().Select(t => t!.DeepClone()).ToArray())).SheetAnswer();
        Assert.Equal(
            forth["treatments"]!.AsArray().Reverse().Select(t => t!.ToJsonString()),
            back["treatments"]!.AsArray().Select(t => t!.ToJsonString()));
        for (var line = 0; line < 2; line++)
        {
            foreach (var total in new[] { "saltPerKgGreen", "saltPerKgCooked", "sodiumPerPortion", "saltWeighedPerKgGreen" })
            {
                Assert.Equal(forth["salt"]![line]!["ledger"]![total]!.ToJsonString(), back["salt"]![line]!["ledger"]![total]!.ToJsonString());
            }
        }
    }

    [Fact]
    public void Leaving_the_pieces_out_leaves_out_nothing_else()
    {
        var all = WithStack().SheetAnswer();
        var none = WithStack().Edit("""/pieces = "none" """).SheetAnswer();
        Assert.All(none["treatments"]!.AsArray(), t => Assert.False(t!.AsObject().ContainsKey("pieces")));
        foreach (var treatment in all["treatments"]!.AsArray())
        {
            Assert.True(treatment!.AsObject().Remove("pieces"));
        }

        Assert.Equal(all.ToJsonString(), none.ToJsonString());
    }

    [Fact]
    public void A_check_gives_the_ledger_and_no_amounts_to_weigh()
    {
        var sheet = WithStack().SheetAnswer();
        var check = WithStack().Edit("""/purpose = "check" """).SheetAnswer();
        Assert.Empty(check["treatments"]!.AsArray());
        Assert.Equal(sheet["salt"]!.ToJsonString(), check["salt"]!.ToJsonString());
        Assert.Equal(sheet["cautions"]!.ToJsonString(), check["cautions"]!.ToJsonString());
        Assert.DoesNotContain(check["findings"]!.AsArray(), f => (string)f!["code"]! == "scale-too-coarse");
    }

    [Fact]
    public void Overage_enters_the_mix_and_nothing_else()
    {
        var with = Document.FirstSheet().SheetAnswer();
        var without = Document.FirstSheet().Edit("- /overage").SheetAnswer();
        Assert.Equal(291, Amount(without, 0, "toMix"));
        Assert.Equal(Amount(with, 0, "onMeat"), Amount(without, 0, "onMeat"));
        Assert.Equal(with["salt"]!.ToJsonString(), without["salt"]!.ToJsonString());
    }

    [Fact]
    public void A_step_left_out_is_one_gram_and_a_step_in_ounces_is_answered_in_ounces()
    {
        Assert.Equal(Document.FirstSheet().SheetAnswer().ToJsonString(), Document.FirstSheet().Edit("- /weighingStep").SheetAnswer().ToJsonString());
        var ounces = Document.FirstSheet().Edit("""/weighingStep = {"value":0.01,"unit":"oz"}""").SheetAnswer();
        // 4 x 3.312 kg x 22 g/kg = 291.456 g; an ounce is 28.349523125 g.
        Assert.Equal("""{"value":10.28,"unit":"oz"}""", ounces["treatments"]![0]!["onMeat"]!.ToJsonString());
        Assert.Equal("""{"value":488.76,"unit":"oz"}""", ounces["greenWeight"]!.ToJsonString());
    }

    [Fact]
    public void A_coarse_step_is_noticed_with_the_step_and_the_batch_that_would_do()
    {
        // Legs: 310 g and 298 g at 22 g/kg are 6.8 g and 6.6 g: 7 g and 6 g in whole grams, a step being 16.7 % of 6 g.
        var sheet = Document.FirstSheet().Edit("""/treatments/0/on = ["legs"]""").SheetAnswer();
        var finding = Assert.Single(
            sheet["findings"]!.AsArray(), f => (string)f!["code"]! == "scale-too-coarse" && (string)f["parameters"]!["what"]! == "Lockside pork rub")!;
        Assert.Equal("6 g", (string)finding["parameters"]!["amount"]!);
        Assert.Equal("/treatments/0", (string)finding["pointer"]!);
        Assert.Equal(16.7, (double)finding["parameters"]!["percent"]!);
        Assert.Equal("0.2 g", (string)finding["parameters"]!["suggestedStep"]!);
        Assert.Equal(4, (double)finding["parameters"]!["multiple"]!);
    }

    private static Document WithStack() => Document.FirstSheet().Edit(Stack.ReplaceLineEndings(""));

    private static double Amount(JsonNode answer, int treatment, string total) =>
        (double)answer["treatments"]![treatment]![total]!["value"]!;
}
