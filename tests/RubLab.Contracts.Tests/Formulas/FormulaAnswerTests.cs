using System.Text.Json;
using System.Text.Json.Nodes;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Json;

namespace RubLab.Contracts.Tests.Formulas;

public class FormulaAnswerTests
{
    [Fact]
    public void A_formula_in_parts_reads_back_as_authored_with_its_ratios_and_shares()
    {
        var answer = Read(
            """
            {"name":"Lockside pork rub","kind":"rub","dose":{"value":2.2,"unit":"%"},"lines":[
              {"ingredient":"salt","form":"table","amount":{"value":2,"unit":"parts-by-mass"}},
              {"ingredient":"black-pepper","amount":{"value":3,"unit":"parts-by-mass"}}]}
            """);
        Assert.Equal(("Lockside pork rub", "rub", "green"), ((string)answer["name"]!, (string)answer["kind"]!, (string)answer["base"]!));
        Assert.Equal(("some-id", 7, "2026-01-01T00:00:00Z"), ((string)answer["id"]!, (int)answer["revision"]!, (string)answer["updatedAt"]!));
        Assert.Equal("""{"value":2.2,"unit":"%"}""", answer["dose"]!.ToJsonString());
        Assert.Equal("""{"value":2,"unit":"parts-by-mass"}""", answer["lines"]![0]!["amount"]!.ToJsonString());
        Assert.Equal("""{"low":8.8,"typical":8.8,"high":8.8,"unit":"g/kg"}""", answer["lines"]![0]!["ratio"]!.ToJsonString());
        Assert.Equal("""{"low":40,"typical":40,"high":40,"unit":"%"}""", answer["lines"]![0]!["share"]!.ToJsonString());
        Assert.Equal("""{"low":60,"typical":60,"high":60,"unit":"%"}""", answer["lines"]![1]!["share"]!.ToJsonString());
        Assert.Equal("""{"value":22,"unit":"g/kg"}""", answer["totalRatio"]!.ToJsonString());
        Assert.Equal("table", (string)answer["lines"]![0]!["form"]!);
        Assert.False(answer["lines"]![1]!.AsObject().ContainsKey("form"));
        Assert.False(answer.AsObject().ContainsKey("writtenFor"));
        Assert.Equal(39.4, (double)answer["saltShare"]!["typical"]!);
    }

    [Theory]
    [InlineData("injection", false)]
    [InlineData("soak", false)]
    [InlineData("mop", true)]
    public void A_liquid_that_dissolves_its_lines_has_no_bulk_density(string kind, bool has)
    {
        var answer = Read(
            $$$"""
            {"name":"Lock water","kind":"{{{kind}}}","dose":{"value":8,"unit":"%"},"lines":[
              {"ingredient":"water","form":"liquid","amount":{"value":1,"unit":"kg"} },
              {"ingredient":"salt","form":"table","amount":{"value":50,"unit":"g"} }] }
            """);
        Assert.Equal(has, answer.AsObject().ContainsKey("bulkDensity"));
    }

    [Fact]
    public void Equal_volumes_of_salt_and_pepper_are_72_percent_salt_by_USDAs_spoons()
    {
        // 6.0 and 2.3 g per teaspoon; corners of the band, not a quotient of bands, bound the share.
        var answer = Read(
            """
            {"name":"Equal parts","kind":"rub","dose":{"value":20,"unit":"g/kg"},"lines":[
              {"ingredient":"salt","form":"table","amount":{"value":1,"unit":"parts-by-volume"}},
              {"ingredient":"black-pepper","form":"ground","amount":{"value":1,"unit":"parts-by-volume"}}]}
            """);
        var share = answer["lines"]![0]!["share"]!;
        Assert.InRange((double)share["typical"]!, 71.8, 72.8);
        Assert.InRange((double)share["low"]!, 67, 70);
        Assert.InRange((double)share["high"]!, 75, 77);
        Assert.Equal(
            20, (double)answer["lines"]![0]!["ratio"]!["typical"]! + (double)answer["lines"]![1]!["ratio"]!["typical"]!, 0.1);
    }

