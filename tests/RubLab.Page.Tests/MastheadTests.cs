using Microsoft.Playwright;
using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

/// <summary>The row of screens: one line on a phone, with the screens that are off the way of seasoning behind one word.</summary>
[Collection(PublishedTests.Name)]
public sealed class MastheadTests(Published published)
{
    /// <summary>One line of 44 pixels to touch, the rule below it and the gaps; four lines took 190.</summary>
    private const double MostPixels = 60;

    private static readonly string[] Path = ["bench", "paper"];

    private static readonly Dictionary<string, string> Rest = new()
    {
        ["formulas"] = "Formulas", ["convert"] = "Convert", ["brine"] = "Brine", ["cure"] = "Cure",
        ["time"] = "Time", ["sauce"] = "Sauce", ["people"] = "People", ["own"] = "Own numbers",
    };

    [RequiresChromiumTheory]
    [InlineData(320)]
    [InlineData(360)]
    [InlineData(412)]
    public async Task On_a_phone_the_row_is_one_line_whichever_screen_is_open(int width)
    {
        await using var bench = await OpenAsync(width);
        foreach (var screen in Path.Concat(Rest.Keys))
        {
            await bench.GoAsync(screen);
            var height = await bench.Page.Locator(".masthead").EvaluateAsync<double>("e => e.getBoundingClientRect().height");
            Assert.True(height is > 44 and <= MostPixels, $"{screen}: {height} pixels.");
            foreach (var onTheWay in Path)
            {
                await Expect(bench.Page.Locator($"#to-{onTheWay}")).ToBeInViewportAsync(new LocatorAssertionsToBeInViewportOptions { Ratio = 1 });
            }

            Assert.Equal(width, await bench.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
        }
    }

    [RequiresChromiumFact]
    public async Task Every_screen_off_the_way_is_reached_with_the_keyboard_alone_and_announced()
    {
        await using var bench = await OpenAsync(360);
        await Expect(More(bench, "More", isOpen: false)).ToBeVisibleAsync();
        await Expect(bench.Page.Locator("#more-screens")).Not.ToHaveAttributeAsync("aria-current", "true");
        foreach (var (screen, name) in Rest)
        {
            await Expect(bench.Page.Locator($"#to-{screen}")).ToBeHiddenAsync();
            await bench.Page.Locator("#skip").FocusAsync();
            await bench.TabToAsync("#more-screens");
            await bench.Page.Keyboard.PressAsync("Enter");
            await bench.TabToAsync($"#to-{screen}");
            await bench.Page.Keyboard.PressAsync("Enter");

            await Expect(bench.Page.Locator($"#screen-{screen}")).ToBeFocusedAsync();
            await Expect(More(bench, $"More: {name}", isOpen: false)).ToHaveAttributeAsync("aria-current", "true");
            await Expect(bench.Page.Locator("#screens-more [aria-current='page']")).ToHaveTextAsync(name);
        }

        await bench.Page.Locator("#to-bench").PressAsync("Enter");
        await Expect(More(bench, "More", isOpen: false)).Not.ToHaveAttributeAsync("aria-current", "true");
        await Expect(bench.Page.Locator("#screens [aria-current='page']")).ToHaveTextAsync("Bench");
    }

    [RequiresChromiumFact]
    public async Task The_rest_closes_at_escape_and_when_the_open_screen_is_chosen_again()
    {
        await using var bench = await OpenAsync(360);
        await bench.GoAsync("cure");
        await bench.Page.Locator("#more-screens").PressAsync("Space");
        await Expect(More(bench, "More: Cure", isOpen: true)).ToBeFocusedAsync();
        await bench.TabToAsync("#to-time");
        await bench.Page.Keyboard.PressAsync("Escape");
        await Expect(More(bench, "More: Cure", isOpen: false)).ToBeFocusedAsync();
        await Expect(bench.Page.Locator("#to-time")).ToBeHiddenAsync();

        await bench.Page.Locator("#more-screens").ClickAsync();
        await bench.Page.Locator("#to-cure").ClickAsync();
        await Expect(More(bench, "More: Cure", isOpen: false)).ToBeVisibleAsync();
        await Expect(bench.Page.Locator("#screen-cure")).ToBeFocusedAsync();
    }

    [RequiresChromiumTheory]
    [InlineData(360, 17)]
    [InlineData(640, 17)]
    [InlineData(360, 34)]
    public async Task What_More_opens_is_large_enough_to_touch_and_stays_within_the_screen(int width, int letterPixels)
    {
        await using var bench = await OpenAsync(width);
        await bench.Page.EvaluateAsync("pixels => { document.documentElement.style.fontSize = `${pixels}px`; }", letterPixels);
        await bench.Page.Locator("#more-screens").ClickAsync();
        foreach (var target in await bench.Page.Locator("#screens a, #more-screens").AllAsync())
        {
            var box = (await target.BoundingBoxAsync())!;
            Assert.True(box.Height >= 44 && box.Width >= 44 && box.X >= 0 && box.X + box.Width <= width, $"{await target.TextContentAsync()}: {box.Width} by {box.Height} at {box.X}.");
        }

        Assert.Equal(width, await bench.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
    }

    [RequiresChromiumFact]
    public async Task On_a_wide_screen_all_ten_stand_in_one_line_and_nothing_opens()
    {
        await using var bench = await OpenAsync(1280);
        await Expect(bench.Page.Locator("#more-screens")).ToBeHiddenAsync();
        var links = await bench.Page.Locator("#screens a:visible").AllAsync();
        Assert.Equal(Path.Length + Rest.Count, links.Count);
        var tops = await Task.WhenAll(links.Select(async link => (await link.BoundingBoxAsync())!.Y));
        Assert.Single(tops.Distinct());
    }

    private Task<Bench> OpenAsync(int width) => Bench.OpenAsync(published.Browser, published.Server.Address, width);

    private static ILocator More(Bench bench, string name, bool isOpen) =>
        bench.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = name, Exact = true, Expanded = isOpen });
}
