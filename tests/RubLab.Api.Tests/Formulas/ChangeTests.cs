using System.Net;
using System.Text.Json.Nodes;
using RubLab.Api.Tests.Engines;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Formulas;

public class ChangeTests(Server server) : IClassFixture<Server>
{
    [EngineFact]
    public async Task Changes_are_numbered_without_gap_and_a_deletion_stays_as_a_tombstone()
    {
        var last = (long)(await server.GetAsync("/v1/changes")).Succeeded().Json["last"]!;
        var created = (await server.PostAsync("/v1/formulas", Bodies.Formula)).Succeeded(HttpStatusCode.Created);
        var location = created.Header("Location")!;
        var id = (string)created.Json["id"]!;
        (await server.PutAsync(location, Bodies.Card, ("If-Match", "*"))).Succeeded();
        (await server.DeleteAsync(location, ("If-Match", "*"))).Succeeded(HttpStatusCode.NoContent);

        var answer = (await server.GetAsync($"/v1/changes?since={last}")).Succeeded().Json;

        var items = answer["items"]!.AsArray();
        Assert.Equal(
            [$"{last + 1} formula {id} 1 put", $"{last + 2} formula {id} 2 put", $"{last + 3} formula {id} 2 deleted"],
            items.Select(i => $"{i!["number"]} {i["noun"]} {i["id"]} {i["revision"]} {i["action"]}"));
        Assert.Equal(last + 3, (long)answer["last"]!);
        Assert.All(items, i => Assert.Matches(@"^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$", (string)i!["at"]!));
    }

    [EngineFact]
    public async Task The_feed_gives_200_at_a_time_and_ends_with_an_empty_page()
    {
        var key = ("Authorization", "Bearer " + await server.IssueKeyAsync("busy", "read", "write"));
        await using (var work = await server.Database.BeginAsync(Storage.Intent.Write))
        {
            for (var i = 0; i < 405; i++)
            {
                await work.Formulas.CreateAsync("busy", $"rub-{i}", new Storage.Formulas.FormulaContent("Rub", "rub", Bodies.Formula));
            }

            await work.CommitAsync();
        }

        var pages = new List<JsonArray>();
        long since = 0;
        do
        {
            var page = (await server.GetAsync($"/v1/changes?since={since}", key)).Succeeded().Json;
            pages.Add(page["items"]!.AsArray());
            since = (long)page["last"]!;
        }
        while (pages[^1].Count > 0);

        Assert.Equal([200, 200, 5, 0], pages.Select(p => p.Count));
        Assert.Equal(Enumerable.Range(1, 405), pages.SelectMany(p => p).Select(i => (int)i!["number"]!));
    }

    [EngineTheory]
    [InlineData("-1")]
    [InlineData("abc")]
    [InlineData("")]
    [InlineData("1.5")]
    [InlineData("99999999999999999999")]
    public async Task A_since_that_is_no_number_of_a_change_is_refused(string since) => await server.RefusedAsync(
        await server.GetAsync($"/v1/changes?since={since}"), HttpStatusCode.UnprocessableEntity, "out-of-range", "/since");
}
