using System.Net;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Ingredients;

public class DensityTests(Server server) : IClassFixture<Server>
{
    private const string Path = "/v1/densities/salt/flake-dense";
    private const string Weighed =
        """{"weighings":[{"volume":{"value":0.25,"unit":"cup"},"weight":{"value":56,"unit":"g"}},{"volume":{"value":0.25,"unit":"cup"},"weight":{"value":58,"unit":"g"}}]}""";
    private const string Conversion = "/v1/conversions?ingredient=salt&form=flake-dense&value=1&unit=cup&to=g";

    [Fact]
    public async Task A_kitchens_own_density_is_used_everywhere_until_it_is_removed()
    {
        var formula = """{"name":"Spooned","kind":"rub","writtenFor":{"value":5,"unit":"kg"},"lines":[{"ingredient":"salt","form":"flake-dense","amount":{"value":0.25,"unit":"cup"}}]}""";
        var location = (await server.PostAsync("/v1/formulas", formula)).Succeeded(HttpStatusCode.Created).Header("Location")!;
        var before = (await server.GetAsync(Conversion)).Succeeded();
        var ratioBefore = (double)(await server.GetAsync(location)).Json["lines"]![0]!["ratio"]!["typical"]!;
        Assert.Equal("reference", (string)before.Json["density"]!["origin"]!);

        var put = (await server.PutAsync(Path, Weighed)).Succeeded(HttpStatusCode.Created);
        Assert.Equal(2, (int)put.Json["count"]!);
        Assert.Equal(0.96, (double)put.Json["reference"]!);

        // Two quarter cups of 56 and 58 g: 228 g to the cup.
        var after = (await server.GetAsync(Conversion)).Succeeded();
        Assert.Equal(228, (double)after.Json["result"]!["typical"]!);
        Assert.Equal("kitchen", (string)after.Json["density"]!["origin"]!);
        Assert.Equal("own-density-used", (string)after.Json["findings"]![0]!["code"]!);
        Assert.NotEqual(before.Tag, after.Tag);
        Assert.Equal(11.4, (double)(await server.GetAsync(location)).Json["lines"]![0]!["ratio"]!["typical"]!, 0.05);
        Assert.Single((await server.GetAsync("/v1/densities")).Json["items"]!.AsArray());

        await server.RefusedAsync(await server.PutAsync(Path, Weighed), (HttpStatusCode)428);
        await server.RefusedAsync(await server.PutAsync(Path, Weighed, ("If-Match", "\"r9-2026.3-d0\"")), HttpStatusCode.PreconditionFailed);
        var again = (await server.PutAsync(Path, Weighed.Replace("56", "60", StringComparison.Ordinal), ("If-Match", put.Tag!))).Succeeded();
        Assert.Equal(2, (int)again.Json["revision"]!);
        Assert.Equal(236, (double)(await server.GetAsync(Conversion)).Json["result"]!["typical"]!);

        await server.RefusedAsync(await server.DeleteAsync(Path), (HttpStatusCode)428);
        (await server.DeleteAsync(Path, ("If-Match", again.Tag!))).Succeeded(HttpStatusCode.NoContent);
        Assert.Equal((double)before.Json["result"]!["typical"]!, (double)(await server.GetAsync(Conversion)).Json["result"]!["typical"]!);
        Assert.Equal(ratioBefore, (double)(await server.GetAsync(location)).Json["lines"]![0]!["ratio"]!["typical"]!);
        await server.RefusedAsync(await server.GetAsync(Path), HttpStatusCode.NotFound);
    }

