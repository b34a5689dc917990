using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Starting;

public sealed class StartTests : IDisposable
{
    private const string Key = "a-key-of-more-than-twenty-letters";
    private const string Local = "http://127.0.0.1:0";
    private const string Everywhere = "http://0.0.0.0:0";

    private readonly TemporaryDirectory _directory = new();
    private readonly HttpClient _client = new();

    private string Data => _directory.At("data", "rublab.db");

    public void Dispose()
    {
        _client.Dispose();
        _directory.Dispose();
    }

    [Fact]
    public async Task It_prints_its_address_its_data_file_and_a_request_that_works()
    {
        await using var server = await ServerProcess.StartAsync(null, "--data", Data, "--urls", Local);

        Assert.Contains(Data, server.Output, StringComparison.Ordinal);
        Assert.Contains($"curl -s {server.Address}/v1/batch-sheets -H 'Content-Type: application/json' -d '", server.Output, StringComparison.Ordinal);
        var sheet = await PostAsync(server.Address + "/v1/batch-sheets", server.Example, null);
        Assert.Equal("weighed", (string)sheet["status"]!);

        // 11.3 kg at 14 g/kg.
        Assert.Equal("""{"value":158,"unit":"g"}""", sheet["treatments"]![0]!["onMeat"]!.ToJsonString());
    }

    [Fact]
    public async Task The_printed_request_still_works_when_the_examples_are_deleted()
    {
        await using var server = await ServerProcess.StartAsync(null, "--data", Data, "--urls", Local);
        foreach (var id in await FormulasAsync(server))
        {
            await DeleteAsync(server, id);
        }

        Assert.Equal("weighed", (string)(await PostAsync(server.Address + "/v1/batch-sheets", server.Example, null))["status"]!);
    }

