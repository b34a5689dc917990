using System.Net.Http.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class TimeTests(Published published)
{
    [RequiresChromiumFact]
    public async Task A_slab_of_50_mm_is_salted_as_the_published_solution_has_it_without_the_server()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.WaitUntilKeptAsync();
        await bench.Page.Context.SetOfflineAsync(true);
        await bench.ReloadAsync();
        await bench.GoAsync("time");
        await bench.Page.Locator("#time-thickness").FillAsync("5 cm");
        await Expect(bench.Page.Locator("#time-length-fault")).ToContainTextAsync("A brick needs it");
        await bench.Page.Locator("#time-shape").SelectOptionAsync("slab");
        await bench.Page.Locator("#time-hours-0").FillAsync("1 d");
        await bench.Page.Locator("#time-temperature-0").FillAsync("41 F");

        // Crank 2.17 at pork's typical 3e-10 m2/s, 41 F being 5 C: 216 h until the middle is at 95 % of the mean, and 1.3 % after 24 h.
        await Expect(bench.Page.Locator("#time-figure-even95 .typical")).ToHaveTextAsync("216");
        await Expect(bench.Page.Locator("#time-figure-centre .typical")).ToHaveTextAsync("1.3");
        await Expect(bench.Page.Locator("#time-depth")).ToHaveTextAsync("Salted in 24\u00a0h: the outer");
        await Expect(bench.Page.Locator("#time-outcome .rests")).ToContainTextAsync("(confidence low)");
        await Expect(bench.Page.Locator("#time-outcome .cautions li")).Not.ToHaveCountAsync(0);
        foreach (var name in (string[])["Salt in the piece after 24 h", "Salt over time"])
        {
            await Expect(bench.Page.GetByRole(AriaRole.Img, new PageGetByRoleOptions { NameRegex = new Regex($"^{name}: dry brine, slab of pork, 50 mm thick .*do not count on it") })).ToBeVisibleAsync();
        }

        await Expect(bench.Page.GetByRole(AriaRole.Img, new PageGetByRoleOptions { NameRegex = new Regex(@"^Until it is even to 95 %: 65 to 401\sh, typically 216\sh$") })).ToBeVisibleAsync();
        Assert.DoesNotContain(bench.Errors, error => error.Contains("Content Security", StringComparison.Ordinal));
    }

    [RequiresChromiumFact]
    public async Task Every_fault_stands_beside_its_field_at_once_and_what_was_written_outlives_a_reload()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address, locale: "de-DE");
        await bench.GoAsync("time");
        await Expect(bench.Page.Locator("#time-outcome")).ToHaveTextAsync("Write the weight of one piece, or its thickness, to see how far the salt gets.");
        await bench.Page.Locator("#time-weight").FillAsync("3,6");
        await bench.Page.Locator("#time-thickness").FillAsync("40,5 cm");
        await bench.Page.Locator("#time-salt").FillAsync("30 g");
        await bench.Page.Locator("#time-hours-0").FillAsync("-12 h");
        await bench.Page.Locator("#time-temperature-0").FillAsync("4");
        await bench.Page.Locator("#time-add").ClickAsync();
        await bench.Page.Locator("#time-hours-1").FillAsync("half a day");
        await bench.Page.Locator("#time-temperature-1").FillAsync("101,5 °C");

        await FaultAsync("thickness", "A brick of that weight is 152 mm thick at most, and 405 mm was given.");
        await FaultAsync("salt", "“30 g” is no dose. Write it in g/kg or %.");
        await FaultAsync("hours-0", "-12 h is out of range");
        await FaultAsync("temperature-0", "“4” names no unit.");
        await FaultAsync("hours-1", "“half a day” is not a number.");
        await FaultAsync("temperature-1", "101,5 C is out of range: from 0 up to 100 C.");
        await Expect(bench.Page.Locator("#time-weight-fault")).ToBeEmptyAsync();
        await Expect(bench.Page.Locator("#time-outcome")).ToHaveTextAsync("Mend what is marked to see how far the salt gets.");
        await bench.ReloadAsync();

        await Expect(bench.Page.Locator("#time-hours-1")).ToHaveValueAsync("half a day");
        await Expect(bench.Page.Locator("#time-temperature-1")).ToHaveValueAsync("101,5 °C");
        await FaultAsync("salt", "is no dose");
        await bench.Page.Locator("#time-thickness").FillAsync("10,5 cm");
        await bench.Page.Locator("#time-salt").FillAsync("1,25 %");
        await bench.Page.Locator("#time-hours-0").FillAsync("12");
        await bench.Page.Locator("#time-temperature-0").FillAsync("4 C");
        await bench.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Take out stage 2" }).ClickAsync();
        await Expect(bench.Page.Locator("#time-depth")).ToHaveTextAsync("Salted in 12\u00a0h: the outer");
        await Expect(bench.Page.Locator("#time-figure-salt-inside")).ToContainTextAsync("once even 12,5\u00a0g/kg everywhere");
        await Expect(bench.Page.Locator("#time-outcome .result .figure")).ToHaveTextAsync(new Regex("^[0-9](,[0-9])? – [0-9]+\u00a0mm$"));

        Task FaultAsync(string field, string message) => Expect(bench.Page.Locator($"#time-{field}-fault")).ToContainTextAsync(message);
    }

    [RequiresChromiumFact]
    public async Task What_does_not_go_with_the_shape_is_told_and_a_brick_without_a_weight_asks_for_its_sides()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.GoAsync("time");
        await bench.Page.Locator("#time-cut").SelectOptionAsync("pork-loin");
        await bench.Page.Locator("#time-weight").FillAsync("2 x 3 kg");
        await Expect(bench.Page.Locator("#time-weight-fault")).ToHaveTextAsync("Write the weight of one piece.");
        await bench.Page.Locator("#time-weight").FillAsync("6 lb 8 oz");
        await bench.Page.Locator("#time-faces").SelectOptionAsync("closed");
        await Expect(bench.Page.Locator("#time-faces-fault")).ToContainTextAsync("A cylinder has no face across its thickness that could be blocked.");
        await bench.Page.Locator("#time-weight").FillAsync("");
        await bench.Page.Locator("#time-thickness").FillAsync("2 1/2 in");
        await bench.Page.Locator("#screen-time details summary").ClickAsync();
        await bench.Page.Locator("#time-shape").SelectOptionAsync("brick");
        await Expect(bench.Page.Locator("#time-shape")).ToBeFocusedAsync();
        await Expect(bench.Page.Locator("#time-width-fault")).ToContainTextAsync("A brick needs it");
        await bench.Page.Locator("#time-width").FillAsync("8\"");
        await bench.Page.Locator("#time-length").FillAsync("30 cm");
        await bench.Page.Locator("#time-method").SelectOptionAsync("salt-bed");

        // A bed keeps its strength: nothing weakens, and no dose limits it.
        await Expect(bench.Page.Locator("#time-figure-uptake")).ToBeVisibleAsync();
        await Expect(bench.Page.Locator("#time-figure-liquidStrength, #time-figure-salt-inside, #time-salt")).ToHaveCountAsync(0);
        await Expect(bench.Page.Locator("#time-outcome .plot").First).ToContainTextAsync("salt bed, brick of pork, 63.5 mm thick");
        await Expect(bench.Page.Locator("#time-outcome .plot").First).ToContainTextAsync("closed face");
    }

    [RequiresChromiumFact]
    public async Task A_soak_is_asked_with_the_water_of_its_liquid_over_that_of_the_meat()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.GoAsync("time");
        await bench.Page.Locator("#time-method").SelectOptionAsync("soak");
        await bench.Page.Locator("#time-cut").SelectOptionAsync("turkey-breast");
        await bench.Page.Locator("#time-weight").FillAsync("2.5 kg");
        await Expect(bench.Page.Locator("#time-outcome")).ToContainTextAsync("Write how much liquid there is");
        await bench.Page.Locator("#time-liquid").FillAsync("10 kg");
        await bench.Page.Locator("#time-strength").FillAsync("40");
        await Expect(bench.Page.Locator("#time-strength-fault")).ToContainTextAsync("no more than 26.32 % dissolves");
        await bench.Page.Locator("#time-strength").FillAsync("6 %");
        await bench.Page.Locator("#time-meat").FillAsync("2 x 2.5 kg");
        var brine = await PostAsync("v1/brines", """
            { "kind": "soak", "cut": "turkey-breast", "meat": { "value": 5, "unit": "kg" }, "liquid": { "value": 10, "unit": "kg" },
              "lines": [ { "ingredient": "water" }, { "ingredient": "sodium-chloride", "amount": { "value": 6, "unit": "%-of-liquid" } } ] }
            """);
        var ratio = (double)brine["soak"]!["waterRatio"]!;
        var times = await PostAsync("v1/salting-times", $$"""
            { "method": "soak", "cut": "turkey-breast", "weight": { "value": 2.5, "unit": "kg" }, "liquidRatio": {{ratio:R}},
              "stages": [ { "time": { "value": 12, "unit": "h" }, "temperature": { "value": 4, "unit": "C" } } ] }
            """);

        // 10 kg at 6 % hold 9.4 kg of water; a bird's breast is some three quarters water.
        Assert.InRange(ratio, 9.4 / (5 * 0.8), 9.4 / (5 * 0.6));
        await Expect(bench.Page.Locator("#time-outcome")).ToContainTextAsync((string)times["advice"]!);
        await Expect(bench.Page.Locator("#time-figure-salt-inside")).ToContainTextAsync($"once even {(double)brine["soak"]!["evenPerKgGreen"]!["typical"]!:0.0}\u00a0g/kg everywhere");
        await Expect(bench.Page.Locator("#time-figure-liquidStrength .typical")).ToHaveTextAsync($"{(double)times["liquidStrength"]!["typical"]!:0}");
    }

    [RequiresChromiumFact]
    public async Task The_bench_hands_over_cut_heaviest_piece_and_salt_and_what_stood_there_can_be_had_back()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.GoAsync("time");
        await bench.Page.Locator("#time-weight").FillAsync("1 kg");
        await bench.GoAsync("bench");
        await bench.EnterAsync("lockside-dry-brine", "lamb-shoulder", "2 x 2.2 kg\n5 lb 4 oz\n1,9 kg");
        await Expect(bench.Page.Locator("#on-meat-0")).ToBeVisibleAsync();
        await bench.Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "How far does it get?" }).ClickAsync();

        // 1 % of table salt, which is 98.5 % sodium chloride. 5 lb 4 oz is 2.38 kg.
        await Expect(bench.Page.Locator("#time-cut")).ToHaveValueAsync("lamb-shoulder");
        await Expect(bench.Page.Locator("#time-weight")).ToHaveValueAsync("5 lb 4 oz");
        await Expect(bench.Page.Locator("#time-salt")).ToHaveValueAsync("9.85 g/kg");
        await Expect(bench.Page.Locator("#time-outcome .plot")).ToHaveCountAsync(2);
        await bench.Page.Locator("#time-weight").FillAsync("2.1 kg");
        await bench.ReloadAsync();
        await Expect(bench.Page.Locator("#time-weight")).ToHaveValueAsync("2.1 kg");

        await bench.GoAsync("bench");
        await bench.EnterAsync("lockside-towpath-bird-soak", "chicken-leg", "3 x 400 g", trimLoss: "10");
        await Expect(bench.Page.Locator("#sheet-body .treatment")).ToContainTextAsync("Soak");
        await bench.Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "How far does it get?" }).ClickAsync();
        await Expect(bench.Page.Locator("#time-method")).ToHaveValueAsync("soak");
        await Expect(bench.Page.Locator("#time-weight")).ToHaveValueAsync("360 g");
        await Expect(bench.Page.Locator("#time-meat")).ToHaveValueAsync("1.08 kg");
        await Expect(bench.Page.Locator("#time-liquid")).ToHaveValueAsync("1.08 kg");
        await Expect(bench.Page.Locator("#time-figure-liquidStrength")).ToBeVisibleAsync();
        await bench.Page.Locator("#notices").GetByText("Take it back").ClickAsync();
        await Expect(bench.Page.Locator("#time-weight")).ToHaveValueAsync("2.1 kg");
        await Expect(bench.Page.Locator("#time-method")).ToHaveValueAsync("dry-brine");
    }

    [RequiresChromiumTheory]
    [InlineData(360, 336)]
    [InlineData(1280, 640)]
    public async Task Curves_are_drawn_for_the_room_they_have(int width, int drawn)
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address, 768);
        await bench.GoAsync("time");
        await bench.Page.Locator("#time-weight").FillAsync("3.6 kg");
        await Expect(bench.Page.Locator("#time-outcome .plot")).ToHaveCountAsync(2);
        await bench.Page.SetViewportSizeAsync(width, 800);

        await Expect(bench.Page.Locator($"#time-outcome .plot svg[width='{drawn}']")).ToHaveCountAsync(2);
        // Letters stay as large as a label on a map.
        var heights = await bench.Page.Locator("#time-outcome .plot text").EvaluateAllAsync<double[]>("all => all.filter(e => !e.hasAttribute('transform')).map(e => e.getBoundingClientRect().height)");
        Assert.True(heights.Min() > 11, $"Letters of {heights.Min()} px.");
        Assert.Equal(width, await bench.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
    }

    [RequiresChromiumFact]
    public async Task Printed_from_a_dark_screen_everything_is_black_on_white()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address, scheme: ColorScheme.Dark);
        await Filled.TimeAsync(bench);
        await bench.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print, ColorScheme = ColorScheme.Dark });

        Assert.Equal("rgb(255, 255, 255)", await ColourAsync("#time-weight", "backgroundColor"));
        Assert.Equal("rgb(0, 0, 0)", await ColourAsync("#time-weight", "color"));
        Assert.Equal("rgb(0, 0, 0)", await ColourAsync("#time-outcome .plot:first-of-type text", "fill"));
        Assert.Equal("rgb(0, 0, 0)", await ColourAsync("#time-figure-even95 .typical", "fill"));

        Task<string> ColourAsync(string selector, string name) => bench.Page.Locator(selector).First.EvaluateAsync<string>("(e, name) => getComputedStyle(e)[name]", name);
    }

    private async Task<JsonNode> PostAsync(string path, string request)
    {
        using var body = new StringContent(request, System.Text.Encoding.UTF8, "application/json");
        using var answer = await published.Server.Http.PostAsync(new Uri(path, UriKind.Relative), body);
        return (await answer.Content.ReadFromJsonAsync<JsonNode>())!;
    }
}
