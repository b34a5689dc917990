using System.Net;
using RubLab.Api.Tests.Engines;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Formulas;

public class PreconditionTests(Server server) : IClassFixture<Server>
{
    [EngineFact]
    public async Task Without_if_match_nothing_is_replaced_or_deleted()
    {
        var location = await CreateAsync();
        var before = await server.StoredAsync();

        await server.RefusedAsync(await server.PutAsync(location, Bodies.Card), (HttpStatusCode)428);
        await server.RefusedAsync(await server.DeleteAsync(location), (HttpStatusCode)428);

        Assert.Equal(before, await server.StoredAsync());
    }

    [EngineTheory]
    [InlineData("\"r2-2026.3-d0\"")]
    [InlineData("\"r0-2026.3-d0\"")]
    [InlineData("W/\"r1-2026.3-d0\"")]
    [InlineData("\"r1-2026.3-d0\", \"r2-2026.3-d0\"")]
    [InlineData("r1-2026.3-d0")]
    [InlineData("\"2026.3\"")]
    [InlineData("\"r-1-2026.3-d0\"")]
    [InlineData("\"r+1-2026.3-d0\"")]
    [InlineData("\"r1\"")]
    [InlineData("\"r1-\"")]
    [InlineData("\"r1-garbage\"")]
    [InlineData("\"r99999999999999999999-2026.3-d0\"")]
    [InlineData("\"\"")]
    [InlineData("\"")]
    [InlineData("garbage")]
    public async Task A_tag_that_is_not_the_formulas_own_stops_both(string tag)
    {
        var location = await CreateAsync();
        Assert.Equal("\"r1-2026.3-d0\"", (await server.GetAsync(location)).Tag);
        var before = await server.StoredAsync();

        await server.RefusedAsync(await server.PutAsync(location, Bodies.Card, ("If-Match", tag)), HttpStatusCode.PreconditionFailed);
        await server.RefusedAsync(await server.DeleteAsync(location, ("If-Match", tag)), HttpStatusCode.PreconditionFailed);

        Assert.Equal(before, await server.StoredAsync());
    }

    [EngineFact]
    public async Task A_star_means_whichever_revision_there_is()
    {
        var location = await CreateAsync();

        Assert.Equal(2, (int)(await server.PutAsync(location, Bodies.Card, ("If-Match", "*"))).Succeeded().Json["revision"]!);
        (await server.DeleteAsync(location, ("If-Match", "*"))).Succeeded(HttpStatusCode.NoContent);
        await server.RefusedAsync(await server.DeleteAsync(location, ("If-Match", "*")), HttpStatusCode.NotFound);
    }

    [EngineFact]
    public async Task A_stale_tag_is_told_which_revision_there_is_by_now()
    {
        var location = await CreateAsync();
        var first = (await server.GetAsync(location)).Tag!;
        (await server.PutAsync(location, Bodies.Card, ("If-Match", first))).Succeeded();

        var late = await server.PutAsync(location, Bodies.Formula, ("If-Match", first));

        await server.RefusedAsync(late, HttpStatusCode.PreconditionFailed);
        Assert.Contains("revision 2", (string)late.Json["detail"]!, StringComparison.Ordinal);
    }

    [EngineFact]
    public async Task Of_replaces_at_once_with_one_tag_exactly_one_wins()
    {
        var location = await CreateAsync();
        var tag = (await server.GetAsync(location)).Tag!;

        var answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(i => server.PutAsync(
            location, Bodies.Formula.Replace("Lockside pork rub", $"Cook {i}", StringComparison.Ordinal), ("If-Match", tag))));

        var winner = Assert.Single(answers, a => a.Status == HttpStatusCode.OK);
        Assert.Equal(7, answers.Count(a => a.Status == HttpStatusCode.PreconditionFailed));
        Assert.Equal(winner.Text, (await server.GetAsync(location)).Succeeded().Text);
        Assert.Equal(2, (await server.GetAsync(location + "/revisions")).Succeeded().Json["items"]!.AsArray().Count);
    }

    [EngineFact]
    public async Task A_replace_and_a_delete_at_once_leave_one_of_the_two()
    {
        var location = await CreateAsync();
        var tag = (await server.GetAsync(location)).Tag!;

        var answers = await Task.WhenAll(server.PutAsync(location, Bodies.Card, ("If-Match", tag)), server.DeleteAsync(location, ("If-Match", tag)));

        Assert.Single(answers, a => a.Status is HttpStatusCode.OK or HttpStatusCode.NoContent);
        Assert.Single(answers, a => a.Status is HttpStatusCode.PreconditionFailed or HttpStatusCode.NotFound);
    }

    private async Task<string> CreateAsync() =>
        (await server.PostAsync("/v1/formulas", Bodies.Formula)).Succeeded(HttpStatusCode.Created).Header("Location")!;
}