    [Theory]
    [InlineData("""{"weighings":[{"volume":{"value":1,"unit":"mL"},"weight":{"value":9,"unit":"g"}}]}""", "out-of-range", "/weighings/0")]
    [InlineData("""{"weighings":[]}""", "required", "/weighings")]
    [InlineData("""{}""", "required", "/weighings")]
    [InlineData("""{"weighings":[{"volume":{"value":1,"unit":"g"},"weight":{"value":1,"unit":"g"}}]}""", "unit-not-allowed", "/weighings/0/volume/unit")]
    [InlineData("""{"weighings":[{"volume":{"value":1,"unit":"cup"}}]}""", "required", "/weighings/0/weight")]
    [InlineData("""{"weighings":[null]}""", "required", "/weighings/0")]
    public async Task What_is_no_weighing_is_refused_and_not_stored(string body, string code, string pointer)
    {
        await server.RefusedAsync(await server.PutAsync("/v1/densities/paprika/ground", body), HttpStatusCode.UnprocessableEntity, code, pointer);
        await server.RefusedAsync(await server.GetAsync("/v1/densities/paprika/ground"), HttpStatusCode.NotFound);
    }

    [Theory]
    [InlineData("/v1/densities/nothing/ground")]
    [InlineData("/v1/densities/salt/dust")]
    public async Task A_form_that_is_not_known_has_no_density(string path) =>
        await server.RefusedAsync(await server.PutAsync(path, Weighed), HttpStatusCode.NotFound);

    [Theory]
    [InlineData("mesh=14", 200, null)]
    [InlineData("micrometres=1500", 200, null)]
    [InlineData("mesh=0", 422, "/mesh")]
    [InlineData("mesh=13", 422, "/mesh")]
    [InlineData("mesh=NaN", 422, "/mesh")]
    [InlineData("micrometres=90000", 422, "/micrometres")]
    [InlineData("mesh=14&form=coarse", 422, "/mesh")]
    [InlineData("mesh=14&micrometres=1400", 422, "/mesh")]
    public async Task A_grind_may_be_given_by_size(string query, int status, string? pointer)
    {
        var answer = await server.GetAsync("/v1/conversions?ingredient=black-pepper&value=1&unit=tbsp&to=g&" + query);
        Assert.Equal(status, (int)answer.Status);
        if (pointer is null)
        {
            // US mesh 14 is 1.40 mm (ASTM E11), which the reference's coarse grind holds.
            Assert.Equal("coarse", (string)answer.Json["form"]!);
            Assert.Contains(answer.Json["findings"]!.AsArray(), f => (string)f!["code"]! == "form-by-size");
        }
        else
        {
            Assert.Equal(pointer, (string)answer.Json["errors"]![0]!["pointer"]!);
        }
    }

    [Fact]
    public async Task A_line_is_changed_while_the_salt_or_the_dose_is_held()
    {
        var change = $$"""{"formula":{{Bodies.Formula}},"line":1,"amount":4,"hold":"HOLD"}""";

        var salt = (await server.PostAsync("/v1/formula-changes", change.Replace("HOLD", "salt", StringComparison.Ordinal))).Succeeded().Json;
        Assert.Equal((double)salt["before"]!["saltRatio"]!["typical"]!, (double)salt["after"]!["saltRatio"]!["typical"]!);
        Assert.True((double)salt["after"]!["totalRatio"]!["value"]! > (double)salt["before"]!["totalRatio"]!["value"]!);

        var dose = (await server.PostAsync("/v1/formula-changes", change.Replace("HOLD", "dose", StringComparison.Ordinal))).Succeeded().Json;
        Assert.Equal((double)dose["before"]!["totalRatio"]!["value"]!, (double)dose["after"]!["totalRatio"]!["value"]!);
        Assert.True((double)dose["after"]!["saltRatio"]!["typical"]! < (double)dose["before"]!["saltRatio"]!["typical"]!);
        (await server.PostAsync("/v1/formulas", dose["formula"]!.ToJsonString())).Succeeded(HttpStatusCode.Created);

        await server.RefusedAsync(
            await server.PostAsync("/v1/formula-changes", change.Replace("\"line\":1", "\"line\":9", StringComparison.Ordinal).Replace("HOLD", "salt", StringComparison.Ordinal)),
            HttpStatusCode.UnprocessableEntity, "out-of-range", "/line");
    }
}
