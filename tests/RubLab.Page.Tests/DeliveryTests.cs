using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class DeliveryTests(Published published)
{
    [RequiresChromiumFact]
    public async Task No_request_leaves_the_host()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", "4 x 3.6 kg", trimLoss: "8");
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("291 g");
        await bench.WaitUntilKeptAsync();

        Assert.True(bench.Requests.Count > 30);
        Assert.All(bench.Requests, address => Assert.Equal(bench.Address.Authority, address.Authority));
    }

    [RequiresChromiumFact]
    public async Task Every_file_the_page_keeps_is_served_with_its_own_bytes()
    {
        Assert.True(await Assets.CheckAsync(published.Server) > 40);
    }

    [RequiresChromiumFact]
    public async Task The_page_knows_of_every_ingredient_and_cut_what_the_server_knows()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        var asked = await bench.Page.EvaluateAsync<string[][]>(
            """
            async () => {
              const { allIngredients, ingredient, cuts, cut } = await import('/js/engine.js');
              const pairs = [...allIngredients().map(({ id }) => [`v1/ingredients/${id}`, ingredient(id)]), ...cuts().map(({ id }) => [`v1/cuts/${id}`, cut(id)])];
              return Promise.all(pairs.map(async ([path, known]) => [path, JSON.stringify(known), JSON.stringify(await (await fetch(path)).json())]));
            }
            """);

        Assert.True(asked.Length > 190, $"Only {asked.Length} were asked for.");
        Assert.All(asked, pair => Assert.Equal(pair[2], pair[1]));
    }

    [RequiresChromiumFact]
    public async Task The_policy_lets_no_inline_script_or_style_and_no_foreign_host_in()
    {
        using var answer = await published.Server.Http.GetAsync(published.Server.Address);
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));

        Assert.Contains("default-src 'self'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe-inline", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("'unsafe-eval'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("http", policy, StringComparison.Ordinal);
    }

    [RequiresChromiumFact]
    public void What_a_first_visit_downloads_stays_small()
    {
        var files = Directory.GetFiles(Path.Combine(published.Folder, "wwwroot"), "*.br", SearchOption.AllDirectories);

        // The runtime and its class library alone are 1.4 MB; cures, salting times, portions and own yields brought 0.13. Half a
        // megabyte came in once without any test failing, through the tables of UnitsNet and the JSON of what the page never
        // reads: hence so little room above what it is.
        Assert.InRange(files.Sum(f => new FileInfo(f).Length), 1_000_000, 2_300_000);
    }
}
