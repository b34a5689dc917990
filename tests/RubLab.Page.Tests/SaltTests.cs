using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class SaltTests(Published published)
{
    [RequiresChromiumFact]
    public async Task The_ledger_is_drawn_to_scale_and_said_in_words()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync("lockside-dry-brine", "pork-shoulder", "4 x 3.6 kg");
        await bench.ClickAsync("Another goes on after it");
        await bench.Page.Locator("#formula-1").SelectOptionAsync(published.ExampleFormula);
        var parts = bench.Page.Locator(".drawing").First.Locator("rect.part");
        await Expect(parts).ToHaveCountAsync(2);
        var widths = await parts.EvaluateAllAsync<double[]>("parts => parts.map(part => part.width.baseVal.value)");

        // 10 g/kg of table salt against 22 x 2/5 g/kg of the same.
        Assert.Equal(10 / 8.8, widths[0] / widths[1], 3);
        await Expect(bench.Page.Locator(".legend").First.Locator("li")).ToHaveTextAsync(["Lockside towpath dry brine: 9.85 g/kg", "Two and three: 8.67 g/kg"]);
        await Expect(bench.Page.Locator(".ranges li")).ToHaveTextAsync("Salt for roasts dry brine / presalt (common practice): 7.5 to 15 g/kg, confidence low");
        await Expect(bench.Page.Locator(".drawing").Nth(1).Locator("text")).ToHaveTextAsync(["5 %", "20 %", "100 %"]);
        await Expect(bench.Page.Locator(".drawing figcaption.hint")).ToContainTextAsync("of a day’s 2,300 mg");
    }

    [RequiresChromiumFact]
    public async Task A_salt_above_its_range_is_mended_by_a_dose_at_a_tap_and_taken_back()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", "10 kg");
        await bench.Page.Locator("#how-0").ClickAsync();
        await bench.Page.Locator("#dose-0").FillAsync("50");

        // 50 g/kg x 2/5 x 0.98528 = 19.7; 15 g/kg is reached at 38.06.
        await Expect(bench.Page.Locator(".check .verdict").First).ToHaveTextAsync("Above: 19.7 g/kg, range 7.5 to 15 g/kg");
        await Expect(bench.Page.Locator(".mending button").First).ToHaveTextAsync("Two and three at 38 g/kg");
        await Expect(bench.Page.Locator(".mending .hint").First).ToHaveTextAsync("50 g less Salt: 160 g; 76 g less Black pepper: 239 g");
        await bench.Page.Locator(".mending button").First.ClickAsync();
        await Expect(bench.Page.Locator(".check .verdict").First).ToHaveTextAsync("Inside: 15 g/kg, range 7.5 to 15 g/kg");
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("380 g");

        await bench.ClickAsync("Take it back");
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("500 g");
        await Expect(bench.Page.Locator("#dose-0")).ToHaveValueAsync("50");
    }

    [RequiresChromiumFact]
    public async Task A_salt_above_its_range_is_mended_by_one_line_and_the_rest_stays()
    {
        await using var server = await Server.StartAsync(published.Program);
        await using var bench = await Bench.OpenAsync(published.Browser, server.Address);
        await bench.EnterAsync("lockside-dry-brine", "chicken-breast-skinless", "10 kg");

        // 1 % of table salt is 9.85 g/kg of sodium chloride; the marinated breast's range ends at 7.5.
        await Expect(bench.Page.Locator(".mending button").Nth(1)).ToHaveTextAsync("Salt 0.76 % instead of 1 %");
        await bench.Page.Locator(".mending button").Nth(1).ClickAsync();
        await Expect(bench.Page.Locator(".check .verdict").First).ToContainTextAsync("Inside: 7.49 g/kg");
        await Expect(bench.Page.Locator(".layer .flag")).ToContainTextAsync("Adjusted for this sheet, not saved.");
        var weighed = await bench.Page.Locator(".weighing td.figure").AllInnerTextsAsync();
        Assert.Equal("80 g", weighed[0].Replace('\u00a0', ' '));

        await bench.ClickAsync("Save it as a revision");
        await Expect(bench.Page.Locator(".layer .flag")).ToHaveCountAsync(0);
        var stored = await server.Http.GetStringAsync(new Uri("v1/formulas/lockside-dry-brine", UriKind.Relative));
        Assert.Contains("\"revision\":2", stored, StringComparison.Ordinal);
        Assert.Contains("0.76", stored, StringComparison.Ordinal);
    }
}
