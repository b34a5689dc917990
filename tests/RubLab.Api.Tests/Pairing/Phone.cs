using System.Net;
using System.Text.Json.Nodes;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Pairing;

/// <summary>A browser on a paired device, as far as a server sees it.</summary>
internal sealed class Phone(Server server, string setCookie, JsonNode session)
{
    /// <summary>The header as the server set it.</summary>
    public string SetCookie { get; } = setCookie;

    public string Id { get; } = (string)session["id"]!;

    public JsonNode Session { get; } = session;

    /// <summary>What the browser sends from then on.</summary>
    public (string, string) Cookie => ("Cookie", SetCookie[..SetCookie.IndexOf(';', StringComparison.Ordinal)]);

    /// <summary>What it adds where a page of the server changes something.</summary>
    public (string, string) Origin => ("Origin", server.Address);

    /// <summary>A code from the machine itself.</summary>
    public static async Task<string> CodeAsync(Server server, string body = "{}", params (string, string)[] headers) =>
        (string)(await server.PostAsync("/v1/pairing-codes", body, headers)).Succeeded(HttpStatusCode.Created).Json["code"]!;

    public static async Task<Phone> PairAsync(Server server, string codeBody = "{}", params (string, string)[] headers)
    {
        var answer = (await server.PostAsync("/v1/sessions", $$"""{"code":"{{await CodeAsync(server, codeBody)}}"}""", headers)).Succeeded(HttpStatusCode.Created);
        return new Phone(server, answer.Header("Set-Cookie")!, answer.Json);
    }
}
