using System.Net;
using System.Text.Json.Nodes;
using RubLab.Api.Tests.Engines;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Serving;

public class YieldTests(Server server) : IClassFixture<Server>
{
    private const string Path = "/v1/yields/beef-brisket";
    private const string Check = """{"pile":[{"cut":"beef-brisket"}],"treatments":[{"formulaId":"lockside-evening-salt-and-pepper"}]}""";

    // Five cooks of 5 kg to 3.1 kg: 62 %, which stand by themselves.
    private static readonly string Five =
        $$"""{"records":[{{string.Join(",", Enumerable.Repeat("""{"date":"2026-03-07","method":"smoked","before":{"value":5,"unit":"kg"},"after":{"value":3.1,"unit":"kg"}}""", 5))}}]}""";

    [EngineFact]
    public async Task A_kitchens_own_yield_is_used_everywhere_until_it_is_removed()
    {
        var before = (await server.PostAsync("/v1/salt-checks", Check)).Succeeded().Json;
        Assert.Contains("yield-assumed", Codes(before));

        var put = (await server.PutAsync(Path, Five)).Succeeded(HttpStatusCode.Created);
        Assert.Equal("/v1/yields/beef-brisket", put.Header("Location"));
        Assert.Equal((5, 62.0, 100.0), ((int)put.Json["yields"]![0]!["count"]!, (double)put.Json["yields"]![0]!["yield"]!["typical"]!, (double)put.Json["yields"]![0]!["ownSharePercent"]!));

        var check = (await server.PostAsync("/v1/salt-checks", Check)).Succeeded().Json;
        Assert.DoesNotContain("yield-assumed", Codes(check));
        Assert.Contains("own-yield-used", Codes(check));
        Assert.Equal(
            (double)before["ledger"]!["saltPerKgCooked"]!["typical"]! * 56 / 62, (double)check["ledger"]!["saltPerKgCooked"]!["typical"]!, 0.01);

        var sheet = """{"pile":[{"cut":"beef-brisket","count":1,"weightEach":{"value":5,"unit":"kg"}}],"treatments":[{"formulaId":"lockside-evening-salt-and-pepper"}]}""";
        Assert.Contains("own-yield-used", Codes((await server.PostAsync("/v1/batch-sheets", sheet)).Succeeded().Json));
        var plan = (await server.PostAsync("/v1/purchase-plans", """{"guests":[{"count":50}],"menu":[{"cut":"beef-brisket"}]}""")).Succeeded().Json;
        Assert.Equal(("own", "own-cooking", 62.0), ((string)plan["lines"]![0]!["yield"]!["origin"]!, (string)plan["lines"]![0]!["yield"]!["cooking"]!["sourceId"]!, (double)plan["lines"]![0]!["yield"]!["cooking"]!["typical"]!));
        Assert.Contains("own-yield-used", Codes(plan));
        var stated = sheet.Replace("\"count\"", "\"cookYield\":{\"value\":58,\"unit\":\"%\"},\"count\"", StringComparison.Ordinal);
        Assert.DoesNotContain("own-yield-used", Codes((await server.PostAsync("/v1/batch-sheets", stated)).Succeeded().Json));

        await server.RefusedAsync(await server.PutAsync(Path, Five), (HttpStatusCode)428);
        await server.RefusedAsync(await server.PutAsync(Path, Five, ("If-Match", "\"r9-2026.3-d0\"")), HttpStatusCode.PreconditionFailed);
        var again = (await server.PutAsync(Path, Bodies.Cooks, ("If-Match", put.Tag!))).Succeeded();
        Assert.Equal((2, 2), ((int)again.Json["revision"]!, (int)again.Json["yields"]![0]!["count"]!));
        Assert.Equal(again.Tag, (await server.GetAsync(Path)).Tag);
        Assert.Single((await server.GetAsync("/v1/yields")).Json["items"]!.AsArray());

        await server.RefusedAsync(await server.DeleteAsync(Path), (HttpStatusCode)428);
        await server.RefusedAsync(await server.DeleteAsync(Path, ("If-Match", put.Tag!)), HttpStatusCode.PreconditionFailed);
        (await server.DeleteAsync(Path, ("If-Match", again.Tag!))).Succeeded(HttpStatusCode.NoContent);
        await server.RefusedAsync(await server.GetAsync(Path), HttpStatusCode.NotFound);
        Assert.Equal(before["ledger"]!.ToJsonString(), (await server.PostAsync("/v1/salt-checks", Check)).Json["ledger"]!.ToJsonString());

        var changes = (await server.GetAsync("/v1/changes")).Json["items"]!.AsArray().Where(c => (string)c!["noun"]! == "yield").ToList();
        Assert.Equal(["put 1", "put 2", "deleted 2"], changes.Select(c => $"{c!["action"]} {c["revision"]}"));
        Assert.All(changes, c => Assert.Equal("beef-brisket", (string)c!["id"]!));
    }

