using System.Net;
using System.Text.Json.Nodes;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Ingredients;

public sealed class ConversionTests(Server server) : IClassFixture<Server>
{
    [Fact]
    public async Task The_query_of_the_contract_gives_a_band_with_its_density_and_source()
    {
        var answer = (await server.GetAsync("/v1/conversions?ingredient=black-pepper&form=ground&value=2&unit=tbsp&to=g")).Succeeded().Json;

        Assert.Equal(("black-pepper", "ground"), ((string)answer["ingredient"]!, (string)answer["form"]!));
        Assert.Equal("""{"value":2,"unit":"tbsp"}""", answer["amount"]!.ToJsonString());
        var density = answer["density"]!;
        Assert.Equal("g/mL", (string)density["unit"]!);
        Assert.Equal((string)density["sourceId"]!, (string)(await server.GetAsync($"/v1/sources/{density["sourceId"]}")).Succeeded().Json["id"]!);
        const double TwoTablespoons = 2 * 14.78676478125;
        foreach (var member in (string[])["low", "typical", "high"])
        {
            // Both are printed to three digits.
            var expected = (double)density[member]! * TwoTablespoons;
            Assert.InRange((double)answer["result"]![member]!, expected * 0.99, expected * 1.01);
        }

        Assert.Equal("g", (string)answer["result"]!["unit"]!);
        Assert.Empty(answer["findings"]!.AsArray());
    }

    [Fact]
    public async Task A_form_left_out_spans_the_forms_and_a_finding_asks()
    {
        var named = (await server.GetAsync("/v1/conversions?ingredient=salt&form=table&value=2&unit=tbsp&to=g")).Succeeded().Json["result"]!;
        var answer = (await server.GetAsync("/v1/conversions?ingredient=salt&value=2&unit=tbsp&to=g")).Succeeded().Json;

        Assert.Equal("form-unnamed", (string)Assert.Single(answer["findings"]!.AsArray())!["code"]!);
        Assert.True((double)answer["result"]!["low"]! < (double)named["low"]!);
        Assert.True((double)answer["result"]!["high"]! >= (double)named["high"]!);
    }

    [Fact]
    public async Task A_mass_in_another_mass_is_exact_and_needs_no_density()
    {
        var answer = (await server.GetAsync("/v1/conversions?ingredient=salt&value=1&unit=lb&to=g")).Succeeded().Json;

        Assert.Equal("""{"low":453.59237,"typical":453.59237,"high":453.59237,"unit":"g"}""", answer["result"]!.ToJsonString());
        Assert.Null(answer["density"]);
    }

    [Fact]
    public async Task A_card_is_converted_item_by_item_and_a_fault_spoils_its_own_item_alone()
    {
        var body = JsonNode.Parse(Bodies.Conversions)!;
        body["items"]!.AsArray().Insert(1, JsonNode.Parse("""{"ingredient":"moon-dust","amount":{"value":1e999,"unit":"g"},"to":"oz"}"""));

        var items = (await server.PostAsync("/v1/conversions", body.ToJsonString())).Succeeded().Json["items"]!.AsArray();

        Assert.Equal(3, items.Count);
        Assert.Equal("black-pepper", (string)items[0]!["conversion"]!["ingredient"]!);
        Assert.Null(items[1]!["conversion"]);
        Assert.Equal(
            ["/items/1/ingredient unknown-ingredient", "/items/1/amount/value not-finite"],
            items[1]!["errors"]!.AsArray().Select(e => $"{e!["pointer"]} {e["code"]}"));
        Assert.Equal(453.59237, (double)items[2]!["conversion"]!["result"]!["typical"]!);
    }

    [Fact]
    public async Task A_thousand_and_one_items_are_too_many()
    {
        var item = JsonNode.Parse(Bodies.Conversions)!["items"]![0]!.ToJsonString();
        string Body(int count) => $$"""{"items":[{{string.Join(',', Enumerable.Repeat(item, count))}}]}""";

        Assert.Equal(1000, (await server.PostAsync("/v1/conversions", Body(1000))).Succeeded().Json["items"]!.AsArray().Count);
        await server.RefusedAsync(
            await server.PostAsync("/v1/conversions", Body(1001)), HttpStatusCode.UnprocessableEntity, "too-many", "/items");
    }

    [Theory]
    [InlineData("abc")]
    [InlineData("NaN")]
    [InlineData("1e999")]
    [InlineData("1,5")]
    public async Task A_value_that_is_no_finite_number_is_refused_at_value(string value) => await server.RefusedAsync(
        await server.GetAsync($"/v1/conversions?ingredient=salt&value={value}&unit=g&to=oz"),
        HttpStatusCode.UnprocessableEntity, "not-finite", "/value");

    [Fact]
    public async Task A_query_without_anything_names_all_that_is_missing()
    {
        var errors = await server.RefusedAsync(await server.GetAsync("/v1/conversions"), HttpStatusCode.UnprocessableEntity);

        Assert.Equal(
            ["/ingredient required", "/to required", "/unit required", "/value required"],
            errors.Select(e => $"{e!["pointer"]} {e["code"]}").Order(StringComparer.Ordinal));
    }
}
