using System.Text.RegularExpressions;
using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed partial class OfflineTests(Published published)
{
    [RequiresChromiumFact]
    public async Task After_one_visit_the_page_loads_and_computes_without_the_server()
    {
        await using var server = await Server.StartAsync(published.Program);
        var formula = await Published.StoreExampleAsync(server);
        await using var bench = await Bench.OpenAsync(published.Browser, server.Address);
        await bench.EnterAsync(formula, "pork-shoulder", "4 x 3.6 kg", trimLoss: "8");
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("291 g");
        await bench.WaitUntilKeptAsync();
        await bench.WaitUntilKeptAsync("lockside-old-card");

        await server.StopAsync();
        await Assert.ThrowsAsync<HttpRequestException>(() => server.Http.GetAsync(server.Address));
        await bench.ReloadAsync();

        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("291 g");
        await Expect(bench.Page.Locator("#to-mix-0")).ToHaveTextAsync("306 g");
        await Expect(bench.Page.Locator("#formula-0-state")).ToHaveTextAsync(AsOf());
        await bench.Page.Locator("#formula-0").SelectOptionAsync("lockside-old-card");
        await Expect(bench.Sheet).ToContainTextAsync("Lockside old card");
        await bench.Page.GetByLabel("Weights, one a line").FillAsync("2 x 5 kg");
        await Expect(bench.Sheet).ToContainTextAsync("2 pieces");
    }

    [RequiresChromiumFact]
    public async Task A_formula_changed_on_the_server_is_taken_at_the_next_look()
    {
        await using var server = await Server.StartAsync(published.Program);
        var formula = await Published.StoreExampleAsync(server);
        await using var bench = await Bench.OpenAsync(published.Browser, server.Address);
        await bench.EnterAsync(formula, "pork-shoulder", "10 kg");
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("220 g");

        await ChangeDoseAsync(server, formula);
        await bench.ReloadAsync();

        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("300 g");
    }

    [RequiresChromiumFact]
    public async Task A_first_visit_without_formulas_says_so()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.WaitUntilKeptAsync();
        await bench.Page.EvaluateAsync("() => new Promise(done => { const gone = indexedDB.deleteDatabase('rublab'); gone.onsuccess = done; gone.onblocked = done; })");
        await bench.Page.Context.RouteAsync("**/v1/**", route => route.AbortAsync());
        await bench.Page.CloseAsync();
        var page = await bench.Page.Context.NewPageAsync();
        await page.GotoAsync(bench.Address.ToString());

        await Expect(page.Locator("#formula-0-state")).ToHaveTextAsync("The server does not answer, and no formula is kept on this device yet.");
    }

    private static async Task ChangeDoseAsync(Server server, string formula)
    {
        var path = new Uri($"v1/formulas/{formula}", UriKind.Relative);
        using var read = await server.Http.GetAsync(path);
        using var change = new HttpRequestMessage(HttpMethod.Put, path);
        change.Headers.IfMatch.Add(read.Headers.ETag!);
        change.Content = new StringContent(
            """
            { "name": "Two and three", "kind": "rub", "dose": { "value": 30, "unit": "g/kg" },
              "lines": [ { "ingredient": "salt", "form": "table", "amount": { "value": 1, "unit": "parts-by-mass" } } ] }
            """,
            System.Text.Encoding.UTF8, "application/json");
        using var written = await server.Http.SendAsync(change);
        written.EnsureSuccessStatusCode();
    }

    [GeneratedRegex("^The server does not answer. These formulas are as of .+\\.$")]
    private static partial Regex AsOf();
}
