using System.Net.Http.Json;
using System.Text.Json.Nodes;
using Microsoft.Playwright;

namespace RubLab.Page.Tests.Harness;

/// <summary>The API published once for all tests, one server on it, and one browser.</summary>
public sealed class Published : IAsyncLifetime, IDisposable
{
    /// <summary>How long something the page does may take to be seen: on a busy machine several times what a cook waits.</summary>
    private const float Patience = 20_000;

    private readonly TemporaryFolder _folder = new();
    private IPlaywright? _playwright;

    public string Folder => _folder.At("api");

    public string Program => Path.Combine(Folder, "RubLab.Api.dll");

    public Server Server { get; private set; } = null!;

    public IBrowser Browser { get; private set; } = null!;

    /// <summary>The id of the contract's example formula in the server's store.</summary>
    public string ExampleFormula { get; private set; } = "";

    public async Task InitializeAsync()
    {
        if (Chromium.Missing is not null)
        {
            return;
        }

        Assertions.SetDefaultExpectTimeout(Patience);
        await Dotnet.RunAsync("publish", "src/RubLab.Api", "-c", "Release", "-o", Folder);
        Server = await Server.StartAsync(Program);
        ExampleFormula = await StoreExampleAsync(Server);
        _playwright = await Playwright.CreateAsync();
        Browser = await Chromium.LaunchAsync(_playwright);
    }

    public async Task DisposeAsync()
    {
        if (Browser is not null)
        {
            await Browser.DisposeAsync();
            await Server.DisposeAsync();
        }
    }

    public void Dispose()
    {
        _playwright?.Dispose();
        _folder.Dispose();
    }

    /// <summary>Stores the contract's example: two parts salt, three parts pepper, 22 g/kg.</summary>
    public static async Task<string> StoreExampleAsync(Server server)
    {
        using var body = JsonContent.Create(JsonNode.Parse("""
            { "name": "Two and three", "kind": "rub", "dose": { "value": 22, "unit": "g/kg" },
              "lines": [ { "ingredient": "salt", "form": "table", "amount": { "value": 2, "unit": "parts-by-mass" } },
                         { "ingredient": "black-pepper", "form": "ground", "amount": { "value": 3, "unit": "parts-by-mass" } } ] }
            """));
        using var answer = await server.Http.PostAsync(new Uri("v1/formulas", UriKind.Relative), body);
        answer.EnsureSuccessStatusCode();
        return (await answer.Content.ReadFromJsonAsync<JsonNode>())!["id"]!.GetValue<string>();
    }
}
