using System.Diagnostics;
using System.Net.Http.Json;
using System.Text.Json.Nodes;
using Microsoft.Playwright;

namespace RubLab.Page.Tests.Harness;

/// <summary>The API published once for all tests, one server on it, and one browser.</summary>
public sealed class Published : IAsyncLifetime, IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private IPlaywright? _playwright;

    public string Folder => _folder.At("api");

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

        await PublishAsync();
        Server = await Server.StartAsync(Folder);
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

    private async Task PublishAsync()
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, WorkingDirectory = Repository.Root };
        foreach (var argument in (string[])["publish", "src/RubLab.Api", "-c", "Release", "-o", Folder, "-nodeReuse:false", "--nologo"])
        {
            start.ArgumentList.Add(argument);
        }

        // What the test host's own build left in the environment would lead this one astray.
        foreach (var name in start.Environment.Keys.Where(k => k.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase)).ToList())
        {
            start.Environment.Remove(name);
        }

        using var publish = Process.Start(start)!;
        var said = await publish.StandardOutput.ReadToEndAsync();
        await publish.WaitForExitAsync();
        if (publish.ExitCode != 0)
        {
            throw new InvalidOperationException($"Publishing failed:\n{said}");
        }
    }
}
