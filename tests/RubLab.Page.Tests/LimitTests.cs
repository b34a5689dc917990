using System.Net.Http.Json;
using System.Text.Json.Nodes;
using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

/// <summary>Legal levels on the bench: what passes one is refused where it is put on, what does not is drawn against it.</summary>
[Collection(PublishedTests.Name)]
public sealed class LimitTests(Published published)
{
    private const string LoinCure = """
        { "name": "Loin cure", "kind": "dry-brine", "lines": [ { "ingredient": "salt", "form": "table", "amount": { "value": 1.5, "unit": "%" } },
          { "ingredient": "cure-6-25", "nitriteFraction": 0.0625, "amount": { "value": 0.5, "unit": "%" } } ] }
        """;

    private const string DeckPickle = """
        { "name": "Deck pickle", "kind": "injection", "dose": { "value": 10, "unit": "%" }, "lines": [ { "ingredient": "water" },
          { "ingredient": "salt", "form": "table", "amount": { "value": 8, "unit": "%-of-liquid" } },
          { "ingredient": "cure-6-25", "nitriteFraction": 0.0625, "amount": { "value": 1.6, "unit": "%-of-liquid" } } ] }
        """;

    [RequiresChromiumFact]
    public async Task A_sheet_above_a_level_is_refused_at_its_treatment_in_grams_and_mended_at_a_tap()
    {
        await using var server = await Server.StartAsync(published.Program);
        var formula = await StoreAsync(server, LoinCure);
        await using var bench = await Bench.OpenAsync(published.Browser, server.Address);
        await bench.EnterAsync(formula, "pork-loin", "2 x 2 kg");

        // 0.5 % of 6.25 % is 312.5 ppm; 112.5 ppm of 4 kg are 0.45 g.
        await Expect(bench.Page.Locator("#formula-0-fault p").First).ToHaveTextAsync(
            "Nitrite of dry cured bacon: 312.5 ppm in all, and 200 ppm is the most. Over by 112.5 ppm: 0.45 g of nitrite too much.");
        await Expect(bench.Page.Locator("#sheet-refused")).ToBeVisibleAsync();
        await Expect(bench.Page.Locator("#weigh-out")).ToHaveCountAsync(0);
        await Expect(bench.Sheet.Locator("[data-limit=nitrite-bacon-dry] .verdict")).ToContainTextAsync("Over by 112.5 ppm");
        await Expect(bench.Sheet.Locator("[data-limit=nitrite-bacon-dry]")).ToContainTextAsync("name the product if it is another");

        // 200 ppm are 0.32 %: 12.8 g of 4 kg, and a twentieth more to mix.
        await Expect(bench.Page.Locator("#formula-0-fault .mending")).ToHaveTextAsync("Curing salt, 6.25 % nitrite: 0.32 % instead of 0.5 %Then weigh 13 g of Curing salt, 6.25 % nitrite.");
        await bench.Page.Locator("#formula-0-fault .mending button").ClickAsync();
        await Expect(bench.Page.Locator("#weigh-out")).ToBeVisibleAsync();
        await Expect(bench.Page.Locator("#formula-0-fault")).ToBeEmptyAsync();
        await Expect(bench.Sheet.Locator("[data-limit=nitrite-bacon-dry] .verdict")).ToContainTextAsync("Inside: 200 ppm; 200 ppm at most");
        await Expect(bench.Sheet.Locator(".cautions li").First).ToContainTextAsync("Curing salt is not table salt");

        await bench.ClickAsync("Take it back");
        await Expect(bench.Page.Locator("#sheet-refused")).ToBeVisibleAsync();
    }

    [RequiresChromiumFact]
    public async Task The_named_product_of_a_pile_line_decides_and_is_kept()
    {
        await using var server = await Server.StartAsync(published.Program);
        var formula = await StoreAsync(server, LoinCure);
        await using var bench = await Bench.OpenAsync(published.Browser, server.Address);
        await bench.EnterAsync(formula, "pork-loin", "4 kg");
        await Expect(bench.Page.Locator("#sheet-refused")).ToBeVisibleAsync();
        await bench.ClickAsync("Sold with solution added? Made into what?");
        await bench.Page.Locator("#product-0").SelectOptionAsync("dry-cured-ham");
        await Expect(bench.Sheet.Locator("[data-limit=nitrite-dry] .verdict")).ToContainTextAsync("Inside: 312.5 ppm; 625 ppm at most");
        await bench.ReloadAsync();
        await Expect(bench.Sheet.Locator("[data-limit=nitrite-dry] .verdict")).ToContainTextAsync("Inside: 312.5 ppm; 625 ppm at most");
        await Expect(bench.Page.Locator("#product-0")).ToHaveValueAsync("dry-cured-ham");
    }

