using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Starting;

public sealed class PairingStartTests : IDisposable
{
    private const string Key = "a-key-of-more-than-twenty-letters";
    private const string Everywhere = "http://0.0.0.0:0";

    private readonly TemporaryDirectory _directory = new();
    private readonly HttpClient _client = new(new SocketsHttpHandler { UseCookies = false });

    private string Data => _directory.At("data", "rublab.db");

    public void Dispose()
    {
        _client.Dispose();
        _directory.Dispose();
    }

    [Fact]
    public async Task A_new_code_is_printed_and_pairs_a_device_beside_the_running_server_and_a_restart_keeps_it()
    {
        string cookie;
        await using (var first = await ServerProcess.StartAsync(Key, "--data", Data, "--urls", Everywhere))
        {
            await using var maker = await ServerProcess.RunAsync(null, "--data", Data, "--new-code", "Stove phone");
            Assert.Equal(0, maker.ExitCode);
            Assert.Matches("^[34679CDFHJKMNPRTVWXY]{4}-[34679CDFHJKMNPRTVWXY]{4}\n", maker.Output.ReplaceLineEndings("\n"));
            Assert.Contains("it pairs one device (read, write)", maker.Output, StringComparison.Ordinal);
            var (status, session, setCookie) = await PairAsync(first, maker.Output[..9]);
            Assert.Equal((HttpStatusCode.Created, "Stove phone"), (status, (string)session["name"]!));
            cookie = setCookie!.Split(';')[0];
            Assert.Equal(HttpStatusCode.OK, await StatusAsync(first, "/v1/formulas", cookie));
        }

        await using var second = await ServerProcess.StartAsync(Key, "--data", Data, "--urls", Everywhere);
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(second, "/v1/formulas", cookie));
        Assert.Equal(HttpStatusCode.Unauthorized, await StatusAsync(second, "/v1/formulas", cookie + "x"));
    }

    [Fact]
    public async Task The_page_loads_unpaired_where_the_API_does_not()
    {
        await using var server = await ServerProcess.StartAsync(Key, "--data", Data, "--urls", Everywhere);

        Assert.Contains("<html", await _client.GetStringAsync(server.Address + "/"), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(server, "/js/main.js", null));
        using var answer = await _client.GetAsync(server.Address + "/v1/sessions/current");
        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
        Assert.Equal("Bearer", answer.Headers.WwwAuthenticate.ToString());
    }

    [Fact]
    public async Task A_code_is_no_key_that_lets_the_server_off_loopback_and_neither_is_a_paired_device()
    {
        await using var maker = await ServerProcess.RunAsync(null, "--data", Data, "--new-code", "Stove phone");
        await RefusedOffLoopbackAsync();
        await using (var local = await ServerProcess.StartAsync(null, "--data", Data, "--urls", "http://127.0.0.1:0"))
        {
            Assert.Equal(HttpStatusCode.Created, (await PairAsync(local, maker.Output[..9])).Status);
        }

        await RefusedOffLoopbackAsync();
    }

    [Fact]
    public async Task Scopes_go_into_the_code_and_into_the_key()
    {
        await using var keyMaker = await ServerProcess.RunAsync(null, "--data", Data, "--new-key", "till");
        await using var readMaker = await ServerProcess.RunAsync(null, "--data", Data, "--new-key", "display", "--scopes", "read");
        await using var codeMaker = await ServerProcess.RunAsync(null, "--data", Data, "--new-code", "Display", "--scopes", "read, pair");
        await using var server = await ServerProcess.StartAsync(null, "--data", Data, "--urls", Everywhere);

        var (_, session, _) = await PairAsync(server, codeMaker.Output[..9]);
        Assert.Equal("""["read","pair"]""", session["scopes"]!.ToJsonString());
        Assert.Equal(HttpStatusCode.Created, await CodeByKeyAsync(server, keyMaker.Output.Trim()));
        Assert.Equal(HttpStatusCode.Forbidden, await CodeByKeyAsync(server, readMaker.Output.Trim()));
    }

    [Theory]
    [InlineData("--new-code", "x", "--scopes", "cook")]
    [InlineData("--new-code", "x", "--scopes", "write")]
    [InlineData("--new-code", "a\u0007b", "--scopes", "read")]
    [InlineData("--new-key", "x", "--scopes", "read,,write")]
    public async Task A_scope_or_name_that_is_none_is_refused_in_one_line(params string[] arguments)
    {
        await using var server = await ServerProcess.RunAsync(null, ["--data", Data, .. arguments]);

        Assert.Equal(1, server.ExitCode);
        Assert.StartsWith("RubLab cannot start: A name or scope cannot be used.", server.Output.Trim(), StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", server.Output, StringComparison.Ordinal);
    }

    private async Task RefusedOffLoopbackAsync()
    {
        await using var server = await ServerProcess.RunAsync(null, "--data", Data, "--urls", Everywhere);
        Assert.Equal(1, server.ExitCode);
        Assert.Contains("needs a key", server.Output, StringComparison.Ordinal);
        Assert.Contains("--new-code NAME", server.Output, StringComparison.Ordinal);
    }

    private async Task<(HttpStatusCode Status, JsonNode Session, string? Cookie)> PairAsync(ServerProcess server, string code)
    {
        using var content = new StringContent($$"""{"code":"{{code}}"}""", Encoding.UTF8, "application/json");
        using var answer = await _client.PostAsync(server.Address + "/v1/sessions", content);
        var cookie = answer.Headers.TryGetValues("Set-Cookie", out var cookies) ? cookies.Single() : null;
        return (answer.StatusCode, JsonNode.Parse(await answer.Content.ReadAsStringAsync())!, cookie);
    }

    private async Task<HttpStatusCode> CodeByKeyAsync(ServerProcess server, string key)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, server.Address + "/v1/pairing-codes");
        request.Content = new StringContent("""{"scopes":["read"]}""", Encoding.UTF8, "application/json");
        request.Headers.Authorization = new("Bearer", key);
        using var answer = await _client.SendAsync(request);
        return answer.StatusCode;
    }

    private async Task<HttpStatusCode> StatusAsync(ServerProcess server, string path, string? cookie)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, server.Address + path);
        if (cookie is not null)
        {
            request.Headers.Add("Cookie", cookie);
        }

        using var answer = await _client.SendAsync(request);
        return answer.StatusCode;
    }
}
