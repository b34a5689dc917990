using System.Net;
using System.Text.Json.Nodes;
using RubLab.Api.Hosting;
using RubLab.Api.Tests.Engines;
using RubLab.Api.Tests.Hosting;
using RubLab.Storage;
using RubLab.Storage.Pairing;

namespace RubLab.Api.Tests.Pairing;

public class PairingTests(Server server) : IClassFixture<Server>
{
    private static readonly (string, string) Proxied = ("Via", "1.1 proxy");

    [EngineFact]
    public async Task A_code_from_the_machine_lets_a_phone_in_that_had_no_key()
    {
        // As from elsewhere: a forwarded request has no loopback rule to go by.
        await server.RefusedAsync(await server.GetAsync("/v1/formulas", Proxied), HttpStatusCode.Unauthorized);
        var code = (await server.PostAsync("/v1/pairing-codes", """{"name":"Stove phone"}""")).Succeeded(HttpStatusCode.Created);
        Assert.Matches("^[34679CDFHJKMNPRTVWXY]{4}-[34679CDFHJKMNPRTVWXY]{4}$", (string)code.Json["code"]!);
        Assert.Equal("no-store", code.Header("Cache-Control"));
        Assert.InRange(DateTimeOffset.Parse((string)code.Json["expiresAt"]!) - DateTimeOffset.UtcNow, TimeSpan.FromMinutes(4), TimeSpan.FromMinutes(5));

        var answer = (await server.PostAsync("/v1/sessions", $$"""{"code":"{{code.Json["code"]}}"}""", Proxied)).Succeeded(HttpStatusCode.Created);

        Assert.Equal("/v1/sessions/current", answer.Header("Location"));
        Assert.Equal("no-store", answer.Header("Cache-Control"));
        Assert.Equal(("Stove phone", true), ((string)answer.Json["name"]!, (bool)answer.Json["isCurrent"]!));
        Assert.Equal("""["read","write"]""", answer.Json["scopes"]!.ToJsonString());
        Assert.InRange(DateTimeOffset.Parse((string)answer.Json["expiresAt"]!) - DateTimeOffset.UtcNow, TimeSpan.FromDays(89.9), TimeSpan.FromDays(90));
        var phone = new Phone(server, answer.Header("Set-Cookie")!, answer.Json);
        (await server.GetAsync("/v1/formulas", phone.Cookie, Proxied)).Succeeded();
        var made = (await server.PostAsync("/v1/formulas", Bodies.Formula, phone.Cookie, phone.Origin, Proxied)).Succeeded(HttpStatusCode.Created);
        (await server.GetAsync(made.Header("Location")!)).Succeeded();
    }

    [EngineFact]
    public async Task A_code_is_read_however_it_is_typed()
    {
        foreach (Func<string, string> typed in (Func<string, string>[])[c => c.ToLowerInvariant(), c => c.Replace("-", "", StringComparison.Ordinal), c => $" {c.Replace('-', ' ')} "])
        {
            var code = typed(await Phone.CodeAsync(server));
            (await server.PostAsync("/v1/sessions", $$"""{"code":"{{code}}"}""")).Succeeded(HttpStatusCode.Created);
        }
    }

    [EngineFact]
    public async Task A_code_is_used_once()
    {
        var body = $$"""{"code":"{{await Phone.CodeAsync(server)}}"}""";
        (await server.PostAsync("/v1/sessions", body)).Succeeded(HttpStatusCode.Created);

        var again = await server.PostAsync("/v1/sessions", body);

        await server.RefusedAsync(again, HttpStatusCode.UnprocessableEntity, "code-not-open", "/code");
        Assert.Null(again.Header("Set-Cookie"));
    }

    [EngineFact]
    public async Task A_code_that_nobody_gave_out_opens_nothing()
    {
        var answer = await server.PostAsync("/v1/sessions", """{"code":"3333-3333"}""");

        await server.RefusedAsync(answer, HttpStatusCode.UnprocessableEntity, "code-not-open", "/code");
        Assert.Null(answer.Header("Set-Cookie"));
    }

    [EngineFact]
    public async Task A_code_older_than_five_minutes_opens_nothing()
    {
        await using (var before = await server.OpenStoreAsync(DateTimeOffset.UtcNow - PairingCodeStore.Life - TimeSpan.FromSeconds(1)))
        await using (var work = await before.BeginAsync(Intent.Write))
        {
            await work.PairingCodes.IssueAsync(LocalKitchen.Id, server.Codes.Hash("KKKKKKKK"), ["read"], null);
            await work.CommitAsync();
        }

        await server.RefusedAsync(
            await server.PostAsync("/v1/sessions", """{"code":"KKKK-KKKK"}"""), HttpStatusCode.UnprocessableEntity, "code-not-open", "/code");
    }

