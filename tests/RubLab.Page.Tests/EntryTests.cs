using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class EntryTests(Published published)
{
    [RequiresChromiumFact]
    public async Task A_line_that_cannot_be_read_is_named_beside_the_field_and_the_rest_is_counted()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        const string Written = "4 x 3.6 kg\nthe big one\n12 stone";
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", Written, trimLoss: "8");

        await Expect(bench.Page.Locator("#pile-0-fault p")).ToHaveTextAsync(
        [
            "Line 2: “the big one” cannot be read as one weight.",
            "Line 3: “stone” is no unit of weight here. Use g, kg, oz or lb.",
        ]);
        await Expect(bench.Page.Locator("#pile-0")).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(bench.Page.Locator("#pile-0")).ToHaveAttributeAsync("aria-describedby", "pile-0-fault pile-0-hint");
        await Expect(bench.Page.Locator("#pile-0")).ToHaveValueAsync(Written);
        await Expect(bench.Sheet.Locator(".flag").First).ToHaveTextAsync("2 lines cannot be read and are not counted on this sheet.");
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("291 g");
    }

    [RequiresChromiumFact]
    public async Task Nothing_written_is_lost_when_the_page_is_loaded_again()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        const string Written = "4 x 3.6 kg\n\nthe big one";
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", Written, trimLoss: "eight");
        await bench.ReloadAsync();

        await Expect(bench.Page.Locator("#pile-0")).ToHaveValueAsync(Written);
        await Expect(bench.Page.Locator("#trimLoss-0")).ToHaveValueAsync("eight");
        await Expect(bench.Page.Locator("#formula-0")).ToHaveValueAsync(published.ExampleFormula);
        await Expect(bench.Page.Locator("#cut-0")).ToHaveValueAsync("pork-shoulder");
        await Expect(bench.Page.Locator("[name=weightIs-0][value=purchase]")).ToBeCheckedAsync();
        await Expect(bench.Page.Locator("#trimLoss-0-fault")).ToHaveTextAsync("“eight” is not a number.");
    }

    [RequiresChromiumFact]
    public async Task A_figure_out_of_range_is_refused_beside_its_own_field()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", "3.6 kg\n2000000 g", trimLoss: "100");

        await Expect(bench.Page.Locator("#pile-0-fault")).ToContainTextAsync("Line 2: ");
        await Expect(bench.Page.Locator("#trimLoss-0-fault")).ToContainTextAsync("99");
        await Expect(bench.Sheet).ToContainTextAsync("Mend what is marked");
    }

    [RequiresChromiumFact]
    public async Task A_fault_in_a_folded_field_unfolds_it()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", "3.6 kg");
        await bench.Page.Locator("#more-summary").ClickAsync();
        await bench.Page.Locator("#overage").FillAsync("a bit");
        await bench.ReloadAsync();

        await Expect(bench.Page.Locator("#overage")).ToBeVisibleAsync();
        await Expect(bench.Page.Locator("#overage-fault")).ToHaveTextAsync("“a bit” is not a number.");
    }

    [RequiresChromiumFact]
    public async Task The_page_is_worked_from_the_keyboard_alone()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Expect(bench.Page.Locator("#formula-0 option")).Not.ToHaveCountAsync(1);
        await bench.Page.Keyboard.PressAsync("Tab");
        await Expect(bench.Page.Locator(".skip")).ToBeFocusedAsync();
        await bench.TabToAsync("#formula-0");
        await bench.Page.Keyboard.TypeAsync("Two and three");
        await bench.TabToAsync("#cut-0");
        await bench.Page.Keyboard.TypeAsync("Pork shoulder");
        await bench.TabToAsync("#pile-0");
        await bench.Page.Keyboard.TypeAsync("4 x 3.6 kg");
        await bench.Page.Keyboard.PressAsync("Tab");
        await bench.Page.Keyboard.PressAsync("ArrowDown");
        await bench.TabToAsync("#trimLoss-0");
        await bench.Page.Keyboard.TypeAsync("8");
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("291 g");

        await bench.TabToAsync("#weigh-out");
        await bench.Page.Keyboard.PressAsync("Enter");
        await Expect(bench.Page.Locator("#step-done")).ToBeFocusedAsync();
        await bench.Page.Keyboard.PressAsync("Enter");
        await Expect(bench.Page.Locator(".what")).ToContainTextAsync("Black pepper");
    }
}
