using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class AccessibilityTests(Published published)
{
    public static TheoryData<int, ColorScheme> Views => new()
    {
        { 360, ColorScheme.Light }, { 360, ColorScheme.Dark }, { 1280, ColorScheme.Light }, { 1280, ColorScheme.Dark },
    };

    [RequiresChromiumTheory]
    [MemberData(nameof(Views))]
    public async Task Axe_finds_nothing_in_any_state_of_the_page(int width, ColorScheme scheme)
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address, width, scheme);
        Assert.Empty(await ViolationsAsync(bench));

        await bench.EnterAsync("lockside-old-card", "pork-shoulder", "4 x 3.6 kg\n12 lb 6 oz", trimLoss: "");
        await bench.Page.Locator("#more-summary").ClickAsync();
        await Expect(bench.Page.Locator("#on-meat")).ToBeVisibleAsync();
        Assert.Empty(await ViolationsAsync(bench));

        await bench.EnterAsync("lockside-old-card", "pork-shoulder", "4 x 3.6 kg\nno weight", trimLoss: "much");
        await Expect(bench.Page.Locator("#trimLoss-fault")).ToBeVisibleAsync();
        Assert.Empty(await ViolationsAsync(bench));
    }

    [RequiresChromiumTheory]
    [InlineData(320)]
    [InlineData(360)]
    [InlineData(768)]
    public async Task Nothing_is_wider_than_the_screen(int width)
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address, width);
        await bench.EnterAsync("lockside-old-card", "beef-brisket", "4 x 3.6 kg\n100 x 112.375 lb\n" + new string('w', 200), trimLoss: "8");
        await Expect(bench.Page.Locator("#on-meat")).ToBeVisibleAsync();

        Assert.Equal(width, await bench.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
    }

    [RequiresChromiumFact]
    public async Task Everything_to_touch_is_at_least_44_pixels_high()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address, 360);
        await bench.EnterAsync("lockside-old-card", "pork-shoulder", "4 x 3.6 kg", trimLoss: "8");
        await bench.Page.Locator("#more-summary").ClickAsync();
        await Expect(bench.Page.Locator("#at-once")).ToBeVisibleAsync();
        foreach (var target in await bench.Page.Locator("input:visible:not([type=radio]), select:visible, textarea:visible, summary, label.choice, #at-once").AllAsync())
        {
            var box = await target.BoundingBoxAsync();
            Assert.True(box!.Height >= 44, $"{await target.EvaluateAsync<string>("e => e.id || e.textContent")} is {box.Height} high.");
        }
    }

    private static async Task<List<string>> ViolationsAsync(Bench bench)
    {
        var found = await bench.Page.RunAxe();
        Assert.True(found.Passes.Length > 10, "Axe looked at hardly anything.");
        return found.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join("; ", v.Nodes.Select(n => n.Html))}").ToList();
    }
}