    [EngineFact]
    public async Task A_read_only_device_reads_and_computes_but_neither_writes_nor_pairs()
    {
        var phone = await Phone.PairAsync(server, """{"scopes":["read"]}""");
        var before = await server.StoredAsync();

        (await server.GetAsync("/v1/formulas", phone.Cookie)).Succeeded();
        (await server.PostAsync("/v1/batch-sheets", Bodies.Sheet, phone.Cookie, phone.Origin)).Succeeded();
        foreach (var answer in (Answer[])
            [
                await server.PostAsync("/v1/formulas", Bodies.Formula, phone.Cookie, phone.Origin),
                await server.DeleteAsync("/v1/formulas/lockside-pork-rub", phone.Cookie, phone.Origin, ("If-Match", "*")),
                await server.PostAsync("/v1/pairing-codes", """{"scopes":["read"]}""", phone.Cookie, phone.Origin),
                await server.GetAsync("/v1/sessions", phone.Cookie),
                await server.DeleteAsync("/v1/sessions/" + phone.Id, phone.Cookie, phone.Origin),
            ])
        {
            await server.RefusedAsync(answer, HttpStatusCode.Forbidden);
        }

        Assert.Equal(before, await server.StoredAsync());
    }

    [EngineFact]
    public async Task A_device_that_may_pair_hands_on_what_it_has_and_no_more()
    {
        var phone = await Phone.PairAsync(server, """{"scopes":["pair","read"]}""");
        Assert.Equal("""["read","pair"]""", phone.Session["scopes"]!.ToJsonString());

        await Phone.CodeAsync(server, """{"scopes":["read"]}""", phone.Cookie, phone.Origin);
        await server.RefusedAsync(await server.PostAsync("/v1/pairing-codes", "{}", phone.Cookie, phone.Origin), HttpStatusCode.Forbidden);
        await server.RefusedAsync(
            await server.PostAsync("/v1/pairing-codes", """{"scopes":["read","write"]}""", phone.Cookie, phone.Origin), HttpStatusCode.Forbidden);
    }

    [EngineTheory]
    [InlineData("read")]
    [InlineData("read write")]
    public async Task A_key_without_the_scope_to_pair_has_no_say_over_devices(string scopes)
    {
        var phone = await Phone.PairAsync(server);
        var key = ("Authorization", "Bearer " + await server.IssueKeyAsync(LocalKitchen.Id, scopes.Split(' ')));

        await server.RefusedAsync(await server.PostAsync("/v1/pairing-codes", """{"scopes":["read"]}""", key), HttpStatusCode.Forbidden);
        await server.RefusedAsync(await server.GetAsync("/v1/sessions", key), HttpStatusCode.Forbidden);
        await server.RefusedAsync(await server.DeleteAsync("/v1/sessions/" + phone.Id, key), HttpStatusCode.Forbidden);
        (await server.GetAsync("/v1/formulas", phone.Cookie, Proxied)).Succeeded();
    }

    [EngineFact]
    public async Task Whoever_has_nothing_gets_no_code()
    {
        await server.RefusedAsync(await server.PostAsync("/v1/pairing-codes", "{}", Proxied), HttpStatusCode.Unauthorized);
        await server.RefusedAsync(await server.GetAsync("/v1/sessions", Proxied), HttpStatusCode.Unauthorized);
        await server.RefusedAsync(await server.GetAsync("/v1/sessions/current", Proxied), HttpStatusCode.Unauthorized);
        await server.RefusedAsync(await server.DeleteAsync("/v1/sessions/current", Proxied), HttpStatusCode.Unauthorized);
        await server.RefusedAsync(
            await server.PostAsync("/v1/pairing-codes", "{}", ("Origin", "https://elsewhere.example")), HttpStatusCode.Forbidden);
    }

