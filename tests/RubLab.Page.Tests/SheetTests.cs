using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class SheetTests(Published published)
{
    [RequiresChromiumFact]
    public async Task The_example_of_the_contract_is_computed_to_the_gram()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", "4 x 3.6 kg", trimLoss: "8");

        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("291 g");
        await Expect(bench.Page.Locator("#to-mix-0")).ToHaveTextAsync("306 g");
        await Expect(bench.Page.Locator(".weighing td.figure")).ToHaveTextAsync(["122 g", "184 g"]);
        await Expect(bench.Page.Locator(".weighing td:last-child")).ToHaveTextAsync(["122 g", "306 g"]);
        var pieces = await bench.Page.Locator(".pieces .figure").AllInnerTextsAsync();
        Assert.Equal(4, pieces.Count);
        Assert.Equal(291, pieces.Sum(text => int.Parse(text.Split('\u00a0')[0], System.Globalization.CultureInfo.InvariantCulture)));
        await Expect(bench.Page.Locator(".salt")).ToContainTextAsync("Salt for roasts dry brine / presalt");
        Assert.Empty(bench.Errors);
    }

    [RequiresChromiumFact]
    public async Task Every_part_of_the_answer_is_on_the_sheet()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync("lockside-old-card", "chicken-leg", "310 g\n298 g");

        await Expect(bench.Page.Locator(".salt .band").First).ToContainTextAsync("from");
        await Expect(bench.Page.Locator(".check .verdict").First).ToHaveTextAsync(new System.Text.RegularExpressions.Regex("^(Inside|Above|Below|Across an end): .+ range "));
        await Expect(bench.Page.Locator(".weighing tbody .spoon").First).ToContainTextAsync("tsp");
        await Expect(bench.Page.Locator(".findings")).ToContainTextAsync("is written in spoons and cups.");
        await Expect(bench.Page.Locator(".cautions")).ToContainTextAsync("All poultry: at least 165 F (74 C) inside.");
    }

    [RequiresChromiumFact]
    public async Task A_purchase_weight_without_trim_loss_is_said_to_be_a_plan()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(published.ExampleFormula, "beef-brisket", "14 lb", trimLoss: "");

        await Expect(bench.Sheet.Locator(".flag")).ToHaveTextAsync("A plan: the trim loss is not known yet.");
    }

    [RequiresChromiumFact]
    public async Task Numbers_are_read_and_shown_as_the_visitor_writes_them()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address, locale: "de-DE");
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", "3,6 kg\n3.6 kg", trimLoss: "8,5");
        await bench.Page.Locator("#more-summary").ClickAsync();
        await bench.Page.GetByLabel("Weighing step of the scale").SelectOptionAsync("0.1 g");

        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("144,9 g");
        await Expect(bench.Page.Locator(".pieces .of").Nth(1)).ToHaveTextAsync("3,294 kg green");
    }

    [RequiresChromiumFact]
    public async Task The_sentence_for_a_screen_reader_follows_the_sheet()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", "4 x 3.6 kg", trimLoss: "8");

        await Expect(bench.Page.Locator("#spoken")).ToHaveTextAsync("4 pieces, 13.248 kg green. 291 g on the meat, 306 g to mix.");
    }

    [RequiresChromiumFact]
    public async Task What_is_still_missing_is_named()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);

        await Expect(bench.Sheet.Locator("li")).ToHaveTextAsync(["choose a formula", "choose a cut", "write a weight"]);
    }
}
