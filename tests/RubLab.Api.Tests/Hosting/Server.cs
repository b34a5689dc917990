using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using RubLab.Api.Callers;
using RubLab.Api.Hosting;
using RubLab.Storage;

namespace RubLab.Api.Tests.Hosting;

/// <summary>A server with a store of its own, running from the first question on, and ways to ask it.</summary>
public class Server : IAsyncLifetime, IDisposable
{
    private readonly TemporaryDirectory _directory = new();
    private readonly Lazy<ServerFactory> _factory;
    private readonly HttpClient _client = new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false });

    public Server()
    {
        _factory = new Lazy<ServerFactory>(() =>
        {
            var factory = new ServerFactory(Data);
            factory.StartServer();
            return factory;
        });
    }

    /// <summary>Scheme, host and port, without a slash at the end.</summary>
    public string Address => _factory.Value.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single();

    public Database Database => _factory.Value.Services.GetRequiredService<Database>();

    public PairingCodes Codes => _factory.Value.Services.GetRequiredService<PairingCodes>();

    /// <summary>Where its store is.</summary>
    protected virtual string Data => _directory.At("kitchen", "rublab.db");

    public virtual Task InitializeAsync() => Task.CompletedTask;

    // Called before Dispose.
    public virtual async Task DisposeAsync()
    {
        if (_factory.IsValueCreated)
        {
            await _factory.Value.DisposeAsync();
        }
    }

    public void Dispose()
    {
        _client.Dispose();
        _directory.Dispose();
        GC.SuppressFinalize(this);
    }

    public Task<Answer> GetAsync(string path, params (string Name, string Value)[] headers) =>
        SendAsync(HttpMethod.Get, path, (string?)null, headers);

    public Task<Answer> PostAsync(string path, string body, params (string Name, string Value)[] headers) =>
        SendAsync(HttpMethod.Post, path, body, headers);

    public Task<Answer> PutAsync(string path, string body, params (string Name, string Value)[] headers) =>
        SendAsync(HttpMethod.Put, path, body, headers);

    public Task<Answer> DeleteAsync(string path, params (string Name, string Value)[] headers) =>
        SendAsync(HttpMethod.Delete, path, (string?)null, headers);

    public Task<Answer> SendAsync(HttpMethod method, string path, string? body, params (string Name, string Value)[] headers) =>
        SendAsync(method, path, body is null ? null : Encoding.UTF8.GetBytes(body), "application/json", headers);

    public async Task<Answer> SendAsync(
        HttpMethod method, string path, byte[]? body, string? contentType, params (string Name, string Value)[] headers)
    {
        ByteArrayContent? content = null;
        if (body is not null)
        {
            content = new ByteArrayContent(body);
            if (contentType is not null)
            {
                content.Headers.TryAddWithoutValidation("Content-Type", contentType);
            }
        }

        return await SendAsync(method, path, content, headers);
    }

    public async Task<Answer> SendAsync(HttpMethod method, string path, HttpContent? content, params (string Name, string Value)[] headers)
    {
        using var request = new HttpRequestMessage(method, ToUri(path)) { Content = content };
        foreach (var (name, value) in headers)
        {
            if (!request.Headers.TryAddWithoutValidation(name, value))
            {
                content?.Headers.TryAddWithoutValidation(name, value);
            }
        }

        using var response = await _client.SendAsync(request);
        return await Answer.ReadAsync(response);
    }

    /// <summary>Sends a request whose answer is read as it comes.</summary>
    public Task<HttpResponseMessage> StreamAsync(string path, string body) => _client.SendAsync(
        new HttpRequestMessage(HttpMethod.Post, ToUri(path)) { Content = new StringContent(body, new MediaTypeHeaderValue("application/json")) },
        HttpCompletionOption.ResponseHeadersRead);

    /// <summary>Asserts that an answer is a problem of that status, complete, with a type that can be read; gives its errors.</summary>
    public async Task<JsonArray> RefusedAsync(Answer answer, HttpStatusCode status)
    {
        var problem = ProblemDocument.Of(answer, status);
        var page = await GetAsync((string)problem["type"]!);
        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Equal("text/html", page.MediaType);
        Assert.Contains($"<h1>{(int)status}: {(string)problem["title"]!}</h1>", page.Text, StringComparison.Ordinal);
        return problem["errors"] as JsonArray ?? [];
    }

    /// <summary>Asserts that an answer is a problem with one error, of that code in that place.</summary>
    public async Task RefusedAsync(Answer answer, HttpStatusCode status, string code, string pointer)
    {
        var error = Assert.Single(await RefusedAsync(answer, status))!;
        Assert.Equal((code, pointer), ((string)error["code"]!, (string)error["pointer"]!));
    }

    /// <summary>Everything a write would have changed: the formulas of the local kitchen and the number of its last change.</summary>
    public async Task<string> StoredAsync()
    {
        await using var work = await Database.BeginAsync(Intent.Read);
        var formulas = await work.Formulas.ListAsync(LocalKitchen.Id, 10_000);
        var kitchen = await work.Kitchens.GetAsync(LocalKitchen.Id);
        return $"{kitchen!.LastChange}: {string.Join(' ', formulas.Select(f => $"{f.Id}@{f.Revision}"))}";
    }

    /// <summary>Opens its store as at another time.</summary>
    public Task<Database> OpenStoreAsync(DateTimeOffset now)
    {
        // It exists once the server has started.
        _ = _factory.Value;
        return Database.OpenAsync(Data, new FixedClock(now));
    }

    /// <summary>Issues a key, making its kitchen if there is none yet.</summary>
    public async Task<string> IssueKeyAsync(string kitchen, params string[] scopes)
    {
        await using var work = await Database.BeginAsync(Intent.Write);
        await work.Kitchens.EnsureAsync(kitchen, kitchen);
        var issued = await work.Keys.IssueAsync(kitchen, "test", scopes);
        await work.CommitAsync();
        return issued.PlainKey;
    }

    // Paths go out exactly as written.
    private Uri ToUri(string path) => new(Address + path, new UriCreationOptions { DangerousDisablePathAndQueryCanonicalization = true });
}
