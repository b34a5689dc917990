using System.Text.Json;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Json;
using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Tests.Ingredients;

public class ConversionBatchTests
{
    [Fact]
    public void A_fault_in_one_item_spoils_that_item_alone()
    {
        var answers = Compute(
            """
            {"items":[
              {"ingredient":"salt","form":"table","amount":{"value":1,"unit":"cup"},"to":"g"},
              {"ingredient":"slat","amount":{"value":-1,"unit":"cup"},"to":"mm"},
              null,
              {"ingredient":"paprika","amount":{"value":1,"unit":"oz"},"to":"g"}]}
            """);
        Assert.Equal(4, answers.Count);
        // USDA prints 292 g for the cup; its tablespoon of 18 g is the figure taken, and the band holds both.
        Assert.Equal(288, answers[0].Conversion!.Result.Typical);
        Assert.InRange(292, answers[0].Conversion!.Result.Low, answers[0].Conversion!.Result.High);
        Assert.Null(answers[0].Errors);
        Assert.Null(answers[1].Conversion);
        Assert.Equal(
            ["/items/1/amount/value out-of-range", "/items/1/ingredient unknown-ingredient", "/items/1/to unit-not-allowed"],
            answers[1].Errors!.Select(e => $"{e.Pointer} {e.Code}").Order(StringComparer.Ordinal));
        Assert.Equal(["/items/2 required"], answers[2].Errors!.Select(e => $"{e.Pointer} {e.Code}"));
        Assert.Equal(28.349523125, answers[3].Conversion!.Result.Typical);
    }

    [Fact]
    public void A_finding_points_at_the_item_it_is_about()
    {
        var answers = Compute(
            """
            {"items":[
              {"ingredient":"salt","form":"table","amount":{"value":1,"unit":"cup"},"to":"g"},
              {"ingredient":"salt","amount":{"value":1,"unit":"cup"},"to":"g"}]}
            """);
        Assert.Empty(answers[0].Conversion!.Findings);
        Assert.Equal("/items/1/form", Assert.Single(answers[1].Conversion!.Findings).Pointer);
    }

    [Theory]
    [InlineData("{}", "/items required")]
    [InlineData("""{"items":[]}""", "/items required")]
    public void A_batch_has_at_least_one_item(string json, string expected) =>
        Assert.Equal([expected], Document.Faults(Conversions.Compute(Read(json), Seed.Catalogue).Log));

    [Fact]
    public void A_thousand_items_are_a_batch_and_a_thousand_and_one_are_not()
    {
        Assert.Equal(1_000, Conversions.Compute(Many(1_000), Seed.Catalogue).Value!.Items.Count);
        Assert.Equal(["/items too-many"], Document.Faults(Conversions.Compute(Many(1_001), Seed.Catalogue).Log));
    }

    private static ConversionsRequest Many(int count) => new()
    {
        Items = Enumerable.Repeat<ConversionItemRequest?>(
            new() { Ingredient = "salt", Form = "table", Amount = QuantityRequest.Of(1, "tsp"), To = "g" }, count).ToList(),
    };

    private static ConversionsRequest Read(string json) => JsonSerializer.Deserialize(json, RubLabJson.Default.ConversionsRequest)!;

    private static IReadOnlyList<ConversionItemResponse> Compute(string json) => Conversions.Compute(Read(json), Seed.Catalogue).Value!.Items;
}
