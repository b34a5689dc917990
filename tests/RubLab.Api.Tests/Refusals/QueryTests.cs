using System.Net;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Refusals;

public sealed class QueryTests(Server server) : IClassFixture<Server>
{
    [Theory]
    [InlineData("/v1/units?from=tsp", "/from")]
    [InlineData("/v1/units?limit=5", "/limit")]
    [InlineData("/v1/ingredients?limit=5&page=2", "/page")]
    [InlineData("/v1/ingredients/salt?form=table", "/form")]
    [InlineData("/v1/conversions?ingredient=salt&value=1&from=tsp&to=g", "/from")]
    [InlineData("/v1/formulas?kind=rub", "/kind")]
    [InlineData("/v1/formulas/lockside-pork-rub?revision=1", "/revision")]
    [InlineData("/v1/formulas/lockside-pork-rub/revisions?since=1", "/since")]
    [InlineData("/v1/formulas/none?x", "/x")]
    [InlineData("/v1/changes?limit=5", "/limit")]
    [InlineData("/v1/cuts?a~b%2Fc=1", "/a~0b~1c")]
    [InlineData("/v1/cuts?=1", "/")]
    public async Task A_query_parameter_a_read_does_not_have_is_refused_by_its_name(string path, string pointer) =>
        await server.RefusedAsync(await server.GetAsync(path), HttpStatusCode.BadRequest, "unknown-parameter", pointer);

    [Fact]
    public async Task A_query_parameter_a_write_does_not_have_is_refused_and_nothing_done()
    {
        var before = await server.StoredAsync();

        foreach (var (method, path, sound, _) in Bodies.ByRoute.Values)
        {
            await server.RefusedAsync(
                await server.SendAsync(method, path + "?dryRun=true", sound, ("If-Match", "*")), HttpStatusCode.BadRequest, "unknown-parameter", "/dryRun");
        }

        await server.RefusedAsync(
            await server.DeleteAsync("/v1/formulas/lockside-pork-rub?dryRun=true", ("If-Match", "*")), HttpStatusCode.BadRequest, "unknown-parameter", "/dryRun");
        Assert.Equal(before, await server.StoredAsync());
    }

    [Fact]
    public async Task The_refusal_names_what_there_is()
    {
        var answer = await server.GetAsync("/v1/conversions?from=tsp");

        Assert.All((string[])["'from'", "ingredient", "form", "value", "unit", "to"], word =>
            Assert.Contains(word, (string)answer.Json["detail"]!, StringComparison.Ordinal));
    }
}
