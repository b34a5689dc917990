using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using RubLab.Api.Tests.Engines;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.OwnNumbers;

/// <summary>What densities and cooking yields of a kitchen's own have in common.</summary>
public class OwnNumberTests(Server server) : IClassFixture<Server>
{
    private const string Densities = "densities";
    private const string Yields = "yields";

    // In the order of their lists.
    private static readonly Dictionary<string, string[]> Ids = new()
    {
        [Densities] = ["black-pepper/coarse", "salt/flake-dense", "salt/table"],
        [Yields] = ["beef-brisket", "lamb-leg", "pork-loin"],
    };

    private static readonly Dictionary<string, string> Bodies = new()
    {
        [Densities] = """{"weighings":[{"volume":{"value":100,"unit":"mL"},"weight":{"value":90,"unit":"g"}}]}""",
        [Yields] = """{"records":[{"date":"2026-03-07","before":{"value":5,"unit":"kg"},"after":{"value":3.1,"unit":"kg"}}]}""",
    };

    [EngineTheory]
    [InlineData(Densities, "ingredient,form")]
    [InlineData(Yields, "cut")]
    public async Task Pages_of_one_give_all_of_them_once_and_in_order(string kind, string members)
    {
        foreach (var id in Ids[kind].Reverse())
        {
            var put = (await PutAsync(kind, id)).Succeeded(HttpStatusCode.Created);
            Assert.Equal($"/v1/{kind}/{id}", put.Header("Location"));
        }

        var paged = new List<string>();
        string? next = null;
        do
        {
            var page = (await server.GetAsync($"/v1/{kind}?limit=1{(next is null ? "" : "&cursor=" + next)}")).Succeeded().Json;
            var item = Assert.Single(page["items"]!.AsArray())!;
            paged.Add(string.Join('/', members.Split(',').Select(member => (string)item[member]!)));
            next = (string?)page["next"];
        }
        while (next is not null);

        Assert.Equal(Ids[kind], paged);
        await ClearAsync(kind);
    }

    [EngineTheory]
    [InlineData(Densities, 'd', Yields)]
    [InlineData(Yields, 'y', Densities)]
    public async Task The_tag_of_a_list_goes_up_with_writes_of_its_own_kind_alone(string kind, char letter, string other)
    {
        var before = await RevisionOfListAsync(kind, letter);
        (await PutAsync(kind, Ids[kind][0])).Succeeded(HttpStatusCode.Created);
        Assert.Equal(before + 1, await RevisionOfListAsync(kind, letter));
        (await PutAsync(other, Ids[other][0])).Succeeded(HttpStatusCode.Created);
        Assert.Equal(before + 1, await RevisionOfListAsync(kind, letter));
        var tag = (await server.GetAsync($"/v1/{kind}")).Tag!;
        Assert.Equal(HttpStatusCode.NotModified, (await server.GetAsync($"/v1/{kind}", ("If-None-Match", tag))).Status);

        await ClearAsync(kind);
        await ClearAsync(other);

        Assert.Equal(before + 2, await RevisionOfListAsync(kind, letter));
        (await server.GetAsync($"/v1/{kind}", ("If-None-Match", tag))).Succeeded();
    }

    [EngineTheory]
    [InlineData(Densities, "salt/pickling", "If-Match is not one ETag of this density.", "The density is at revision 2 by now.")]
    [InlineData(Yields, "lamb-shoulder", "If-Match is not one ETag of these yields.", "The yields are at revision 2 by now.")]
    public async Task A_write_is_held_against_what_its_sender_saw(string kind, string id, string notItsTag, string stale)
    {
        var path = $"/v1/{kind}/{id}";
        await RefusedAsync(await PutAsync(kind, id, "*"), HttpStatusCode.PreconditionFailed, notItsTag);
        await RefusedAsync(await PutAsync(kind, id, "\"r1-2026.3-d0\""), HttpStatusCode.PreconditionFailed, notItsTag);
        await RefusedAsync(await server.DeleteAsync(path), HttpStatusCode.NotFound, null);
        await RefusedAsync(await server.GetAsync(path), HttpStatusCode.NotFound, null);

        var first = (await PutAsync(kind, id)).Succeeded(HttpStatusCode.Created);
        var second = (await PutAsync(kind, id, "*")).Succeeded();
        Assert.Equal((1, 2), ((int)first.Json["revision"]!, (int)second.Json["revision"]!));
        Assert.Null(second.Header("Location"));

        await RefusedAsync(await PutAsync(kind, id), (HttpStatusCode)428, null);
        await RefusedAsync(await PutAsync(kind, id, "\"2026.3\""), HttpStatusCode.PreconditionFailed, notItsTag);
        await RefusedAsync(await PutAsync(kind, id, first.Tag), HttpStatusCode.PreconditionFailed, stale);
        await RefusedAsync(await server.DeleteAsync(path), (HttpStatusCode)428, null);
        await RefusedAsync(await server.DeleteAsync(path, ("If-Match", "garbage")), HttpStatusCode.PreconditionFailed, notItsTag);
        await RefusedAsync(await server.DeleteAsync(path, ("If-Match", first.Tag!)), HttpStatusCode.PreconditionFailed, stale);
        Assert.Equal(second.Text, (await server.GetAsync(path)).Succeeded().Text);

        (await server.DeleteAsync(path, ("If-Match", "*"))).Succeeded(HttpStatusCode.NoContent);
        await RefusedAsync(await server.DeleteAsync(path, ("If-Match", "*")), HttpStatusCode.NotFound, null);
    }

    private Task<Answer> PutAsync(string kind, string id, string? ifMatch = null) =>
        server.PutAsync($"/v1/{kind}/{id}", Bodies[kind], ifMatch is null ? [] : [("If-Match", ifMatch)]);

    private async Task RefusedAsync(Answer answer, HttpStatusCode status, string? detail)
    {
        await server.RefusedAsync(answer, status);
        Assert.Equal(detail, (string?)answer.Json["detail"]);
    }

    private async Task<long> RevisionOfListAsync(string kind, char letter)
    {
        var tag = (await server.GetAsync($"/v1/{kind}")).Succeeded().Tag!;
        var match = Regex.Match(tag, $"^\"{letter}([0-9]+)-[0-9.]+\"$");
        Assert.True(match.Success, tag);
        return long.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture);
    }

    private async Task ClearAsync(string kind)
    {
        foreach (var id in Ids[kind])
        {
            await server.DeleteAsync($"/v1/{kind}/{id}", ("If-Match", "*"));
        }
    }
}
