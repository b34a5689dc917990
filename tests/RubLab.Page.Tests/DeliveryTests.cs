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
        await Expect(bench.Page.Locator("#on-meat")).ToHaveTextAsync("291 g");
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
    public async Task The_page_reads_the_same_reference_data_as_the_server()
    {
        foreach (var path in Directory.GetFiles(Path.Combine(Repository.Root, "seed-data")))
        {
            var served = await published.Server.Http.GetByteArrayAsync(new Uri($"seed-data/{Path.GetFileName(path)}", UriKind.Relative));
            Assert.Equal(await File.ReadAllBytesAsync(path), served);
        }
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

        Assert.InRange(files.Sum(f => new FileInfo(f).Length), 1_000_000, 2_300_000);
    }
}
