using System.Globalization;
using Microsoft.Playwright;
using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class MainPathTests(Published published)
{
    [RequiresChromiumFact]
    public async Task Several_formulas_go_on_several_lines_in_their_order()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync("lockside-dry-brine", "pork-shoulder", "2 x 5 kg");
        await bench.ClickAsync("Another goes on after it");
        await bench.Page.Locator("#formula-1").SelectOptionAsync(published.ExampleFormula);
        await bench.ClickAsync("Another cut in the pile");
        await bench.Page.Locator("#cut-1").SelectOptionAsync("chicken-leg");
        await bench.Page.Locator("#pile-1").FillAsync("10 x 300 g");
        await Expect(bench.Page.Locator(".treatment h3")).ToHaveTextAsync(["1. Lockside towpath dry brine", "2. Two and three"]);

        // 13 kg of meat: 13.5 g/kg of brine, 22 g/kg of rub.
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("176 g");
        await Expect(bench.Page.Locator("#on-meat-1")).ToHaveTextAsync("286 g");
        await bench.Page.Locator("[name=on-1]").Nth(1).UncheckAsync();
        await Expect(bench.Page.Locator("#on-meat-1")).ToHaveTextAsync("220 g");
        await Expect(bench.Page.Locator(".ledger h4").First).ToHaveTextAsync("Pork shoulder");
        await Expect(bench.Page.Locator(".ledger").Nth(1).Locator(".legend").First).ToHaveTextAsync("Lockside towpath dry brine: 9.85 g/kg");

        await bench.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Sooner: formula 2" }).ClickAsync();
        await Expect(bench.Page.Locator(".treatment h3")).ToHaveTextAsync(["1. Two and three", "2. Lockside towpath dry brine"]);
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("220 g");
    }

    [RequiresChromiumFact]
    public async Task The_last_line_of_the_pile_a_formula_goes_on_stays_ticked()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", "5 kg");
        await bench.ClickAsync("Another cut in the pile");
        await bench.Page.Locator("#cut-1").SelectOptionAsync("chicken-leg");
        await bench.Page.Locator("#pile-1").FillAsync("5 kg");
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("220 g");
        await bench.Page.Locator("[name=on-0]").First.UncheckAsync();
        await bench.Page.Locator("[name=on-0]").Nth(1).ClickAsync();

        await Expect(bench.Page.Locator("[name=on-0]").Nth(1)).ToBeCheckedAsync();
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("110 g");
    }

    [RequiresChromiumFact]
    public async Task A_range_is_asked_about_and_a_tap_answers()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", "10 kg\n12-14 lb\n\n2 x 3–4 kg");
        await Expect(bench.Page.Locator("#pile-0-fault p")).ToHaveTextAsync(["Line 2: “12-14 lb” is a range. Which weight is it?", "Line 4: “2 x 3–4 kg” is a range. Which weight is it?"]);
        await Expect(bench.Page.Locator(".choices button")).ToHaveTextAsync(["12 lb", "13 lb", "14 lb", "2 x 3 kg", "2 x 3.5 kg", "2 x 4 kg"]);
        await bench.ClickAsync("13 lb");
        await bench.ClickAsync("2 x 3.5 kg");

        await Expect(bench.Page.Locator("#pile-0")).ToHaveValueAsync("10 kg\n13 lb\n\n2 x 3.5 kg");
        await Expect(bench.Page.Locator("#pile-0-fault")).ToBeEmptyAsync();
        await Expect(bench.Page.Locator(".summary")).ToContainTextAsync("4 pieces");
    }

    [RequiresChromiumFact]
    public async Task A_mark_that_could_be_thousands_is_answered_at_a_tap_without_asking_again()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(published.ExampleFormula, "chicken-leg", "1,250 g");
        await Expect(bench.Page.Locator(".choices button")).ToHaveTextAsync(["1.25 g", "1250 g"]);
        await bench.ClickAsync("1250 g");

        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("28 g");
        await Expect(bench.Page.Locator("#pile-0-fault")).ToBeEmptyAsync();
    }

    [RequiresChromiumFact]
    public async Task A_list_pasted_from_a_scale_is_read_as_it_is()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(published.ExampleFormula, "beef-brisket", "12.4 lb\r\n\r\n13,1 lb;12 lb 6 oz\t5.2 kg\r\n  \r\n");

        await Expect(bench.Page.Locator(".pieces .of")).ToHaveTextAsync(["12.4 lb", "13,1 lb", "12 lb 6 oz", "5.2 kg"]);
    }

    [RequiresChromiumFact]
    public async Task The_running_total_of_one_bowl_ends_at_what_is_mixed()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync("lockside-pork-rub", "pork-shoulder", "4 x 3.6 kg");
        await Expect(bench.Page.Locator("#to-mix-0")).ToBeVisibleAsync();
        var weighed = await Numbers(bench.Page.Locator(".weighing td.figure"));
        var running = await Numbers(bench.Page.Locator(".weighing td:last-child"));

        Assert.Equal(weighed.Select((_, i) => weighed.Take(i + 1).Sum()), running);
        Assert.Equal(running[^1], (await Numbers(bench.Page.Locator("#to-mix-0")))[0]);
    }

    [RequiresChromiumFact]
    public async Task Another_dose_and_what_stays_on_are_counted()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", "10 kg");
        await bench.Page.Locator("#how-0").ClickAsync();
        await bench.Page.GetByLabel("Another dose").FillAsync("3 %");
        await bench.Page.GetByLabel("Stays on or in the meat, %").FillAsync("50");

        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("300 g");
        await Expect(bench.Page.Locator("#how-0")).ToHaveTextAsync("dose 3 %, 50 % stays");

        // 30 g/kg x 2/5 x 0.98528 x 50 %.
        await Expect(bench.Page.Locator(".bands .figure").First).ToHaveTextAsync("5.91 g/kg");
    }

    [RequiresChromiumFact]
    public async Task Each_tab_keeps_its_own_pile()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", "10 kg");
        var other = await bench.OpenTabAsync();
        await Expect(other.Locator("#pile-0")).ToHaveValueAsync("10 kg");
        await other.Locator("#pile-0").FillAsync("20 kg");
        await Expect(bench.Page.Locator("#notices")).ToContainTextAsync("The bench in another tab has changed.");
        await bench.ReloadAsync();

        await Expect(bench.Page.Locator("#pile-0")).ToHaveValueAsync("10 kg");
        await Expect(other.Locator("#pile-0")).ToHaveValueAsync("20 kg");
    }

    private static async Task<List<double>> Numbers(ILocator locator) => (await locator.AllInnerTextsAsync())
        .Select(text => double.Parse(text.Replace('\u00a0', ' ').Split(' ')[0], CultureInfo.InvariantCulture)).ToList();
}
