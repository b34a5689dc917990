using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed partial class PaperTests(Published published)
{
    [RequiresChromiumTheory]
    [InlineData("en-US", 612, 792)]
    [InlineData("de-DE", 595, 842)]
    public async Task Each_treatment_prints_on_one_page_of_the_paper_in_use(string locale, int width, int height)
    {
        await using var bench = await OpenAsync("12 x 3.6 kg", locale);
        var pdf = await PrintAsync(bench, "sheets");

        Assert.Equal(2, Page().Count(pdf));
        foreach (Match box in Box().Matches(pdf))
        {
            Assert.Equal(width, double.Parse(box.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture), 1.0);
            Assert.Equal(height, double.Parse(box.Groups[2].Value, System.Globalization.CultureInfo.InvariantCulture), 1.0);
        }
    }

    [RequiresChromiumFact]
    public async Task A_piece_says_its_cut_where_there_are_several_and_its_green_weight_where_it_was_weighed_as_bought()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync("lockside-lock-water-injection", "chicken-whole", "1.6 kg");
        await bench.ClickAsync("Another cut in the pile");
        await bench.Page.Locator("#cut-1").SelectOptionAsync("beef-brisket");
        await bench.Page.Locator("#pile-1").FillAsync("5 kg");
        await bench.Page.Locator("[name=weightIs-1][value=purchase]").CheckAsync();
        await bench.Page.Locator("#trimLoss-1").FillAsync("10");
        await Expect(bench.Page.Locator(".pieces li").Nth(1)).ToContainTextAsync("Beef brisket, 5 kg");
        await bench.GoAsync("paper");

        // 8 % of 4.5 kg are 360 g.
        var small = bench.Page.Locator(".on-pieces small");
        await Expect(small.First).ToHaveTextAsync("Chicken, whole, 1.6 kg until it weighs 1.728\u00a0kg");
        await Expect(small.Nth(1)).ToHaveTextAsync("Beef brisket, 5 kg, 4.500\u00a0kg green until it weighs 4.860\u00a0kg");
    }

    [RequiresChromiumFact]
    public async Task A_weight_is_not_broken_on_a_phone()
    {
        await using var bench = await OpenAsync("40 x 3.6 kg", "en-US");
        await bench.Page.SetViewportSizeAsync(360, 740);
        var figures = bench.Page.Locator(".mix .figure");

        await Expect(figures.First).ToHaveTextAsync(ThousandGrams());
        var rows = await figures.EvaluateAllAsync<int[]>(
            """
            all => all.map(e => {
              const range = document.createRange();
              range.selectNodeContents(e);
              return new Set([...range.getClientRects()].map(part => Math.round(part.top))).size;
            })
            """);
        Assert.All(rows, count => Assert.Equal(1, count));
        Assert.Equal(360, await bench.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
    }

    [RequiresChromiumFact]
    public async Task Forty_pieces_still_fit_one_page()
    {
        await using var bench = await OpenAsync("40 x 3.6 kg", "en-US");

        Assert.Equal(2, Page().Count(await PrintAsync(bench, "sheets")));
    }

    [RequiresChromiumFact]
    public async Task Paper_is_black_on_white_even_from_a_dark_screen()
    {
        await using var bench = await OpenAsync("4 x 3.6 kg", "en-US", ColorScheme.Dark);
        await bench.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        var colours = await bench.Page.EvaluateAsync<string[]>(
            """
            () => [...new Set([...document.querySelectorAll('.page, .page *')].flatMap(e => {
              const { color, backgroundColor } = getComputedStyle(e);
              return [color, backgroundColor];
            }))].sort()
            """);

        Assert.Equal(["rgb(0, 0, 0)", "rgb(255, 255, 255)", "rgba(0, 0, 0, 0)"], colours);
        Assert.True((await bench.Page.Locator(".page").First.ScreenshotAsync()).Length > 5000);
        await Expect(bench.Page.Locator(".masthead")).ToBeHiddenAsync();
        await Expect(bench.Page.Locator(".page").First).ToContainTextAsync("Lockside towpath dry brine");
    }

    [RequiresChromiumFact]
    public async Task A_jar_label_lists_by_weight_and_never_says_free_of()
    {
        await using var bench = await OpenAsync("4 x 3.6 kg", "en-US");
        var label = bench.Page.Locator(".label").Nth(1);

        // Of the card's lines in grams: brown sugar, salt, paprika, pepper, the salted blend, cumin.
        await Expect(label).ToContainTextAsync("Ingredients: Brown sugar, Salt, Paprika, Black pepper, Chili powder (salted blend), Cumin seed.");
        await Expect(label).ToContainTextAsync("Read your label: Chili powder (salted blend).");
        await Expect(label).ToContainTextAsync("A draft for the seller’s own authority.");
        await Expect(label).Not.ToContainTextAsync("free");
        Assert.Equal(1, Page().Count(await PrintAsync(bench, "labels")));
    }

    [RequiresChromiumFact]
    public async Task What_the_ingredients_carry_stands_on_the_bench_and_on_the_sheet()
    {
        const string carried = "Allergens: mustard (Yellow mustard). Read your label: Yellow mustard; Worcestershire sauce; Hot pepper sauce.";
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync("lockside-mustard-slather", "pork-shoulder", "4 x 3.6 kg");
        await Expect(bench.Sheet.Locator(".weighing .flag")).ToHaveTextAsync(carried);
        await bench.GoAsync("paper");
        await Expect(bench.Page.Locator(".page")).ToContainTextAsync(carried);
        await Expect(bench.Page.Locator(".label")).ToContainTextAsync("Allergens: mustard.");
    }

    private async Task<Bench> OpenAsync(string pile, string locale, ColorScheme scheme = ColorScheme.Light)
    {
        var bench = await Bench.OpenAsync(published.Browser, published.Server.Address, 1280, scheme, locale);
        await bench.EnterAsync("lockside-dry-brine", "pork-shoulder", pile);
        await bench.Page.Locator("#add-treatment").ClickAsync();
        await bench.Page.Locator("#formula-1").SelectOptionAsync("lockside-old-card");
        await Expect(bench.Page.Locator("#on-meat-1")).ToBeVisibleAsync();
        await bench.GoAsync("paper");
        await Expect(bench.Page.Locator(".page")).ToHaveCountAsync(2);
        return bench;
    }

    private static async Task<string> PrintAsync(Bench bench, string what)
    {
        await bench.Page.EvaluateAsync("what => { document.body.dataset.print = what; }", what);
        return Encoding.Latin1.GetString(await bench.Page.PdfAsync(new PagePdfOptions { PreferCSSPageSize = true }));
    }

    [GeneratedRegex(@"^\d,\d{3}\sg$")]
    private static partial Regex ThousandGrams();

    [GeneratedRegex(@"/Type /Page\b")]
    private static partial Regex Page();

    [GeneratedRegex(@"/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]")]
    private static partial Regex Box();
}
