using System.Net;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Reference;

public sealed class ReferenceTests(Server server) : IClassFixture<Server>
{
    [Theory]
    [InlineData("/v1/units", "symbol name dimension factor offset baseUnit definition")]
    [InlineData("/v1/sources", "id title publisher edition provenance confidence note")]
    [InlineData("/v1/ingredients", "id name group forms")]
    [InlineData("/v1/cuts", "id name species class")]
    [InlineData("/v1/formulas", "id revision name kind updatedAt")]
    [InlineData("/v1/formulas/lockside-pork-rub/revisions", "revision name kind createdAt")]
    public async Task A_list_has_items_with_these_members(string path, string members)
    {
        var items = (await server.GetAsync(path)).Succeeded().Json["items"]!.AsArray();

        Assert.NotEmpty(items);
        Assert.All(items, item => Assert.Equal(members, string.Join(' ', item!.AsObject().Select(m => m.Key))));
    }

    [Fact]
    public async Task Units_hold_every_symbol_of_the_contract()
    {
        const string Symbols =
            "mg g kg oz lb mL L tsp tbsp cup floz pt qt gal metric-tsp metric-tbsp metric-cup au-tbsp label-tsp label-tbsp label-cup " +
            "imp-floz imp-pt imp-gal g/kg % %-of-liquid %-of-water ppm g/100cm2 g/mL parts-by-mass parts-by-volume mm cm in C F min h d m2/s";

        var units = (await server.GetAsync("/v1/units")).Succeeded().Json["items"]!.AsArray();

        Assert.Empty(Symbols.Split(' ').Except(units.Select(u => (string)u!["symbol"]!)));
        var tablespoon = units.Single(u => (string)u!["symbol"]! == "tbsp")!;
        Assert.Equal((14.78676478125, "mL"), ((double)tablespoon["factor"]!, (string)tablespoon["baseUnit"]!));
    }

    [Fact]
    public async Task An_ingredient_has_forms_one_the_default_each_density_with_a_source_that_exists()
    {
        var salt = (await server.GetAsync("/v1/ingredients/salt")).Succeeded().Json;

        var forms = salt["forms"]!.AsArray();
        Assert.Single(forms, f => (bool)f!["isDefault"]!);
        Assert.Contains("table", forms.Select(f => (string)f!["id"]!));
        foreach (var density in forms.Select(f => f!["density"]).Where(d => d is not null))
        {
            Assert.True((double)density!["low"]! <= (double)density["typical"]! && (double)density["typical"]! <= (double)density["high"]!);
            (await server.GetAsync($"/v1/sources/{density["sourceId"]}")).Succeeded();
        }

        Assert.Equal("%", (string)salt["salt"]!["unit"]!);
        Assert.Equal(98.528, (double)salt["salt"]!["typical"]!, 0.01);
    }

    [Theory]
    [InlineData("cure-6-25-nitrate-4", "nitrate 4 nitrite 6.25")]
    [InlineData("sodium-erythorbate", "ascorbate 100")]
    [InlineData("plant-nitrite-powder", "")]
    [InlineData("salt", "")]
    public async Task An_ingredient_tells_what_limited_additives_it_carries(string id, string expected)
    {
        var carried = (await server.GetAsync($"/v1/ingredients/{id}")).Succeeded().Json["limitedAdditives"]!.AsArray();
        Assert.Equal(expected, string.Join(' ', carried.Select(a => $"{a!["additive"]} {a["gramsPer100Grams"]}")));
    }

    [Fact]
    public async Task An_ingredient_has_the_weights_of_its_pieces_with_a_source_that_exists()
    {
        var garlic = (await server.GetAsync("/v1/ingredients/garlic-raw")).Succeeded().Json["pieceMeasures"]!.AsArray();

        var clove = garlic.Single(m => (string)m!["measure"]! == "clove")!;
        Assert.Equal("amount measure weight sourceId locator", string.Join(' ', clove.AsObject().Select(m => m.Key)));
        Assert.Equal((1, 3, "g"), ((double)clove["amount"]!, (double)clove["weight"]!["value"]!, (string)clove["weight"]!["unit"]!));
        (await server.GetAsync($"/v1/sources/{clove["sourceId"]}")).Succeeded();
        Assert.Empty((await server.GetAsync("/v1/ingredients/water")).Succeeded().Json["pieceMeasures"]!.AsArray());
    }

    [Theory]
    [InlineData("beef-brisket")]
    [InlineData("pork-shoulder")]
    [InlineData("lamb-shoulder")]
    [InlineData("chicken-leg")]
    [InlineData("turkey-breast")]
    public async Task A_cut_of_the_contract_is_there(string id) =>
        Assert.Equal(id, (string)(await server.GetAsync($"/v1/cuts/{id}")).Succeeded().Json["id"]!);

    [Theory]
    [InlineData("/v1/sources")]
    [InlineData("/v1/ingredients")]
    [InlineData("/v1/cuts")]
    public async Task Every_item_of_a_list_can_be_read_under_its_id(string list)
    {
        var ids = (await server.GetAsync(list + "?limit=200")).Succeeded().Json["items"]!.AsArray().Select(i => (string)i!["id"]!).ToList();

        foreach (var id in ids)
        {
            Assert.Equal(id, (string)(await server.GetAsync($"{list}/{id}")).Succeeded().Json["id"]!);
        }
    }

    [Theory]
    [InlineData("/v1/sources/none")]
    [InlineData("/v1/ingredients/Salt")]
    [InlineData("/v1/cuts/unicorn")]
    public async Task An_unknown_id_is_not_found(string path) =>
        await server.RefusedAsync(await server.GetAsync(path), HttpStatusCode.NotFound);

    [Fact]
    public async Task Health_and_the_description_answer()
    {
        Assert.Equal("ok", (string)(await server.GetAsync("/health")).Succeeded().Json["status"]!);
        Assert.StartsWith("3.1", (string)(await server.GetAsync("/openapi/v1.json")).Succeeded().Json["openapi"]!, StringComparison.Ordinal);
    }
}