    [EngineFact]
    public async Task An_unpaired_device_is_out_at_once_and_no_other_is()
    {
        var lost = await Phone.PairAsync(server);
        var kept = await Phone.PairAsync(server);
        (await server.GetAsync("/v1/formulas", lost.Cookie, Proxied)).Succeeded();

        Assert.Equal(HttpStatusCode.NoContent, (await server.DeleteAsync("/v1/sessions/" + lost.Id)).Status);

        var refused = await server.GetAsync("/v1/formulas", lost.Cookie, Proxied);
        await server.RefusedAsync(refused, HttpStatusCode.Unauthorized);
        Assert.Equal("Bearer", refused.Header("WWW-Authenticate"));
        await server.RefusedAsync(
            await server.PostAsync("/v1/formulas", Bodies.Formula, lost.Cookie, lost.Origin, Proxied), HttpStatusCode.Unauthorized);
        (await server.GetAsync("/v1/formulas", kept.Cookie, Proxied)).Succeeded();
        await server.RefusedAsync(await server.DeleteAsync("/v1/sessions/" + lost.Id), HttpStatusCode.NotFound);
    }

    [EngineFact]
    public async Task Who_signs_out_is_out_and_loses_the_cookie()
    {
        var phone = await Phone.PairAsync(server);

        var answer = await server.DeleteAsync("/v1/sessions/current", phone.Cookie, phone.Origin);

        Assert.Equal(HttpStatusCode.NoContent, answer.Status);
        Assert.Equal("rublab=; expires=Thu, 01 Jan 1970 00:00:00 GMT; path=/; samesite=strict; httponly", answer.Header("Set-Cookie"));
        await server.RefusedAsync(await server.GetAsync("/v1/formulas", phone.Cookie, Proxied), HttpStatusCode.Unauthorized);
    }

    [EngineFact]
    public async Task A_device_without_the_scope_to_write_may_sign_out()
    {
        var phone = await Phone.PairAsync(server, """{"scopes":["read"]}""");

        Assert.Equal(HttpStatusCode.NoContent, (await server.DeleteAsync("/v1/sessions/current", phone.Cookie, phone.Origin)).Status);
    }

    [EngineFact]
    public async Task Whoever_needs_no_session_has_none()
    {
        await server.RefusedAsync(await server.GetAsync("/v1/sessions/current"), HttpStatusCode.NotFound);
        await server.RefusedAsync(await server.DeleteAsync("/v1/sessions/current"), HttpStatusCode.NotFound);
        var key = ("Authorization", "Bearer " + await server.IssueKeyAsync(LocalKitchen.Id, "read"));
        await server.RefusedAsync(await server.GetAsync("/v1/sessions/current", key), HttpStatusCode.NotFound);
    }

    [EngineFact]
    public async Task A_device_paired_again_stands_in_the_list_once()
    {
        var phone = await Phone.PairAsync(server);
        var again = await Phone.PairAsync(server, """{"scopes":["read","pair"]}""", phone.Cookie);

        var ids = (await server.GetAsync("/v1/sessions?limit=200", again.Cookie)).Succeeded().Json["items"]!.AsArray().Select(s => (string)s!["id"]!).ToList();

        Assert.Contains(again.Id, ids);
        Assert.DoesNotContain(phone.Id, ids);
        await server.RefusedAsync(await server.GetAsync("/v1/formulas", phone.Cookie, Proxied), HttpStatusCode.Unauthorized);
    }

    [EngineFact]
    public async Task Devices_are_listed_page_by_page_without_anything_that_lets_in()
    {
        var phones = new List<Phone>();
        for (var i = 0; i < 3; i++)
        {
            phones.Add(await Phone.PairAsync(server, $$"""{"name":"Phone {{i}}","scopes":["read","pair"]}"""));
        }

        var found = new List<JsonNode>();
        var next = "/v1/sessions?limit=2";
        while (next is not null)
        {
            var page = (await server.GetAsync(next, phones[1].Cookie)).Succeeded();
            Assert.Equal("no-store", page.Header("Cache-Control"));
            Assert.DoesNotContain("rubs_", page.Text, StringComparison.Ordinal);
            found.AddRange(page.Json["items"]!.AsArray()!);
            next = page.Json["next"] is { } cursor ? $"/v1/sessions?limit=2&cursor={cursor}" : null;
        }

        Assert.Equal(found.Count, found.Select(d => (string)d["id"]!).Distinct().Count());
        Assert.Equal(phones.Select(p => p.Id), found.Select(d => (string)d["id"]!).Where(id => phones.Any(p => p.Id == id)));
        Assert.Equal(phones[1].Id, (string)Assert.Single(found, d => (bool)d["isCurrent"]!)["id"]!);
        Assert.Equal("Phone 2", (string)found.Single(d => (string)d["id"]! == phones[2].Id)["name"]!);
    }