    [Fact]
    public void An_old_card_reads_back_in_the_units_it_was_written_in()
    {
        var answer = Read(
            """
            {"name":"The old card","kind":"rub","writtenFor":{"value":12,"unit":"lb"},"writtenForIs":"purchase","lines":[
              {"ingredient":"salt","form":"table","amount":{"value":3,"unit":"tbsp"}},
              {"ingredient":"paprika","amount":{"value":0.25,"unit":"cup"}}]}
            """);
        Assert.Equal("""{"value":12,"unit":"lb"}""", answer["writtenFor"]!.ToJsonString());
        Assert.Equal("purchase", (string)answer["writtenForIs"]!);
        Assert.Equal("""{"value":3,"unit":"tbsp"}""", answer["lines"]![0]!["amount"]!.ToJsonString());
        // 54 g of salt on 5.44310844 kg.
        Assert.Equal(9.92, (double)answer["lines"]![0]!["ratio"]!["typical"]!);
        Assert.False(answer.AsObject().ContainsKey("dose"));
    }

    [Theory]
    [InlineData(1, "%", 10)]
    [InlineData(10, "g/kg", 10)]
    [InlineData(10000, "ppm", 10)]
    public void Ratios_need_no_dose_and_sum_to_one(double value, string unit, double perKilogram)
    {
        var answer = Read(
            $$"""
            {"name":"Brine","kind":"dry-brine","lines":[{"ingredient":"salt","amount":{"value":{{value}},"unit":"{{unit}}"} },
              {"ingredient":"sugar-granulated","amount":{"value":0.5,"unit":"%"} }]}
            """);
        Assert.Equal(perKilogram, (double)answer["lines"]![0]!["ratio"]!["typical"]!);
        Assert.Equal(perKilogram + 5, (double)answer["totalRatio"]!["value"]!);
    }

    [Theory]
    [InlineData("%-of-liquid", 8, 92)]
    [InlineData("%-of-water", 7.40740740741, 92.5925925926)]
    public void The_rest_of_a_liquid_reads_back_without_an_amount_and_with_its_ratio(string unit, double salt, double water)
    {
        var answer = Read(
            $$"""
            {"name":"Shoulder pump","kind":"injection","dose":{"value":10,"unit":"%"},"lines":[{"ingredient":"water"},
              {"ingredient":"salt","form":"table","amount":{"value":8,"unit":"{{unit}}"} }]}
            """);
        Assert.False(answer["lines"]![0]!.AsObject().ContainsKey("amount"));
        Assert.Equal($$"""{"value":8,"unit":"{{unit}}"}""", answer["lines"]![1]!["amount"]!.ToJsonString());
        Assert.Equal(water, (double)answer["lines"]![0]!["ratio"]!["typical"]!);
        Assert.Equal(salt, (double)answer["lines"]![1]!["ratio"]!["typical"]!);
        Assert.Equal(water, (double)answer["lines"]![0]!["share"]!["typical"]!);
        Assert.Equal("""{"value":100,"unit":"g/kg"}""", answer["totalRatio"]!.ToJsonString());
    }

    private static JsonNode Read(string json)
    {
        var request = JsonSerializer.Deserialize(json, RubLabJson.Default.FormulaRequest)!;
        var formula = FormulaAnswers.Check(request, Seed.Catalogue);
        Assert.True(formula.IsGood, string.Join(", ", Document.Faults(formula.Log)));
        var answer = FormulaAnswers.From(formula.Value, request, "some-id", 7, "2026-01-01T00:00:00Z", Seed.Catalogue);
        return JsonSerializer.SerializeToNode(answer, RubLabJson.Default.FormulaResponse)!;
    }
}
