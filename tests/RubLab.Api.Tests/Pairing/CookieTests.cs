using System.Net;
using RubLab.Api.Hosting;
using RubLab.Api.Tests.Hosting;
using RubLab.Storage;
using RubLab.Storage.Pairing;

namespace RubLab.Api.Tests.Pairing;

public sealed class CookieTests(Server server) : IClassFixture<Server>
{
    private static readonly (string, string) Proxied = ("Via", "1.1 proxy");

    [Fact]
    public async Task Over_plain_http_the_cookie_has_every_attribute_but_secure_and_the_answer_warns()
    {
        var phone = await Phone.PairAsync(server, "{}", Proxied);

        Assert.Matches("^rublab=rubs_[A-Za-z0-9_-]{43}; max-age=7776000; path=/; samesite=strict; httponly$", phone.SetCookie);
        Assert.StartsWith("This connection is not encrypted", (string)phone.Session["warning"]!, StringComparison.Ordinal);
        Assert.NotNull((await server.GetAsync("/v1/sessions/current", phone.Cookie, Proxied)).Succeeded().Json["warning"]);
    }

    [Fact]
    public async Task On_the_machine_itself_there_is_nothing_to_warn_of() =>
        Assert.Null((await Phone.PairAsync(server)).Session["warning"]);

    [Fact]
    public async Task Behind_a_proxy_that_speaks_TLS_the_cookie_is_kept_to_TLS()
    {
        var phone = await Phone.PairAsync(server, "{}", Proxied, ("Host", "rublab.example"), ("Origin", "https://rublab.example"), ("Sec-Fetch-Site", "same-origin"));

        Assert.Matches("^__Host-rublab=rubs_[A-Za-z0-9_-]{43}; max-age=7776000; path=/; secure; samesite=strict; httponly$", phone.SetCookie);
        Assert.Null(phone.Session["warning"]);
        (await server.GetAsync("/v1/formulas", phone.Cookie, Proxied, ("Host", "rublab.example"))).Succeeded();
        (await server.PostAsync(
            "/v1/formulas", Bodies.Formula, phone.Cookie, Proxied, ("Host", "rublab.example"), ("Origin", "https://rublab.example"))).Succeeded(HttpStatusCode.Created);
        var signedOut = await server.DeleteAsync(
            "/v1/sessions/current", phone.Cookie, Proxied, ("Host", "rublab.example"), ("Origin", "https://rublab.example"));
        Assert.Equal("__Host-rublab=; expires=Thu, 01 Jan 1970 00:00:00 GMT; path=/; secure; samesite=strict; httponly", signedOut.Header("Set-Cookie"));
    }

