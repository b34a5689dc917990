using System.Net.Http.Json;
using System.Text.Json.Nodes;
using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class MeasuringTests(Published published)
{
    [RequiresChromiumFact]
    public async Task A_conversion_is_one_step_from_the_bench_and_asks_for_the_form()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.Page.Locator("#to-convert").ClickAsync();
        await Expect(bench.Page.Locator("#converted .findings")).ToContainTextAsync("a spoon of one does not weigh the same as a spoon of another");
        await bench.Page.Locator("#convert-form").SelectOptionAsync("table");

        // USDA 02047: one teaspoon of table salt is 6 g, one tablespoon 18 g, one cup 292 g; the figure is the tablespoon's.
        await Expect(bench.Page.Locator(".result")).ToHaveTextAsync("288 g");
        await bench.Page.Locator("#convert-amount").FillAsync("1 tbsp");
        await Expect(bench.Page.Locator(".result")).ToHaveTextAsync("18 g");
        await Expect(bench.Page.Locator("#converted")).ToContainTextAsync("Between 16.2 and 19.8\u00a0g.");
        await bench.Page.Locator("#convert-amount").FillAsync("2 dollops");
        await Expect(bench.Page.Locator("#convert-amount-fault")).ToHaveTextAsync("“dollops” is no measure this page knows.");
    }

    [RequiresChromiumFact]
    public async Task A_grind_given_by_its_size_is_converted_or_refused_beside_the_size()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.GoAsync("convert");
        await bench.Page.GetByText("The grind by its size").ClickAsync();
        await bench.Page.Locator("#convert-size").FillAsync("17");

        await Expect(bench.Page.Locator("#convert-size-fault")).ToContainTextAsync("There is no such test sieve.");
    }

    [RequiresChromiumFact]
    public async Task A_cup_weighed_several_times_takes_the_place_of_the_book()
    {
        await using var server = await Server.StartAsync(published.Program);
        await using var bench = await Bench.OpenAsync(published.Browser, server.Address);
        await bench.WaitUntilKeptAsync();
        await bench.GoAsync("own");
        await bench.Page.Context.SetOfflineAsync(true);
        await bench.Page.Locator("#cup-weights").FillAsync("240\n244 g\n\n242");
        await Expect(bench.Page.Locator("#cup-answer")).ToContainTextAsync("from 3 fillings");
        await bench.ClickAsync("Use these");
        await Expect(bench.Page.Locator("#cup-list")).ToContainTextAsync("not sent yet");
        await bench.GoAsync("convert");
        await bench.Page.Locator("#convert-form").SelectOptionAsync("table");
        await Expect(bench.Page.Locator(".result")).ToHaveTextAsync("242 g");

        await bench.Page.Context.SetOfflineAsync(false);
        await bench.ReloadAsync();
        await bench.GoAsync("own");
        await Expect(bench.Page.Locator("#cup-list")).ToContainTextAsync("3 fillings");
        await Expect(bench.Page.Locator("#cup-list")).Not.ToContainTextAsync("not sent yet");
        var stored = (await server.Http.GetFromJsonAsync<JsonNode>(new Uri("v1/densities/salt/table", UriKind.Relative)))!;
        Assert.Equal(3, (int)stored["count"]!);
    }

    [RequiresChromiumFact]
    public async Task A_small_amount_goes_on_the_fine_scale()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.GoAsync("own");
        await AddScaleAsync(bench, "0.1 g", "100 g");
        await AddScaleAsync(bench, "1 g", "5 kg");
        await bench.Page.Locator("#scale-step").FillAsync("nothing");
        await bench.ClickAsync("Add this scale");
        await Expect(bench.Page.Locator("#scale-step-fault")).ToHaveTextAsync("“nothing” cannot be read as an amount.");
        await bench.GoAsync("bench");
        await bench.EnterAsync("lockside-dry-brine", "pork-shoulder", "12 kg");
        await bench.Page.Locator("#more-summary").ClickAsync();
        await bench.Page.Locator("#weighingStep").SelectOptionAsync("scales");

        await Expect(bench.Page.Locator(".weighing td.figure")).ToHaveTextAsync(["126 g", "37.8 g", "6.3 g"]);
    }

    private static async Task AddScaleAsync(Bench bench, string step, string capacity)
    {
        await bench.Page.Locator("#scale-step").FillAsync(step);
        await bench.Page.Locator("#scale-capacity").FillAsync(capacity);
        await bench.ClickAsync("Add this scale");
        await Expect(bench.Page.Locator("#own-scales, .library li", new() { HasText = $"steps of {step}" })).ToHaveCountAsync(1);
    }
}
