using Microsoft.Playwright;
using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

/// <summary>Pictures of every screen; with RUBLAB_WRITE_DOCS=1 they replace those in docs/page.</summary>
[Collection(PublishedTests.Name)]
public sealed class PictureTests(Published published)
{
    /// <summary>What a picture may weigh in the repository. How much one taken elsewhere weighs is the fonts' matter.</summary>
    private const int MostBytes = 150_000;

    /// <summary>An empty screen packs to less.</summary>
    private const int LeastBytes = 5_000;

    public static TheoryData<string, int, int, ColorScheme> Pictures => new()
    {
        { "bench", 360, 720, ColorScheme.Light }, { "bench", 768, 1024, ColorScheme.Dark }, { "bench", 1280, 900, ColorScheme.Light },
        { "weigh-out/new", 360, 720, ColorScheme.Dark }, { "weigh-out/new", 768, 1024, ColorScheme.Light },
        { "formula/lockside-pork-rub", 360, 720, ColorScheme.Light }, { "formula/lockside-pork-rub", 1280, 900, ColorScheme.Light },
        { "formulas", 768, 1024, ColorScheme.Light }, { "convert", 360, 720, ColorScheme.Light },
        { "brine", 360, 720, ColorScheme.Light }, { "brine", 1280, 840, ColorScheme.Dark },
        { "time", 360, 720, ColorScheme.Light }, { "time", 1280, 720, ColorScheme.Dark },
        { "cure", 1280, 720, ColorScheme.Dark },
        { "sauce", 360, 720, ColorScheme.Dark }, { "sauce", 1280, 840, ColorScheme.Light },
        { "people", 360, 720, ColorScheme.Light }, { "people", 1280, 900, ColorScheme.Dark },
        { "pairing", 360, 720, ColorScheme.Light },
        { "own", 1280, 900, ColorScheme.Dark }, { "paper", 768, 1024, ColorScheme.Light },
    };

    [RequiresChromiumTheory]
    [MemberData(nameof(Pictures))]
    public async Task A_screen_is_seen_as_it_is(string screen, int width, int height, ColorScheme scheme)
    {
        await using var bench = await OpenAsync(width, height, scheme);
        await bench.GoAsync(screen);
        await TakeAsync(bench.Page, $"{screen.Split('/')[0]}-{width}-{scheme.ToString().ToLowerInvariant()}");
    }

    [RequiresChromiumFact]
    public async Task The_salt_drawing_is_seen_as_it_is()
    {
        await using var bench = await OpenAsync(360, 1400, ColorScheme.Light);
        await bench.Page.Locator("#sheet-body .salt").EvaluateAsync("e => e.scrollIntoView({ behavior: 'instant' })");
        await TakeAsync(bench.Page, "salt-360-light");
    }

    [RequiresChromiumFact]
    public async Task The_curves_of_salting_are_seen_as_they_are()
    {
        await using var bench = await OpenAsync(360, 1400, ColorScheme.Dark);
        await bench.GoAsync("time");
        await bench.Page.Locator("#time-figure-even95").EvaluateAsync("e => e.scrollIntoView({ behavior: 'instant' })");
        await TakeAsync(bench.Page, "curves-360-dark");
    }

    [RequiresChromiumTheory]
    [InlineData("own", "#yield-cooks", "yields")]
    [InlineData("people", "#people-outcome", "purchase")]
    [InlineData("people", "#shopping-items", "shopping")]
    [InlineData("people", "#feeds-outcome", "feeds")]
    public async Task What_lies_further_down_is_seen_as_it_is(string screen, string at, string name)
    {
        await using var bench = await OpenAsync(360, 1000, ColorScheme.Light);
        await bench.GoAsync(screen);
        await bench.Page.Locator(at).EvaluateAsync("e => e.scrollIntoView({ behavior: 'instant' })");
        await TakeAsync(bench.Page, $"{name}-360-light");
    }

    [RequiresChromiumFact]
    public async Task The_loads_of_a_cure_are_seen_as_they_are()
    {
        await using var bench = await OpenAsync(360, 1400, ColorScheme.Light);
        await bench.GoAsync("cure");
        await bench.Page.Locator("#cure-outcome").EvaluateAsync("e => e.scrollIntoView({ behavior: 'instant' })");
        await TakeAsync(bench.Page, "cure-360-light");
    }

    private async Task<Bench> OpenAsync(int width, int height, ColorScheme scheme)
    {
        var bench = await Bench.OpenAsync(published.Browser, published.Server.Address, width, scheme);
        await bench.Page.SetViewportSizeAsync(width, height);
        await bench.EnterAsync("lockside-dry-brine", "pork-shoulder", "4 x 3.6 kg\n3.2 kg");
        await bench.Page.Locator("#add-treatment").ClickAsync();
        await bench.Page.Locator("#formula-1").SelectOptionAsync("lockside-pork-rub");
        await Expect(bench.Page.Locator("#on-meat-1")).ToBeVisibleAsync();
        await Filled.AllAsync(bench);
        await bench.Page.EvaluateAsync("() => { document.activeElement.blur(); scrollTo({ top: 0, behavior: 'instant' }); }");
        return bench;
    }

    private static async Task TakeAsync(IPage page, string name)
    {
        var picture = await page.ScreenshotAsync(new PageScreenshotOptions { Animations = ScreenshotAnimations.Disabled, Caret = ScreenshotCaret.Hide });
        Assert.True(picture.Length > LeastBytes, $"{name} is a picture of nothing: {picture.Length} bytes.");
        var path = Path.Combine(Repository.Root, "docs", "page", $"{name}.png");
        if (Environment.GetEnvironmentVariable("RUBLAB_WRITE_DOCS") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            await File.WriteAllBytesAsync(path, picture);
        }

        Assert.True(File.Exists(path), $"docs/page has no {name}.png: run with RUBLAB_WRITE_DOCS=1.");
        Assert.InRange(new FileInfo(path).Length, LeastBytes, MostBytes);
    }
}