    [Theory]
    [InlineData("Origin", "https://elsewhere.example")]
    [InlineData("Origin", "http://127.0.0.1:1")]
    [InlineData("Origin", "null")]
    [InlineData("Origin", "")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    [InlineData("Sec-Fetch-Site", "none")]
    [InlineData("Sec-Fetch-Site", "")]
    [InlineData("X-Nothing", "said")]
    public async Task A_cookie_from_another_page_changes_nothing(string header, string value)
    {
        var phone = await Phone.PairAsync(server, """{"scopes":["read","write","pair"]}""");
        var before = await server.StoredAsync();

        foreach (var answer in (Answer[])
            [
                await server.PostAsync("/v1/formulas", Bodies.Formula, phone.Cookie, (header, value)),
                await server.PutAsync("/v1/formulas/lockside-pork-rub", Bodies.Formula, phone.Cookie, (header, value), ("If-Match", "*")),
                await server.DeleteAsync("/v1/formulas/lockside-pork-rub", phone.Cookie, (header, value), ("If-Match", "*")),
                await server.PostAsync("/v1/pairing-codes", "{}", phone.Cookie, (header, value)),
                await server.DeleteAsync("/v1/sessions/current", phone.Cookie, (header, value)),
                await server.DeleteAsync("/v1/sessions/" + phone.Id, phone.Cookie, (header, value)),
            ])
        {
            await server.RefusedAsync(answer, HttpStatusCode.Forbidden);
            Assert.Null(answer.Header("Set-Cookie"));
        }

        Assert.Equal(before, await server.StoredAsync());
        (await server.GetAsync("/v1/formulas", phone.Cookie, Proxied)).Succeeded();
    }

    [Fact]
    public async Task One_sign_of_another_page_outweighs_all_others()
    {
        var phone = await Phone.PairAsync(server);

        foreach (var others in ((string, string)[][])
            [
                [phone.Origin, ("Sec-Fetch-Site", "cross-site")],
                [("Origin", "https://elsewhere.example"), ("Sec-Fetch-Site", "same-origin")],
                [phone.Origin, ("Origin", "https://elsewhere.example")],
            ])
        {
            await server.RefusedAsync(await server.PostAsync("/v1/formulas", Bodies.Formula, [phone.Cookie, .. others]), HttpStatusCode.Forbidden);
        }
    }

    [Fact]
    public async Task Either_sign_of_an_own_page_is_enough()
    {
        var phone = await Phone.PairAsync(server);

        (await server.PostAsync("/v1/formulas", Bodies.Formula, phone.Cookie, phone.Origin)).Succeeded(HttpStatusCode.Created);
        (await server.PostAsync("/v1/formulas", Bodies.Formula, phone.Cookie, ("Sec-Fetch-Site", "same-origin"))).Succeeded(HttpStatusCode.Created);
    }

    [Fact]
    public async Task A_page_of_another_origin_cannot_pair_a_browser()
    {
        var body = $$"""{"code":"{{await Phone.CodeAsync(server)}}"}""";

        await server.RefusedAsync(await server.PostAsync("/v1/sessions", body, ("Origin", "https://elsewhere.example")), HttpStatusCode.Forbidden);
        await server.RefusedAsync(await server.PostAsync("/v1/sessions", body, ("Sec-Fetch-Site", "cross-site")), HttpStatusCode.Forbidden);
        (await server.PostAsync("/v1/sessions", body, ("Sec-Fetch-Site", "same-origin"))).Succeeded(HttpStatusCode.Created);
    }

    [Fact]
    public async Task A_key_comes_before_a_cookie()
    {
        var phone = await Phone.PairAsync(server, """{"scopes":["read"]}""");
        var key = ("Authorization", "Bearer " + await server.IssueKeyAsync(LocalKitchen.Id, "read", "write"));

        (await server.PostAsync("/v1/formulas", Bodies.Formula, phone.Cookie, key, ("Origin", "https://elsewhere.example"))).Succeeded(HttpStatusCode.Created);
        await server.RefusedAsync(
            await server.GetAsync("/v1/formulas", phone.Cookie, ("Authorization", "Bearer rubk_wrong")), HttpStatusCode.Unauthorized);
    }

    [Theory]
    [InlineData("rublab=rubs_wrong")]
    [InlineData("rublab=")]
    [InlineData("rublab")]
    [InlineData("__Host-rublab=%00%ff; rublab=x")]
    [InlineData("rublab=\"; ;;=;,")]
    public async Task A_cookie_that_is_none_opens_nothing_and_takes_nothing_from_the_machine_itself(string cookie)
    {
        await server.RefusedAsync(await server.GetAsync("/v1/formulas", ("Cookie", cookie), Proxied), HttpStatusCode.Unauthorized);
        (await server.GetAsync("/v1/formulas", ("Cookie", cookie))).Succeeded();
    }

    [Fact]
    public async Task A_token_is_no_key_and_a_key_no_token()
    {
        var phone = await Phone.PairAsync(server);
        var token = phone.Cookie.Item2["rublab=".Length..];
        var key = await server.IssueKeyAsync(LocalKitchen.Id, "read");

        await server.RefusedAsync(await server.GetAsync("/v1/formulas", ("Authorization", "Bearer " + token)), HttpStatusCode.Unauthorized);
        await server.RefusedAsync(await server.GetAsync("/v1/formulas", ("Cookie", "rublab=" + key), Proxied), HttpStatusCode.Unauthorized);
    }

    [Fact]
    public async Task A_device_seen_within_the_hour_is_given_no_new_cookie()
    {
        var phone = await Phone.PairAsync(server);

        Assert.Null((await server.GetAsync("/v1/formulas", phone.Cookie)).Succeeded().Header("Set-Cookie"));
    }

    [Fact]
    public async Task A_device_in_use_is_renewed_with_the_same_token_and_its_whole_life()
    {
        var cookie = await PairedBeforeAsync(TimeSpan.FromDays(89));

        var answer = (await server.GetAsync("/v1/sessions/current", ("Cookie", "rublab=" + cookie), Proxied)).Succeeded();

        Assert.Equal($"rublab={cookie}; max-age=7776000; path=/; samesite=strict; httponly", answer.Header("Set-Cookie"));
        Assert.InRange(DateTimeOffset.UtcNow - DateTimeOffset.Parse((string)answer.Json["lastUsedAt"]!), TimeSpan.Zero, TimeSpan.FromMinutes(1));
        Assert.InRange(DateTimeOffset.Parse((string)answer.Json["expiresAt"]!) - DateTimeOffset.UtcNow, TimeSpan.FromDays(89.9), TimeSpan.FromDays(90));
        Assert.Null((await server.GetAsync("/v1/formulas", ("Cookie", "rublab=" + cookie), Proxied)).Succeeded().Header("Set-Cookie"));
    }

    [Fact]
    public async Task A_device_not_used_for_90_days_is_out()
    {
        var cookie = await PairedBeforeAsync(DeviceSessionStore.Life + TimeSpan.FromSeconds(1));

        var answer = await server.GetAsync("/v1/formulas", ("Cookie", "rublab=" + cookie), Proxied);

        await server.RefusedAsync(answer, HttpStatusCode.Unauthorized);
        Assert.Null(answer.Header("Set-Cookie"));
    }

    [Fact]
    public async Task A_page_of_another_origin_does_not_keep_a_device_paired()
    {
        var cookie = await PairedBeforeAsync(TimeSpan.FromDays(89));

        await server.RefusedAsync(
            await server.PostAsync("/v1/batch-sheets", Bodies.Sheet, ("Cookie", "rublab=" + cookie), ("Origin", "https://elsewhere.example")), HttpStatusCode.Forbidden);

        Assert.NotNull((await server.GetAsync("/v1/formulas", ("Cookie", "rublab=" + cookie))).Succeeded().Header("Set-Cookie"));
    }

    private async Task<string> PairedBeforeAsync(TimeSpan ago)
    {
        await using var before = await server.OpenStoreAsync(DateTimeOffset.UtcNow - ago);
        await using var work = await before.BeginAsync(Intent.Write);
        var started = await work.DeviceSessions.StartAsync(LocalKitchen.Id, "Old phone", ["read", "write"]);
        await work.CommitAsync();
        return started.PlainToken;
    }
}