    [Fact]
    public async Task Example_formulas_are_there_once_and_stay_deleted_after_a_restart()
    {
        var all = Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "seed-data", "formulas"), "*.json")
            .Select(f => Path.GetFileNameWithoutExtension(f)).Order().ToArray();
        Assert.True(all.Length >= 16);
        await using (var first = await ServerProcess.StartAsync(null, "--data", Data, "--urls", Local))
        {
            Assert.Equal(all, (await FormulasAsync(first)).Order());
            await DeleteAsync(first, all[0]);
        }

        await using var second = await ServerProcess.StartAsync(null, "--data", Data, "--urls", Local);
        Assert.Equal(all[1..], (await FormulasAsync(second)).Order());
    }

    [Fact]
    public async Task Data_moves_the_file()
    {
        var other = _directory.At("elsewhere", "deeper", "kitchen.db");
        await using var server = await ServerProcess.StartAsync(null, "--data", other, "--urls", Local);

        Assert.True(File.Exists(other));
        Assert.False(File.Exists(Data));
    }

    [Theory]
    [InlineData("http://0.0.0.0:0")]
    [InlineData("http://[::]:0")]
    [InlineData("http://*:0")]
    [InlineData("http://127.0.0.1:0;http://0.0.0.0:0")]
    public async Task Off_loopback_it_refuses_to_start_without_a_key(string urls)
    {
        await using var server = await ServerProcess.RunAsync(null, "--data", Data, "--urls", urls);

        Assert.Equal(1, server.ExitCode);
        Assert.Contains("RubLab cannot start: Listening on ", server.Output, StringComparison.Ordinal);
        Assert.Contains("set RUBLAB_KEY, or make one with --new-key NAME.", server.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", server.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Local)]
    [InlineData(Everywhere)]
    public async Task With_a_configured_key_nobody_goes_without_and_the_printed_request_says_so(string urls)
    {
        await using var server = await ServerProcess.StartAsync(Key, "--data", Data, "--urls", urls);

        Assert.Contains("-H 'Authorization: Bearer YOUR-KEY'", server.Output, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Unauthorized, await StatusAsync(server.Address, null));
        Assert.Equal("weighed", (string)(await PostAsync(server.Address + "/v1/batch-sheets", server.Example, Key))["status"]!);
    }

    [Fact]
    public async Task Off_loopback_it_starts_with_a_key_in_its_configuration_and_that_key_works()
    {
        await using var server = await ServerProcess.StartAsync(Key, "--data", Data, "--urls", Everywhere);

        Assert.StartsWith("http://127.0.0.1:", server.Address, StringComparison.Ordinal);
        Assert.DoesNotContain(Key, server.Output, StringComparison.Ordinal);
        Assert.Equal("weighed", (string)(await PostAsync(server.Address + "/v1/batch-sheets", server.Example, Key))["status"]!);
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(server.Address, Key));
        Assert.Equal(HttpStatusCode.Unauthorized, await StatusAsync(server.Address, null));
        Assert.Equal(HttpStatusCode.Unauthorized, await StatusAsync(server.Address, Key + "x"));
    }

    [OtherAddressFact]
    public async Task From_another_address_a_key_is_needed_even_under_a_loopback_name()
    {
        await using var server = await ServerProcess.StartAsync(Key, "--data", Data, "--urls", Everywhere);
        var outside = new UriBuilder(server.Address) { Host = OtherAddressFactAttribute.Address!.ToString() }.Uri.ToString().TrimEnd('/');

        Assert.Equal(HttpStatusCode.Unauthorized, await StatusAsync(outside, null));
        Assert.Equal(HttpStatusCode.Unauthorized, await StatusAsync(outside, null, host: "localhost"));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(outside, Key));
    }

    [Fact]
    public async Task A_new_key_is_printed_alone_and_works_and_lets_the_server_off_loopback()
    {
        await using var maker = await ServerProcess.RunAsync(null, "--data", Data, "--new-key", "till");
        Assert.Equal(0, maker.ExitCode);
        var key = maker.Output.Trim();
        Assert.Matches("^rubk_[A-Za-z0-9_-]{40,}$", key);

        await using var server = await ServerProcess.StartAsync(null, "--data", Data, "--urls", Everywhere);
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(server.Address, key, host: "rublab.example"));
        Assert.Equal(HttpStatusCode.Unauthorized, await StatusAsync(server.Address, null));
    }

    [Fact]
    public async Task A_key_in_the_configuration_ends_keyless_access_on_loopback_too()
    {
        await using var server = await ServerProcess.StartAsync(Key, "--data", Data, "--urls", Local);

        Assert.Equal(HttpStatusCode.Unauthorized, await StatusAsync(server.Address, null));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(server.Address, Key));
    }

    [Fact]
    public async Task Another_key_in_the_configuration_retires_the_one_before()
    {
        await using (var first = await ServerProcess.StartAsync(Key, "--data", Data, "--urls", Local))
        {
            Assert.Equal(HttpStatusCode.OK, await StatusAsync(first.Address, Key));
        }

        await using var second = await ServerProcess.StartAsync(Key + "-changed", "--data", Data, "--urls", Local);
        Assert.Equal(HttpStatusCode.Unauthorized, await StatusAsync(second.Address, Key));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(second.Address, Key + "-changed"));
    }

    [Fact]
    public async Task A_key_that_asks_too_often_is_told_how_long_to_wait()
    {
        await using var server = await ServerProcess.StartAsync(Key, "--data", Data, "--urls", Local, "--RUBLAB_RATE", "1");
        var statuses = new List<HttpStatusCode>();
        for (var i = 0; i < 4; i++)
        {
            statuses.Add(await StatusAsync(server.Address, Key));
        }

        Assert.Equal(HttpStatusCode.OK, statuses[0]);
        Assert.Contains(HttpStatusCode.TooManyRequests, statuses);
    }

    [Fact]
    public async Task A_short_configured_key_is_refused()
    {
        await using var server = await ServerProcess.RunAsync("short", "--data", Data, "--urls", Local);

        Assert.Equal(1, server.ExitCode);
        Assert.Contains("RUBLAB_KEY must have at least 20 characters", server.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nonsense")]
    [InlineData("http://127.0.0.1:99999")]
    [InlineData("https://127.0.0.1:0")]
    public async Task An_address_that_is_none_is_refused_in_one_line(string urls)
    {
        await using var server = await ServerProcess.RunAsync(null, "--data", Data, "--urls", urls);

        Assert.Equal(1, server.ExitCode);
        Assert.StartsWith("RubLab cannot start: ", server.Output.Trim(), StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", server.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_port_in_use_is_refused_in_one_line()
    {
        await using var first = await ServerProcess.StartAsync(null, "--data", Data, "--urls", Local);
        await using var second = await ServerProcess.RunAsync(null, "--data", _directory.At("second.db"), "--urls", first.Address);

        Assert.Equal(1, second.ExitCode);
        Assert.Matches("^RubLab cannot start: .*address already in use", second.Output.Trim());
        Assert.DoesNotContain("   at ", second.Output, StringComparison.Ordinal);
    }

    private static async Task<JsonNode> ReadAsync(HttpResponseMessage response)
    {
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, text);
        return JsonNode.Parse(text)!;
    }

    private async Task<JsonNode> PostAsync(string uri, string body, string? key)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, uri) { Content = new StringContent(body, Encoding.UTF8, "application/json") };
        request.Headers.Authorization = key is null ? null : new("Bearer", key);
        return await ReadAsync(await _client.SendAsync(request));
    }

    private async Task<List<string>> FormulasAsync(ServerProcess server) =>
        (await ReadAsync(await _client.GetAsync(server.Address + "/v1/formulas")))["items"]!.AsArray().Select(f => (string)f!["id"]!).ToList();

    private async Task DeleteAsync(ServerProcess server, string id)
    {
        using var request = new HttpRequestMessage(HttpMethod.Delete, $"{server.Address}/v1/formulas/{id}");
        request.Headers.TryAddWithoutValidation("If-Match", "*");
        Assert.Equal(HttpStatusCode.NoContent, (await _client.SendAsync(request)).StatusCode);
    }

    private async Task<HttpStatusCode> StatusAsync(string address, string? key, string? host = null)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, address + "/v1/formulas");
        request.Headers.Authorization = key is null ? null : new("Bearer", key);
        request.Headers.Host = host;
        return (await _client.SendAsync(request)).StatusCode;
    }
}
