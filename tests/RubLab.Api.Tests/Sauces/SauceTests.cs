using System.Net;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Sauces;

public sealed class SauceTests(Server server) : IClassFixture<Server>
{
    private const string Path = "/v1/sauces";

    [Fact]
    public async Task A_stored_sauce_is_made_by_its_id()
    {
        const string Glaze = """
            {"name":"Lockside towpath glaze","kind":"sauce","base":"portion","dose":{"value":80,"unit":"g/kg"},"reducedTo":{"value":50,"unit":"%"},
             "lines":[{"ingredient":"sodium-chloride","amount":{"value":2,"unit":"parts-by-mass"}},{"ingredient":"water","amount":{"value":98,"unit":"parts-by-mass"}}]}
            """;
        var stored = (await server.PostAsync("/v1/formulas", Glaze)).Succeeded(HttpStatusCode.Created).Json;
        Assert.Equal("""{"value":50,"unit":"%"}""", stored["reducedTo"]!.ToJsonString());
        // 2 % of the pot, 4 % of what is left.
        Assert.Equal(4, (double)stored["saltShare"]!["typical"]!, 0.001);

        var sauce = (await server.PostAsync(Path, $$$"""{"formulaId":"{{{stored["id"]}}}","make":{"value":1,"unit":"kg"}}""")).Succeeded().Json;
        Assert.Equal("""{"value":2000,"unit":"g"}""", sauce["intoPot"]!.ToJsonString());
        Assert.Equal(40, (double)sauce["saltPerKgFinished"]!["typical"]!, 0.01);

        var sheet = (await server.PostAsync("/v1/batch-sheets", $$$"""
            {"pile":[{"cut":"beef-brisket","pieces":[{"weight":{"value":5,"unit":"kg"}}],"cookYield":{"value":60,"unit":"%"},"portion":{"value":150,"unit":"g"}}],
             "treatments":[{"formulaId":"{{{stored["id"]}}}","stage":"after"}],"weighingStep":{"value":1,"unit":"g"}}
            """)).Succeeded().Json["treatments"]![0]!;
        // 20 portions of 150 g, 80 g of sauce on each kg: 240 g, from 480 g in the pot.
        Assert.Equal((240, 480, 240), ((double)sheet["onMeat"]!["value"]!, (double)sheet["toMix"]!["value"]!, (double)sheet["boilDownTo"]!["value"]!));
    }

    [Fact]
    public async Task A_rub_is_no_sauce() =>
        await server.RefusedAsync(await server.PostAsync(Path, $$$"""{"formula":{{{Bodies.Formula}}}}"""), HttpStatusCode.UnprocessableEntity, "no-sauce", "/formula");

    [Fact]
    public async Task A_declared_salt_stands_in_for_the_reference_and_is_read_back()
    {
        var stored = (await server.PostAsync("/v1/formulas", """
            {"name":"Stock baste","kind":"mop","dose":{"value":50,"unit":"g/kg"},
             "lines":[{"ingredient":"chicken-bouillon-dry","amount":{"value":1,"unit":"parts-by-mass"},"salt":{"low":45,"typical":50,"high":55,"unit":"%"}}]}
            """)).Succeeded(HttpStatusCode.Created).Json;
        Assert.Equal("""{"low":45,"typical":50,"high":55,"unit":"%"}""", stored["saltShare"]!.ToJsonString());
        Assert.Equal("""{"low":45,"typical":50,"high":55,"unit":"%"}""", stored["lines"]![0]!["salt"]!.ToJsonString());
    }
}