    [EngineTheory]
    [InlineData("""{"records":[]}""", "required", "/records")]
    [InlineData("""{}""", "required", "/records")]
    [InlineData("""{"records":[null]}""", "required", "/records/0")]
    [InlineData("""{"records":[{"before":{"value":5,"unit":"kg"},"after":{"value":3,"unit":"kg"}}]}""", "required", "/records/0/date")]
    [InlineData("""{"records":[{"date":"7 March","before":{"value":5,"unit":"kg"},"after":{"value":3,"unit":"kg"}}]}""", "bad-date", "/records/0/date")]
    [InlineData("""{"records":[{"date":"2026-02-29","before":{"value":5,"unit":"kg"},"after":{"value":3,"unit":"kg"}}]}""", "bad-date", "/records/0/date")]
    [InlineData("""{"records":[{"date":"2026-03-07","before":{"value":5,"unit":"kg"},"after":{"value":5.1,"unit":"kg"}}]}""", "yield-out-of-range", "/records/0/after")]
    [InlineData("""{"records":[{"date":"2026-03-07","before":{"value":5,"unit":"kg"},"after":{"value":0,"unit":"kg"}}]}""", "out-of-range", "/records/0/after/value")]
    [InlineData("""{"records":[{"date":"2026-03-07","before":{"value":5,"unit":"kg"},"trimLoss":{"value":5,"unit":"%"},"after":{"value":3,"unit":"kg"}}]}""", "trim-on-green", "/records/0/trimLoss")]
    [InlineData("""{"records":[{"date":"2026-03-07","method":"in smoke","before":{"value":5,"unit":"kg"},"after":{"value":3,"unit":"kg"}}]}""", "bad-id", "/records/0/method")]
    [InlineData("""{"records":[{"date":"2026-03-07","beforeIs":"raw","before":{"value":5,"unit":"kg"},"after":{"value":3,"unit":"kg"}}]}""", "unknown-word", "/records/0/beforeIs")]
    [InlineData("""{"records":[{"date":"2026-03-07","before":{"value":5,"unit":"cup"},"after":{"value":3,"unit":"kg"}}]}""", "unit-not-allowed", "/records/0/before/unit")]
    public async Task What_is_no_record_is_refused_and_not_stored(string body, string code, string pointer)
    {
        await server.RefusedAsync(await server.PutAsync("/v1/yields/lamb-leg", body), HttpStatusCode.UnprocessableEntity, code, pointer);
        await server.RefusedAsync(await server.GetAsync("/v1/yields/lamb-leg"), HttpStatusCode.NotFound);
    }

    [EngineFact]
    public async Task A_cut_nobody_knows_is_not_there() => await server.RefusedAsync(await server.PutAsync("/v1/yields/beef-cheeck", Five), HttpStatusCode.NotFound);

    private static List<string> Codes(JsonNode answer) => answer["findings"]!.AsArray().Select(f => (string)f!["code"]!).ToList();
}