    [EngineFact]
    public async Task Another_kitchen_neither_sees_nor_unpairs_a_device()
    {
        var phone = await Phone.PairAsync(server);
        var key = ("Authorization", "Bearer " + await server.IssueKeyAsync("quay", "read", "write", "pair"));

        Assert.Empty((await server.GetAsync("/v1/sessions", key)).Succeeded().Json["items"]!.AsArray());
        await server.RefusedAsync(await server.DeleteAsync("/v1/sessions/" + phone.Id, key), HttpStatusCode.NotFound);
        (await server.GetAsync("/v1/formulas", phone.Cookie, Proxied)).Succeeded();

        var code = await Phone.CodeAsync(server, "{}", key);
        var theirs = (await server.PostAsync("/v1/sessions", $$"""{"code":"{{code}}","name":"Quay phone"}""")).Succeeded(HttpStatusCode.Created);
        var paired = new Phone(server, theirs.Header("Set-Cookie")!, theirs.Json);
        Assert.Equal("Quay phone", (string)paired.Session["name"]!);
        Assert.Empty((await server.GetAsync("/v1/formulas", paired.Cookie)).Succeeded().Json["items"]!.AsArray());
    }

    [EngineFact]
    public async Task A_device_is_called_what_it_says_before_what_the_code_says()
    {
        var code = await Phone.CodeAsync(server, """{"name":"From the code"}""");
        Assert.Equal("Own", (string)(await server.PostAsync("/v1/sessions", $$"""{"code":"{{code}}","name":"Own"}""")).Succeeded(HttpStatusCode.Created).Json["name"]!);
        Assert.Equal("Device", (string)(await Phone.PairAsync(server)).Session["name"]!);
    }

    [EngineFact]
    public async Task A_device_that_asks_too_often_is_told_when_to_come_back_and_no_other_is()
    {
        var busy = await Phone.PairAsync(server);
        var calm = await Phone.PairAsync(server);

        var answers = await Task.WhenAll(Enumerable.Range(0, 400).Select(_ => server.GetAsync("/v1/cuts/beef-brisket", busy.Cookie)));

        var refused = answers.First(a => a.Status != HttpStatusCode.OK);
        await server.RefusedAsync(refused, HttpStatusCode.TooManyRequests);
        Assert.Matches("^[1-9][0-9]*$", refused.Header("Retry-After")!);
        (await server.GetAsync("/v1/cuts/beef-brisket", calm.Cookie)).Succeeded();
    }

    [EngineTheory]
    [InlineData("""{}""", "required", "/code")]
    [InlineData("""{"code":null}""", "required", "/code")]
    [InlineData("""{"code":""}""", "bad-code", "/code")]
    [InlineData("""{"code":"7KXM-4RT"}""", "bad-code", "/code")]
    [InlineData("""{"code":"7KXM-4RTPP"}""", "bad-code", "/code")]
    [InlineData("""{"code":"7KXM-4RT0"}""", "bad-code", "/code")]
    [InlineData("""{"code":"7KXM-4RT\u0000"}""", "bad-code", "/code")]
    [InlineData("""{"code":"7KXM4RTP","name":"\u0000"}""", "bad-text", "/name")]
    [InlineData("""{"code":"7KXM4RTP","name":" "}""", "required", "/name")]
    public async Task A_request_that_cannot_be_right_is_no_try(string body, string code, string pointer)
    {
        for (var i = 0; i < 7; i++)
        {
            await server.RefusedAsync(await server.PostAsync("/v1/sessions", body), HttpStatusCode.UnprocessableEntity, code, pointer);
        }

        await Phone.PairAsync(server);
    }

    [EngineTheory]
    [InlineData("""{"scopes":[]}""", "required", "/scopes")]
    [InlineData("""{"scopes":["write"]}""", "required", "/scopes")]
    [InlineData("""{"scopes":["read","cook"]}""", "unknown-word", "/scopes/1")]
    [InlineData("""{"scopes":[null]}""", "required", "/scopes/0")]
    [InlineData("""{"scopes":["read","read","read","read"]}""", "too-many", "/scopes")]
    [InlineData("""{"name":""}""", "required", "/name")]
    public async Task A_code_for_what_there_is_not_is_refused(string body, string code, string pointer) => await server.RefusedAsync(
        await server.PostAsync("/v1/pairing-codes", body), HttpStatusCode.UnprocessableEntity, code, pointer);
}
