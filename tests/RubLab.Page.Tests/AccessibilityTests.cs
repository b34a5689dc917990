using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class AccessibilityTests(Published published)
{
    // WCAG 2.2, 2.5.8: 24 by 24 CSS pixels; what a hand uses at the bench is larger.
    private const string Targets = "button:visible, a:visible, input:visible:not([type=radio]):not([type=checkbox]), select:visible, textarea:visible, summary:visible, label.choice:visible";

    private static readonly string[] Screens = ["bench", "formulas", "convert", "own", "paper", "formula/lockside-old-card", "brine", "time", "cure", "sauce", "people", "pairing", "weigh-out/new"];

    public static TheoryData<int, ColorScheme, ForcedColors, Contrast> Themes => new()
    {
        { 360, ColorScheme.Light, ForcedColors.None, Contrast.NoPreference },
        { 1280, ColorScheme.Dark, ForcedColors.None, Contrast.NoPreference },
        { 360, ColorScheme.Dark, ForcedColors.None, Contrast.More },
        { 768, ColorScheme.Light, ForcedColors.None, Contrast.More },
        { 768, ColorScheme.Light, ForcedColors.Active, Contrast.NoPreference },
    };

    [RequiresChromiumTheory]
    [MemberData(nameof(Themes))]
    public async Task Axe_finds_nothing_on_any_screen_in_any_theme(int width, ColorScheme scheme, ForcedColors forced, Contrast contrast)
    {
        await using var bench = await OpenAsync(width, scheme);
        await bench.Page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = scheme, ForcedColors = forced, Contrast = contrast });
        foreach (var screen in Screens)
        {
            await bench.GoAsync(screen);
            await AssertNoneAsync(bench, screen);
        }

        await FinishAsync(bench);
        await AssertNoneAsync(bench, "end of the weigh-out");
    }

    [RequiresChromiumTheory]
    [InlineData(360, ColorScheme.Light)]
    [InlineData(1280, ColorScheme.Dark)]
    public async Task Axe_finds_nothing_in_any_state_of_the_bench(int width, ColorScheme scheme)
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address, width, scheme);
        await AssertNoneAsync(bench, "blank");
        await bench.Page.Locator("#more-screens").EvaluateAsync("e => e.click()");
        await AssertNoneAsync(bench, "all screens in sight");

        await bench.EnterAsync("lockside-old-card", "pork-shoulder", "4 x 3.6 kg\n12 lb 6 oz", trimLoss: "");
        await bench.Page.Locator("#more-summary").ClickAsync();
        await Expect(bench.Page.Locator("#on-meat-0")).ToBeVisibleAsync();
        await AssertNoneAsync(bench, "planned");

        await bench.EnterAsync("lockside-old-card", "pork-shoulder", "4 x 3.6 kg\nno weight\n12-14 lb", trimLoss: "much");
        await Expect(bench.Page.Locator("#trimLoss-0-fault")).ToBeVisibleAsync();
        await AssertNoneAsync(bench, "faults");

        await Filled.CureAsync(bench, "dry", "pork-loin", "4 kg", ("cure-6-25", "6.25", "20 g"));
        await Expect(bench.Page.Locator("#cure-refused")).ToBeVisibleAsync();
        await AssertNoneAsync(bench, "cure above a level");
        Assert.Equal(width, await bench.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
    }

    [RequiresChromiumTheory]
    [InlineData(360, ColorScheme.Light)]
    [InlineData(1280, ColorScheme.Dark)]
    public async Task Axe_finds_nothing_where_a_code_is_asked_for_or_refused(int width, ColorScheme scheme)
    {
        await using var server = await Server.StartAsync(published.Program, "a-key-of-more-than-twenty-letters");
        await using var bench = await Bench.OpenAsync(published.Browser, server.Address, width, scheme);
        await bench.GoAsync("pairing");
        await bench.Page.Locator("#pairing-code").FillAsync("3467-9CDF");
        await AssertNoneAsync(bench, "code");
        await bench.ClickAsync("Pair this device");
        await Expect(bench.Page.Locator("#pairing-code-fault")).ToContainTextAsync("This code opens nothing");
        await AssertNoneAsync(bench, "code refused");
        Assert.Equal(width, await bench.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
    }

    [RequiresChromiumTheory]
    [InlineData(360, ColorScheme.Light)]
    [InlineData(1280, ColorScheme.Dark)]
    public async Task Axe_finds_nothing_where_own_numbers_are_recorded_or_stand_in_two_versions(int width, ColorScheme scheme)
    {
        await using var server = await Server.StartAsync(published.Program);
        await using var bench = await Bench.OpenAsync(published.Browser, server.Address, width, scheme);
        await bench.WaitUntilKeptAsync();
        await bench.Page.Context.SetOfflineAsync(true);
        await Filled.OwnAsync(bench);
        await bench.Page.Locator("#yield-save").ClickAsync();
        await bench.Page.Locator("#yield-of-beef-brisket summary").ClickAsync();
        await AssertNoneAsync(bench, "recorded");
        using var other = new StringContent(
            """{"records":[{"date":"2026-03-07","before":{"value":5,"unit":"kg"},"after":{"value":3,"unit":"kg"}}]}""", System.Text.Encoding.UTF8, "application/json");
        using var put = await server.Http.PutAsync(new Uri("v1/yields/beef-brisket", UriKind.Relative), other);
        put.EnsureSuccessStatusCode();
        await bench.Page.Context.SetOfflineAsync(false);
        await bench.Page.EvaluateAsync("() => dispatchEvent(new Event('online'))");
        await Expect(bench.Page.Locator("#yield-list .conflict")).ToBeVisibleAsync();
        await AssertNoneAsync(bench, "two versions");
        Assert.Equal(width, await bench.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
    }

    // 180 pixels is what 200 % makes of a phone's 360; 320 is also what 400 % makes of 1280.
    [RequiresChromiumTheory]
    [InlineData(180)]
    [InlineData(320)]
    [InlineData(360)]
    [InlineData(768)]
    [InlineData(1280)]
    public async Task Nothing_is_wider_than_the_screen(int width)
    {
        await using var bench = await OpenAsync(width, ColorScheme.Light);
        await bench.EnterAsync("lockside-old-card", "beef-brisket", "4 x 3.6 kg\n100 x 112.375 lb\n" + new string('w', 200), trimLoss: "8");
        await Expect(bench.Page.Locator("#on-meat-0")).ToBeVisibleAsync();
        await bench.GoAsync("brine");
        await bench.Page.Locator("#brine-retained").FillAsync("75 - 95");
        foreach (var screen in Screens)
        {
            await bench.GoAsync(screen);
            Assert.Equal($"{screen} {width}", $"{screen} {await bench.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth")}");
        }
    }

    [RequiresChromiumFact]
    public async Task Everything_to_touch_is_at_least_44_pixels_high()
    {
        await using var bench = await OpenAsync(360, ColorScheme.Light);
        await bench.ClickAsync("Another cut in the pile");
        await bench.Page.Locator("#more-summary").ClickAsync();
        var seen = 0;
        foreach (var screen in Screens)
        {
            await bench.GoAsync(screen);
            foreach (var target in await bench.Page.Locator(Targets).AllAsync())
            {
                var box = await target.BoundingBoxAsync();
                Assert.True(box!.Height >= 43.5 && box.Width >= 24, $"{screen}: {await target.EvaluateAsync<string>("e => e.id || e.textContent")} is {box.Width} by {box.Height}.");
                seen++;
            }
        }

        Assert.True(seen > 80, $"Only {seen} targets.");
    }

    [RequiresChromiumFact]
    public async Task Focus_is_seen_and_follows_to_another_screen()
    {
        await using var bench = await OpenAsync(1280, ColorScheme.Light);
        await bench.TabToAsync("#to-formulas");
        Assert.Equal("solid 3px", await bench.Page.Locator("#to-formulas").EvaluateAsync<string>("e => `${getComputedStyle(e).outlineStyle} ${getComputedStyle(e).outlineWidth}`"));
        await bench.Page.Keyboard.PressAsync("Enter");
        await Expect(bench.Page.Locator("#screen-formulas")).ToBeFocusedAsync();
        await Expect(bench.Page.Locator("#to-formulas")).ToHaveAttributeAsync("aria-current", "page");
        await Expect(bench.Page).ToHaveTitleAsync("Formulas – RubLab");
    }

    private async Task<Bench> OpenAsync(int width, ColorScheme scheme)
    {
        var bench = await Bench.OpenAsync(published.Browser, published.Server.Address, width, scheme);
        await bench.EnterAsync("lockside-dry-brine", "pork-shoulder", "2 x 3.6 kg");
        await bench.Page.Locator("#add-treatment").ClickAsync();
        await bench.Page.Locator("#formula-1").SelectOptionAsync("lockside-old-card");
        await Expect(bench.Page.Locator("#on-meat-1")).ToBeVisibleAsync();
        await Filled.AllAsync(bench);
        return bench;
    }

    private static async Task FinishAsync(Bench bench)
    {
        while (await bench.Page.Locator("#step-done").CountAsync() > 0)
        {
            var where = await bench.Page.Locator(".where").InnerTextAsync();
            await bench.Page.Locator("#step-done").ClickAsync();
            await bench.Page.WaitForFunctionAsync("where => document.querySelector('.where')?.innerText !== where", where);
        }
    }

    private static async Task AssertNoneAsync(Bench bench, string state)
    {
        var found = await bench.Page.RunAxe();
        Assert.True(found.Passes.Length > 10, "Axe looked at hardly anything.");
        var violations = string.Join("\n", found.Violations.Select(v => $"{state}: {v.Id}: {v.Help}: {string.Join("; ", v.Nodes.Select(n => n.Html))}"));
        Assert.True(violations.Length == 0, violations);
    }
}
