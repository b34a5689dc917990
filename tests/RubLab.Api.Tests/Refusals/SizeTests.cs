using System.Net;
using System.Net.Sockets;
using System.Text;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Refusals;

public sealed class SizeTests(Server server) : IClassFixture<Server>
{
    private const int TenMegabytes = 10 * 1024 * 1024;

    public static TheoryData<string> Routes => new(Bodies.ByRoute.Keys);

    [Theory]
    [MemberData(nameof(Routes))]
    public async Task A_body_of_10_MB_is_too_large(string route)
    {
        var (method, path, sound, _) = Bodies.ByRoute[route];
        var before = await server.StoredAsync();

        // Asks before it sends, as the server may hang up on a body it does not want.
        await server.RefusedAsync(
            await server.SendAsync(method, path, sound + new string(' ', TenMegabytes), ("Expect", "100-continue"), ("If-Match", "*")),
            HttpStatusCode.RequestEntityTooLarge);

        Assert.Equal(before, await server.StoredAsync());
    }

    [Theory]
    [MemberData(nameof(Routes))]
    public async Task A_body_of_10_MB_that_does_not_tell_its_length_is_too_large(string route)
    {
        var (method, path, sound, _) = Bodies.ByRoute[route];
        var uri = new Uri(server.Address);
        using var socket = new TcpClient();
        await socket.ConnectAsync(uri.Host, uri.Port);
        await using var stream = socket.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(
            $"{method} {path} HTTP/1.1\r\nHost: {uri.Authority}\r\nContent-Type: application/json\r\nIf-Match: *\r\nTransfer-Encoding: chunked\r\n\r\n"));
        await WriteChunkAsync(stream, sound);
        var space = new string(' ', 64 * 1024);
        try
        {
            for (var sent = 0; sent < TenMegabytes; sent += space.Length)
            {
                await WriteChunkAsync(stream, space);
            }
        }
        catch (IOException)
        {
            // It has answered and hung up.
        }

        var answer = await ReadSomeAsync(stream);
        Assert.StartsWith("HTTP/1.1 413 ", answer, StringComparison.Ordinal);
        Assert.Contains("/problems/too-large", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_body_just_below_4_MB_is_read()
    {
        var space = new string(' ', (4 * 1024 * 1024) - Bodies.Sheet.Length);

        (await server.PostAsync("/v1/batch-sheets", Bodies.Sheet + space)).Succeeded();
        await server.RefusedAsync(
            await server.PostAsync("/v1/batch-sheets", Bodies.Sheet + space + " ", ("Expect", "100-continue")), HttpStatusCode.RequestEntityTooLarge);
    }

    [Fact]
    public async Task A_list_of_a_quarter_million_wrong_things_is_answered_with_its_first_hundred_faults()
    {
        var body = $$"""{"pile":[{"cut":"beef-brisket","pieces":[{{string.Join(',', Enumerable.Repeat("{}", 250_000))}}]}],"treatments":[{"formulaId":"lockside-pork-rub"}]}""";

        var answer = await server.PostAsync("/v1/batch-sheets", body);

        Assert.Equal(100, (await server.RefusedAsync(answer, HttpStatusCode.UnprocessableEntity)).Count);
        Assert.Contains("250000", (string)answer.Json["detail"]!, StringComparison.Ordinal);
    }

    private static async Task WriteChunkAsync(NetworkStream stream, string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        await stream.WriteAsync(Encoding.ASCII.GetBytes($"{bytes.Length:x}\r\n"));
        await stream.WriteAsync(bytes);
        await stream.WriteAsync("\r\n"u8.ToArray());
    }

    private static async Task<string> ReadSomeAsync(NetworkStream stream)
    {
        var text = new StringBuilder();
        var buffer = new byte[4096];
        try
        {
            while (!text.ToString().Contains("status\":413", StringComparison.Ordinal) && await stream.ReadAsync(buffer) is > 0 and var read)
            {
                text.Append(Encoding.UTF8.GetString(buffer, 0, read));
            }
        }
        catch (IOException)
        {
            // Reset after the answer; what was read counts.
        }

        return text.ToString();
    }
}
