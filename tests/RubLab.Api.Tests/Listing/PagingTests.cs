using System.Net;
using System.Text.Json.Nodes;
using RubLab.Api.Tests.Engines;
using RubLab.Api.Tests.Hosting;
using RubLab.Storage;
using RubLab.Storage.Formulas;

namespace RubLab.Api.Tests.Listing;

public class PagingTests(Server server) : IClassFixture<Server>
{
    private static readonly string[] Paths = ["/v1/sources", "/v1/ingredients", "/v1/cuts", "/v1/formulas", "/v1/formulas/lockside-pork-rub/revisions"];

    public static TheoryData<string> Lists => new(Paths);

    [EngineTheory]
    [MemberData(nameof(Lists))]
    public async Task Small_pages_give_the_whole_list_once_and_in_order(string path)
    {
        await ReviseAsync();
        var whole = (await server.GetAsync(path + "?limit=200")).Succeeded().Json;
        Assert.Null(whole["next"]);

        var paged = new List<string>();
        string? next = null;
        do
        {
            var page = (await server.GetAsync($"{path}?limit=2{(next is null ? "" : "&cursor=" + next)}")).Succeeded().Json;
            Assert.InRange(page["items"]!.AsArray().Count, 1, 2);
            paged.AddRange(page["items"]!.AsArray().Select(Text));
            next = (string?)page["next"];
        }
        while (next is not null);

        Assert.True(paged.Count > 2);
        Assert.Equal(whole["items"]!.AsArray().Select(Text), paged);
    }

    [EngineFact]
    public async Task Fifty_items_make_a_page_when_nothing_is_said()
    {
        var key = await server.IssueKeyAsync("large", "read");
        await using (var work = await server.Database.BeginAsync(Intent.Write))
        {
            for (var i = 0; i < 51; i++)
            {
                await work.Formulas.CreateAsync("large", $"rub-{i}", new FormulaContent("Rub", "rub", Bodies.Formula));
            }

            await work.CommitAsync();
        }

        var page = (await server.GetAsync("/v1/formulas", ("Authorization", "Bearer " + key))).Succeeded().Json;

        Assert.Equal(50, page["items"]!.AsArray().Count);
        Assert.NotNull(page["next"]);
    }

    [EngineTheory]
    [InlineData("0")]
    [InlineData("201")]
    [InlineData("-1")]
    [InlineData("abc")]
    [InlineData("1.0")]
    [InlineData("")]
    [InlineData("%2B1")]
    [InlineData("99999999999999999999")]
    [InlineData("1&limit=1")]
    public async Task A_limit_that_is_not_1_to_200_is_refused_on_every_list(string limit)
    {
        foreach (var path in Paths)
        {
            var refused = await server.GetAsync($"{path}?limit={limit}");
            await server.RefusedAsync(refused, HttpStatusCode.UnprocessableEntity, "out-of-range", "/limit");
        }
    }

    [EngineTheory]
    [InlineData("")]
    [InlineData("x")]
    [InlineData("****")]
    [InlineData("%00")]
    [InlineData("AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    public async Task A_cursor_nobody_gave_is_refused_on_every_list(string cursor)
    {
        foreach (var path in Paths)
        {
            var refused = await server.GetAsync($"{path}?cursor={cursor}");
            await server.RefusedAsync(refused, HttpStatusCode.UnprocessableEntity, "bad-cursor", "/cursor");
        }
    }

    [EngineTheory]
    [MemberData(nameof(Lists))]
    public async Task A_cursor_with_any_letter_changed_is_refused(string path)
    {
        await ReviseAsync();
        var cursor = (string)(await server.GetAsync(path + "?limit=1")).Succeeded().Json["next"]!;

        for (var i = 0; i < cursor.Length; i += 7)
        {
            var changed = cursor[..i] + (cursor[i] == 'A' ? 'B' : 'A') + cursor[(i + 1)..];
            await server.RefusedAsync(
                await server.GetAsync($"{path}?cursor={changed}"), HttpStatusCode.UnprocessableEntity, "bad-cursor", "/cursor");
        }
    }

    [EngineFact]
    public async Task A_cursor_of_another_list_is_refused()
    {
        await ReviseAsync();
        string[] others = [.. Paths, "/v1/formulas/lockside-old-card/revisions"];
        foreach (var of in Paths)
        {
            var cursor = (string)(await server.GetAsync(of + "?limit=1")).Succeeded().Json["next"]!;
            foreach (var other in others.Where(p => p != of))
            {
                await server.RefusedAsync(
                    await server.GetAsync($"{other}?cursor={cursor}"), HttpStatusCode.UnprocessableEntity, "bad-cursor", "/cursor");
            }
        }
    }

    [EngineFact]
    public async Task Both_faults_of_a_list_query_are_named_at_once()
    {
        var errors = await server.RefusedAsync(await server.GetAsync("/v1/cuts?limit=0&cursor=x"), HttpStatusCode.UnprocessableEntity);

        Assert.Equal(["/limit", "/cursor"], errors.Select(e => (string)e!["pointer"]!));
    }

    // The formula needs more than two revisions for its list to have pages.
    private async Task ReviseAsync()
    {
        for (var revision = (int)(await server.GetAsync("/v1/formulas/lockside-pork-rub")).Succeeded().Json["revision"]!; revision < 5; revision++)
        {
            (await server.PutAsync("/v1/formulas/lockside-pork-rub", Bodies.Formula, ("If-Match", "*"))).Succeeded();
        }
    }

    private static string Text(JsonNode? node) => node!.ToJsonString();
}
