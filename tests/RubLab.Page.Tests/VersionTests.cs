using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class VersionTests(Published published)
{
    private const string Style = "css/page.css";
    private const string Addition = "\n:root { --release: 2; }\n";

    [RequiresChromiumFact]
    public async Task A_new_version_waits_whole_until_the_cook_takes_it_and_nothing_written_is_lost()
    {
        using var deployment = new Deployment(published.Server);
        await using var bench = await Bench.OpenAsync(published.Browser, deployment.Address);
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", "4 x 3.6 kg", trimLoss: "8");
        await bench.WaitUntilKeptAsync();
        await deployment.ReleaseAsync("release2", Style, Addition);
        await bench.ReloadAsync();

        await Expect(bench.Page.Locator("#notices")).ToContainTextAsync("A new version of this page is ready.");
        Assert.Equal("", await ReleaseAsync(bench));
        await bench.ReloadAsync();
        Assert.Equal("", await ReleaseAsync(bench));

        await bench.Page.GetByText("Use it now").ClickAsync();
        await bench.Page.WaitForFunctionAsync("() => getComputedStyle(document.documentElement).getPropertyValue('--release') === '2'");
        await bench.WaitUntilReadyAsync();
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("291 g");
        await Expect(bench.Page.Locator("#notices")).ToBeEmptyAsync();
        Assert.Equal(["rublab-page-release2"], await bench.Page.EvaluateAsync<string[]>("() => caches.keys()"));
    }

    [RequiresChromiumFact]
    public async Task A_version_with_a_file_of_another_is_not_taken()
    {
        using var deployment = new Deployment(published.Server);
        await using var bench = await Bench.OpenAsync(published.Browser, deployment.Address);
        await bench.WaitUntilKeptAsync();
        await deployment.ReleaseAsync("release2", Style, Addition, isBroken: true);

        var states = await bench.Page.EvaluateAsync<string>(
            """
            async () => {
              const registration = await navigator.serviceWorker.ready;
              await registration.update();
              const worker = registration.installing;
              await new Promise(done => worker.onstatechange = () => worker.state !== 'installing' && done());
              return `${worker.state} ${registration.waiting} ${registration.active.state}`;
            }
            """);
        await bench.ReloadAsync();

        Assert.Equal("redundant null activated", states);
        Assert.Equal("", await ReleaseAsync(bench));
        await Expect(bench.Page.Locator("#notices")).ToBeEmptyAsync();
    }

    private static Task<string> ReleaseAsync(Bench bench) =>
        bench.Page.EvaluateAsync<string>("() => getComputedStyle(document.documentElement).getPropertyValue('--release')");
}