    [RequiresChromiumFact]
    public async Task Two_that_are_allowed_apart_are_refused_together_at_both()
    {
        await using var server = await Server.StartAsync(published.Program);
        var dry = await StoreAsync(server, LoinCure.Replace("0.5", "0.3", StringComparison.Ordinal));
        var pickle = await StoreAsync(server, DeckPickle);
        await using var bench = await Bench.OpenAsync(published.Browser, server.Address);
        await bench.EnterAsync(dry, "pork-loin", "4 kg");
        await Expect(bench.Page.Locator("#weigh-out")).ToBeVisibleAsync();
        await bench.Page.Locator("#add-treatment").ClickAsync();
        await bench.Page.Locator("#formula-1").SelectOptionAsync(pickle);

        // 187.5 and 100 ppm.
        foreach (var treatment in (int[])[0, 1])
        {
            await Expect(bench.Page.Locator($"#formula-{treatment}-fault")).ToContainTextAsync("Nitrite by pump or massage: 287.5 ppm in all, and 200 ppm is the most. Over by 87.5 ppm: 0.35 g of nitrite too much.");
        }
    }

    [RequiresChromiumFact]
    public async Task Ground_meat_is_seasoned_by_its_weight_with_ice_up_to_its_level()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync("lockside-coal-wharf-sausage", "beef-ground-80", "10 kg");

        await Expect(bench.Sheet.Locator(".weighing td.figure")).ToHaveTextAsync(["168 g", "26 g", "16 g", "263 g"]);
        await Expect(bench.Sheet.Locator(".cautions")).ToContainTextAsync("Ground meat: at least 160 F (71 C) inside");
        await Expect(bench.Sheet.Locator(".check .title").First).ToHaveTextAsync("Salt for fresh pork sausage (common practice)");
        await Expect(bench.Sheet.Locator("[data-limit]")).ToHaveCountAsync(0);

        // 16 g/kg of table salt, 15.76 of sodium chloride. One recipe's level is told and neither marked nor mended; the range holds it.
        await Expect(bench.Sheet.Locator(".check.level .verdict").First).ToHaveTextAsync("Above it: 15.8 g/kg, one level of 15 g/kg");
        await Expect(bench.Sheet.Locator(".check.level .mending, .check.below")).ToHaveCountAsync(0);

        // 250 g of ice in 10,450 g of all that goes in.
        await bench.ClickAsync("Sold with solution added? Made into what?");
        await bench.Page.Locator("#product-0").SelectOptionAsync("fresh-sausage");
        await Expect(bench.Sheet.Locator("[data-limit=water-fresh-sausage] .verdict")).ToHaveTextAsync("Inside: 2.39 %; 3 % at most, of all ingredients together.");
        await bench.Page.Locator("#how-0").ClickAsync();
        await bench.Page.Locator("#dose-0").FillAsync("60 g/kg");
        await Expect(bench.Page.Locator("#formula-0-fault p").First).ToContainTextAsync("Water and ice in fresh pork sausage: 3.14 % in all, and 3 % is the most.");
        await Expect(bench.Page.Locator("#formula-0-fault .mending button").Last).ToHaveTextAsync("Lockside coal wharf sausage at 57.08 g/kg");
    }

    private static async Task<string> StoreAsync(Server server, string formula)
    {
        using var body = JsonContent.Create(JsonNode.Parse(formula));
        using var answer = await server.Http.PostAsync(new Uri("v1/formulas", UriKind.Relative), body);
        answer.EnsureSuccessStatusCode();
        return (await answer.Content.ReadFromJsonAsync<JsonNode>())!["id"]!.GetValue<string>();
    }
}
