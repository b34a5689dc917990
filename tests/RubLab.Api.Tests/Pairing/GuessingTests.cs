using System.Net;
using System.Net.Sockets;
using System.Text;
using RubLab.Api.Callers;
using RubLab.Api.Tests.Hosting;
using RubLab.Storage;
using RubLab.Storage.Pairing;

namespace RubLab.Api.Tests.Pairing;

/// <summary>Whoever guesses codes: each test has a server that has not been tried yet.</summary>
public sealed class GuessingTests : IAsyncLifetime, IDisposable
{
    private const string Guess = """{"code":"3333-3333"}""";

    private readonly Server _server = new();

    public Task InitializeAsync() => Task.CompletedTask;

    public Task DisposeAsync() => _server.DisposeAsync();

    public void Dispose() => _server.Dispose();

    [Fact]
    public async Task The_sixth_try_from_one_address_has_to_wait_right_or_wrong()
    {
        var code = await Phone.CodeAsync(_server);
        await GuessAsync(PairingTries.PerAddress);

        foreach (var body in (string[])[Guess, $$"""{"code":"{{code}}"}"""])
        {
            var answer = await _server.PostAsync("/v1/sessions", body);
            await _server.RefusedAsync(answer, HttpStatusCode.TooManyRequests);
            Assert.InRange(int.Parse(answer.Header("Retry-After")!), 240, 300);
            Assert.Null(answer.Header("Set-Cookie"));
        }
    }

    [Fact]
    public async Task Tries_at_once_are_counted_like_tries_in_turn()
    {
        await Phone.CodeAsync(_server);

        var answers = await Task.WhenAll(Enumerable.Range(0, 20).Select(_ => _server.PostAsync("/v1/sessions", Guess)));

        Assert.Equal(PairingTries.PerAddress, answers.Count(a => a.Status == HttpStatusCode.UnprocessableEntity));
        Assert.Equal(15, answers.Count(a => a.Status == HttpStatusCode.TooManyRequests));
    }

    [Fact]
    public async Task Devices_paired_one_after_another_do_not_have_to_wait()
    {
        for (var i = 0; i < 2 * PairingTries.PerAddress; i++)
        {
            await Phone.PairAsync(_server);
        }
    }

    [Fact]
    public async Task Another_address_need_not_wait_until_the_codes_are_void()
    {
        var code = await Phone.CodeAsync(_server);
        await GuessAsync(PairingTries.PerAddress);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, await FromAsync("127.0.0.2", Guess));
        Assert.Equal(HttpStatusCode.Created, await FromAsync("127.0.0.2", $$"""{"code":"{{code}}"}"""));
    }

    [Fact]
    public async Task Ten_wrong_tries_from_anywhere_make_every_open_code_void_and_a_new_one_works()
    {
        var first = await Phone.CodeAsync(_server);
        var second = await Phone.CodeAsync(_server);
        for (var i = 0; i < PairingCodeStore.MostWrongTries; i++)
        {
            Assert.Equal(HttpStatusCode.UnprocessableEntity, await FromAsync($"127.0.0.{2 + i / 4}", Guess));
        }

        Assert.Equal(HttpStatusCode.UnprocessableEntity, await FromAsync("127.0.0.9", $$"""{"code":"{{first}}"}"""));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, await FromAsync("127.0.0.9", $$"""{"code":"{{second}}"}"""));
        await Phone.PairAsync(_server);
    }

    [Fact]
    public async Task Wrong_tries_at_another_server_of_the_same_store_count_too()
    {
        var code = await Phone.CodeAsync(_server);
        for (var i = 0; i < PairingCodeStore.MostWrongTries - 1; i++)
        {
            await using var work = await _server.Database.BeginAsync(Intent.Write);
            Assert.Null(await work.PairingCodes.RedeemAsync("another server's"));
            await work.CommitAsync();
        }

        await GuessAsync(1);

        await _server.RefusedAsync(
            await _server.PostAsync("/v1/sessions", $$"""{"code":"{{code}}"}"""), HttpStatusCode.UnprocessableEntity, "code-not-open", "/code");
    }

    [Fact]
    public async Task Neither_codes_nor_tokens_stand_in_the_store()
    {
        var code = (await Phone.CodeAsync(_server)).Replace("-", "", StringComparison.Ordinal);
        var phone = await Phone.PairAsync(_server);
        var token = phone.Cookie.Item2["rublab=".Length..];
        var location = _server.Database.Location;

        var stored = string.Concat(new[] { location, location + "-wal" }.Where(File.Exists).Select(Text));

        Assert.Contains(phone.Id, stored, StringComparison.Ordinal);
        Assert.DoesNotContain(code, stored, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(token, stored, StringComparison.Ordinal);
        Assert.Contains(_server.Codes.Hash(code), stored, StringComparison.Ordinal);
    }

    private static string Text(string path)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using var reader = new StreamReader(stream, Encoding.Latin1);
        return reader.ReadToEnd();
    }

    private async Task GuessAsync(int times)
    {
        for (var i = 0; i < times; i++)
        {
            await _server.RefusedAsync(
                await _server.PostAsync("/v1/sessions", Guess), HttpStatusCode.UnprocessableEntity, "code-not-open", "/code");
        }
    }

    // All of 127.0.0.0/8 is this machine, and each of it an address of its own.
    private async Task<HttpStatusCode> FromAsync(string address, string body)
    {
        using var http = new HttpClient(new SocketsHttpHandler
        {
            ConnectCallback = async (context, cancellation) =>
            {
                var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
                socket.Bind(new IPEndPoint(IPAddress.Parse(address), 0));
                await socket.ConnectAsync(context.DnsEndPoint, cancellation);
                return new NetworkStream(socket, ownsSocket: true);
            },
        });
        using var content = new StringContent(body, Encoding.UTF8, "application/json");
        using var answer = await http.PostAsync(_server.Address + "/v1/sessions", content);
        return answer.StatusCode;
    }
}
