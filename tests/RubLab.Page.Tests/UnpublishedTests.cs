using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class UnpublishedTests(Published published)
{
    [RequiresChromiumFact]
    public async Task A_server_that_was_only_built_serves_the_page_too()
    {
        await Dotnet.RunAsync("build", "src/RubLab.Api", "-c", "Debug");
        await using var server = await Server.StartAsync(Path.Combine(Repository.Root, "src/RubLab.Api/bin/Debug/net10.0/RubLab.Api.dll"));
        Assert.True(await Assets.CheckAsync(server) > 40);

        await using var bench = await Bench.OpenAsync(published.Browser, server.Address);
        await bench.EnterAsync("lockside-evening-salt-and-pepper", "beef-brisket", "5.2 kg\n6.1 kg");
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("158 g");
    }
}
