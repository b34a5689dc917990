using System.Net;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Serving;

public class ShoppingListTests(Server server) : IClassFixture<Server>
{
    private const string Sheet = """{"pile":[{"cut":"beef-brisket","count":2,"weightEach":{"value":5,"unit":"kg"}}],"treatments":[{"formula":{"name":"S and P","kind":"rub","lines":[{"ingredient":"salt","form":"table","amount":{"value":8,"unit":"g/kg"}},{"ingredient":"black-pepper","form":"ground","amount":{"value":6,"unit":"g/kg"}}]}}]}""";

    // Twice 10 kg at 8 and 6 g/kg: 160 g of salt, 120 g of pepper. 20 g of pepper are there: one pack of 50 g too few is two.
    [Fact]
    public async Task Sheets_are_summed_stock_comes_off_and_packs_go_up()
    {
        var body = $$$"""
            {"batchSheets":[{{{Sheet}}},{{{Sheet}}}],
             "packs":[{"ingredient":"black-pepper","form":"ground","size":{"value":60,"unit":"g"},"price":{"amount":1.99,"currency":"EUR"}},
                      {"ingredient":"salt","size":{"value":1,"unit":"kg"},"price":{"amount":0.89,"currency":"EUR"}}],
             "stock":[{"ingredient":"black-pepper","amount":{"value":15,"unit":"g"}},{"ingredient":"black-pepper","amount":{"value":5,"unit":"g"}}],"portions":60}
            """;

        var list = (await server.PostAsync("/v1/shopping-lists", body)).Succeeded().Json;

        Assert.Equal(["salt 160 160 1 840", "black-pepper 120 100 2 20"], list["ingredients"]!.AsArray().Select(i =>
            $"{i!["ingredient"]} {i["needed"]!["value"]} {i["toBuy"]!["value"]} {i["packs"]} {i["leftOver"]!["value"]}"));
        // At the till 2 x 1.99 + 0.89. Used: 120/60 x 1.99 + 160/1000 x 0.89 = 3.98 + 0.14.
        Assert.Equal(4.87m, (decimal)list["outlay"]!["amount"]!);
        Assert.Equal((4.12m, 0.07m, 1.03m, 0.21m), (
            (decimal)list["used"]!["total"]!["amount"]!, (decimal)list["used"]!["perPortion"]!["amount"]!,
            (decimal)list["used"]!["perPiece"]!["amount"]!, (decimal)list["used"]!["perKilogram"]!["amount"]!));
        Assert.Empty(list["findings"]!.AsArray());
        Assert.NotNull(list["ingredients"]![0]!["spoon"]);
    }

    [Fact]
    public async Task A_plan_brings_its_meat_and_the_mixes_it_names()
    {
        var list = (await server.PostAsync("/v1/shopping-lists", $$"""{"purchasePlans":[{{Bodies.Plan}}]}""")).Succeeded().Json;
        var plan = (await server.PostAsync("/v1/purchase-plans", Bodies.Plan)).Succeeded().Json;

        Assert.Equal(
            plan["lines"]!.AsArray().Select(l => $"{l!["cut"]} {l["pieces"]!["typical"]} {l["cost"]!["total"]!["amount"]}"),
            list["meat"]!.AsArray().Select(m => $"{m!["cut"]} {m["pieces"]} {m["outlay"]!["amount"]}"));
        Assert.Equal((decimal)plan["cost"]!["total"]!["amount"]!, (decimal)list["outlay"]!["amount"]!);
        Assert.Contains(list["ingredients"]!.AsArray(), i => (string)i!["ingredient"]! == "black-pepper");
        var finding = Assert.Single(list["findings"]!.AsArray())!;
        Assert.Equal("not-priced", (string)finding["code"]!);
        Assert.Matches("^Without a price: Salt [(].+[)]; Black pepper [(].+[)]", (string)finding["message"]!);
        Assert.Contains("black-pepper (", finding["parameters"]!["items"]!.ToJsonString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_fault_of_every_part_is_told_where_it_stands()
    {
        var body = $$$"""
            {"batchSheets":[{{{Sheet}}},{"pile":[{"cut":"beef-cheeck","count":1,"weightEach":{"value":5,"unit":"kg"}}],"treatments":[{"formulaId":"lockside-no-such"}]}],
             "purchasePlans":[{"guests":[{"count":0}],"menu":[{"cut":"beef-brisket","price":{"amount":1,"currency":"USD"}}]}],
             "packs":[{"ingredient":"salt","size":{"value":0,"unit":"g"},"price":{"amount":-0.01,"currency":"EUR"}},{"ingredient":"sallt","size":{"value":1,"unit":"kg"}},
                      {"ingredient":"paprika","size":{"value":1,"unit":"kg"}},{"ingredient":"paprika","size":{"value":2,"unit":"kg"}}],
             "stock":[{"ingredient":"salt","form":"rock-candy","amount":{"value":-1,"unit":"g"}}],"portions":0}
            """;

        var errors = await server.RefusedAsync(await server.PostAsync("/v1/shopping-lists", body), HttpStatusCode.UnprocessableEntity);

        Assert.Equal(
            [
                "/batchSheets/1/pile/0/cut unknown-cut", "/batchSheets/1/treatments/0/formulaId unknown-formula", "/packs/0/price/amount out-of-range",
                "/packs/0/size/value out-of-range", "/packs/1/ingredient unknown-ingredient", "/packs/3 duplicate-id", "/portions out-of-range",
                "/purchasePlans/0/guests/0/count out-of-range", "/purchasePlans/0/menu/0/price/currency mixed-currencies", "/stock/0/amount/value out-of-range",
                "/stock/0/form unknown-form",
            ],
            errors.Select(e => $"{e!["pointer"]} {e["code"]}").Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("{}", "required", "/batchSheets")]
    [InlineData("""{"batchSheets":[null]}""", "required", "/batchSheets/0")]
    [InlineData("""{"purchasePlans":[null]}""", "required", "/purchasePlans/0")]
    public async Task A_list_of_nothing_is_refused(string body, string code, string pointer) =>
        await server.RefusedAsync(await server.PostAsync("/v1/shopping-lists", body), HttpStatusCode.UnprocessableEntity, code, pointer);

    // 200 mL of vinegar at its lightest filling; a pack counts as what it surely holds.
    [Fact]
    public async Task A_pack_by_volume_counts_as_its_lightest_filling()
    {
        var conversion = (await server.GetAsync("/v1/conversions?ingredient=black-pepper&form=ground&value=1&unit=cup&to=g")).Json;
        var list = (await server.PostAsync("/v1/shopping-lists", $$$"""
            {"batchSheets":[{{{Sheet}}}],"packs":[{"ingredient":"black-pepper","size":{"value":1,"unit":"cup"}}]}
            """)).Succeeded().Json["ingredients"]![1]!;

        Assert.Equal(1, (int)list["packs"]!);
        Assert.Equal((double)conversion["result"]!["low"]! - 60, (double)list["leftOver"]!["value"]!, 0.5);
    }
}
