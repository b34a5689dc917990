using System.Text.RegularExpressions;
using Microsoft.Playwright;
using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class CureTests(Published published)
{
    public static TheoryData<string, string, string, string> PutOnOrMixedIn => new()
    {
        // 9 CFR 424.21(c): 1/4 oz to 100 lb of chopped meat, 1 oz to 100 lb of a dry cure.
        { "ground", "beef-ground-80", "0.25 oz", "Inside: 156.25 ppm; 156.25 ppm at most, of green weight, counting all that goes in." },
        { "dry", "pork-loin", "1 oz", "Inside: 625 ppm; 625 ppm at most, of green weight, counting all that goes in." },
    };

    [RequiresChromiumTheory]
    [MemberData(nameof(PutOnOrMixedIn))]
    public async Task The_ounces_of_the_rule_come_to_its_level(string method, string cut, string amount, string expected)
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.CureAsync(bench, method, cut, "100 lb", ("sodium-nitrite", "", amount));
        await bench.Page.Locator("#cure-product").SelectOptionAsync("other");

        await Expect(Level(bench, $"nitrite-{method}").Locator(".verdict")).ToHaveTextAsync(expected);
        await Expect(Level(bench, $"nitrite-{method}").Locator(".source")).ToContainTextAsync("9 CFR 424.21");
    }

    [RequiresChromiumFact]
    public async Task A_whole_cut_is_cured_for_sausage_by_the_level_of_chopped_meat()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.CureAsync(bench, "ground", "pork-shoulder", "100 lb", ("sodium-nitrite", "", "0.25 oz"));
        await Expect(bench.Page.Locator("#cure-method-fault")).ToContainTextAsync("name as its product the sausage");
        await bench.Page.Locator("#cure-product").SelectOptionAsync("cooked-sausage");
        await Expect(Level(bench, "nitrite-ground").Locator(".verdict")).ToContainTextAsync("Inside: 156.25 ppm; 156.25 ppm at most");

        await bench.Page.Locator("#cure-amount-0").FillAsync("");
        await Expect(bench.Page.Locator("#cure-amount-0-fault")).ToHaveTextAsync("Write how much of it.");
    }

    // Two pounds of nitrite in a hundred gallons, by a pump of a tenth, are 200 ppm when those weigh 1000 lb; at the weight of water they are about 240.
    [RequiresChromiumTheory]
    [InlineData("998 lb", "Inside: 200 ppm; 200 ppm at most, of green weight, counting all that goes in.")]
    // 39.66 ppm of 453.6 kg are 18 g.
    [InlineData("832.5 lb", "Over by 39.66 ppm: 239.66 ppm, and 200 ppm is the most, of green weight, counting all that goes in. 18 g of nitrite too much.")]
    public async Task A_pickle_counts_by_its_weight(string water, string expected)
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.CureAsync(bench, "injection", "pork-leg", "1000 lb", ("sodium-nitrite", "", "2 lb"));
        await bench.Page.Locator("#cure-product").SelectOptionAsync("other");
        await bench.Page.Locator("#cure-amount-0").FillAsync(water);
        await bench.Page.Locator("#cure-step").FillAsync("1");

        await Expect(Level(bench, "nitrite-injection").Locator(".verdict")).ToHaveTextAsync(expected);
    }

    [RequiresChromiumFact]
    public async Task A_published_pickle_comes_to_its_published_load()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.CureAsync(bench, "injection", "pork-leg", "10 kg", ("curing-salt", "5.88", "32 g"));
        await bench.Page.Locator("#cure-product").SelectOptionAsync("other");
        await bench.Page.Locator("#cure-amount-0").FillAsync("1000 g");
        await AddAsync(bench, 2, "salt", "110 g");
        await AddAsync(bench, 3, "sugar-granulated", "124 g");

        // 32 x 0.0588 x 10 % x 1 000 000 / 1266 = 148.6256.
        await Expect(Level(bench, "nitrite-injection").Locator(".verdict")).ToContainTextAsync("Inside: 148.63 ppm; 200 ppm at most");
    }

    // 9 CFR 424.22(b) prints each level for both salts: 120 or 148, 100 or 123, 200 or 246, 40 or 49, 80 or 99 ppm.
    [RequiresChromiumFact]
    public async Task Both_nitrite_salts_are_told()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.CureAsync(bench, "dry", "pork-belly", "10 kg", ("sodium-nitrite", "", "120"));
        await bench.Page.Locator("#cure-how-0").SelectOptionAsync("target");
        foreach (var (sodium, potassium) in ((string, string)[])[("120", "148"), ("100", "123.3"), ("200", "246.6"), ("40", "49.3"), ("80", "98.6")])
        {
            await bench.Page.Locator("#cure-amount-0").FillAsync(sodium);
            await Expect(bench.Page.Locator("[data-additive=nitrite] > .hint"))
                .ToHaveTextAsync($"{sodium}\u00a0ppm put in, counted as sodium nitrite; that is {potassium}\u00a0ppm of potassium nitrite.");
        }
    }

    [RequiresChromiumFact]
    public async Task A_target_is_weighed_down_and_the_scale_s_error_told()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.WaitUntilKeptAsync();
        await bench.Page.Context.SetOfflineAsync(true);
        await Filled.CureAsync(bench, "dry", "pork-loin", "1 kg", ("cure-6-25", "6.25", "120"));
        await bench.Page.Locator("#cure-how-0").SelectOptionAsync("target");

        // 120 ppm of 1 kg by 6.25 %: 1.92 g. A tenth of a gram is too coarse for it, and says so with a premix.
        var weighed = bench.Page.Locator("#cure-outcome td .figure").First;
        await Expect(weighed).ToHaveTextAsync("1.9\u00a0g");
        await Expect(bench.Page.Locator("#cure-outcome tbody td small").First).ToHaveTextAsync("-1.04\u00a0% off");
        await Expect(bench.Page.Locator("[data-finding=cure-step-too-coarse]")).ToContainTextAsync("of 1.9 g of Curing salt, 6.25 % nitrite");
        await bench.Page.Locator("#cure-step").FillAsync("0,01");
        await Expect(weighed).ToHaveTextAsync("1.92\u00a0g");
        await Expect(bench.Page.Locator("[data-finding]")).ToHaveCountAsync(0);

        await bench.Page.Context.SetOfflineAsync(false);
        await Agreement.AssertAsync(bench, published.Server, "computeCure", "v1/cures", """
            { "method": "dry", "cut": "pork-loin", "meat": { "value": 1, "unit": "kg" }, "weighingStep": { "value": 0.1, "unit": "g" },
              "lines": [ { "ingredient": "cure-6-25", "nitriteFraction": 0.0625 }, { "ingredient": "salt", "amount": { "value": 18, "unit": "g/kg" } } ],
              "targets": [ { "ingredient": "cure-6-25", "additive": "nitrite", "reached": { "value": 120, "unit": "ppm" } } ] }
            """);
        await Agreement.AssertAsync(bench, published.Server, "computeCure", "v1/cures", """
            { "method": "ground", "cut": "beef-ground-80", "product": "fresh-sausage", "meat": { "value": 10, "unit": "kg" }, "purpose": "check",
              "lines": [ { "ingredient": "cure-6-25", "nitriteFraction": 0.0625, "amount": { "value": 40, "unit": "g" } }, { "ingredient": "ice", "amount": { "value": 4, "unit": "%" } } ] }
            """);
    }

    [RequiresChromiumFact]
    public async Task Pumped_bacon_is_held_to_its_levels_as_levels()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.CureAsync(bench, "injection", "pork-belly", "2.5 kg\n2,4 kg", ("cure-6-25", "6,25 %", "120"));
        await bench.Page.Locator("#cure-how-1").SelectOptionAsync("target");
        await bench.Page.Locator("#cure-product").SelectOptionAsync("bacon");
        await bench.Page.Locator("#cure-retained").FillAsync("50");

        // Whatever runs out again: the law counts what goes in. The accelerator is missing, and told.
        await Expect(Level(bench, "nitrite-bacon-injection").Locator(".verdict")).ToHaveTextAsync(new Regex("^The required level is met: 119[.][0-9]+\\s*ppm – 120\\s*ppm for 120\\s*ppm, of green weight, counting all that goes in[.]$"));
        await Expect(Level(bench, "ascorbate-bacon-injection").Locator(".verdict")).ToContainTextAsync("Below the required level: 0 ppm for 550 ppm");
        await Expect(bench.Page.Locator("#cure-said")).ToContainTextAsync("Above no legal level, but not all are met: Ascorbate or erythorbate of pumped bacon");
        await AddAsync(bench, 2, "sodium-erythorbate", "550", isTarget: true);
        // 2.6 g are weighed of the 2.695 that are due.
        await Expect(Level(bench, "ascorbate-bacon-injection").Locator(".verdict")).ToHaveTextAsync(new Regex("^Cannot be told: 5[0-9.]+\\s*ppm – 550\\s*ppm for the required level of 550\\s*ppm"));
        await Expect(bench.Page.Locator("#cure-outcome .pieces .figure")).ToHaveTextAsync(["2.750 kg", "2.640 kg"]);

        // 1.92 % and 0.55 % of 490 g, cut down to the tenth.
        await Expect(bench.Page.Locator("#cure-outcome td .figure").Nth(1)).ToHaveTextAsync("9.4 g");
        await Expect(bench.Page.Locator("#cure-outcome td .figure").Nth(2)).ToHaveTextAsync("2.6 g");
        await Expect(bench.Page.Locator("[data-finding=premix]").First).ToContainTextAsync("of it with");
        await Expect(bench.Page.Locator("#cure-outcome .cautions")).ToContainTextAsync("no longer whole inside");
        await bench.Page.Locator("#cure-step").FillAsync("0,01");
        await Expect(Level(bench, "ascorbate-bacon-injection").Locator(".verdict")).ToContainTextAsync("The required level is met");
        await Expect(bench.Page.Locator("#cure-said")).ToHaveTextAsync("Within every legal level that can be reckoned. What to weigh is shown.");
    }

    [RequiresChromiumFact]
    public async Task What_is_above_a_level_is_said_beside_its_line_and_mended_at_a_tap()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.CureAsync(bench, "dry", "pork-loin", "4 kg", ("cure-6-25", "6.25", "20 g"));

        // 312.5 ppm, and it might be bacon: 112.5 ppm of 4 kg are 0.45 g of nitrite.
        await Expect(bench.Page.Locator("#cure-amount-0-fault")).ToHaveTextAsync(
            "Nitrite of dry cured bacon: 312.5 ppm in all, and 200 ppm is the most. Over by 112.5 ppm: 0.45 g of nitrite too much.");
        await Expect(bench.Page.Locator("#cure-refused")).ToBeVisibleAsync();
        await Expect(bench.Page.Locator("#cure-outcome table")).ToHaveCountAsync(0);
        var widths = await Level(bench, "nitrite-bacon-dry").Locator("rect.loaded, rect.over").EvaluateAllAsync<double[]>("parts => parts.map(part => part.width.baseVal.value)");
        Assert.Equal(112.5 / 200, widths[1] / widths[0], 1e-3);

        // 4 000 g x 200 ppm / 6.25 % = 12.8 g.
        await Expect(bench.Page.Locator("#cure-outcome .mending")).ToHaveTextAsync("Curing salt, 6.25 % nitrite: 12.8 g instead of 20 gThen weigh 12.8 g of it.");
        await bench.Page.Locator("#cure-outcome .mending button").ClickAsync();
        await Expect(bench.Page.Locator("#cure-amount-0")).ToHaveValueAsync("12.8 g");
        await Expect(bench.Page.Locator("#cure-amount-0")).ToBeFocusedAsync();
        await Expect(bench.Page.Locator("#cure-outcome td .figure").First).ToHaveTextAsync("12.8 g");

        // Another product has another level.
        await bench.Page.Locator("#cure-amount-0").FillAsync("40 g");
        await bench.Page.Locator("#cure-product").SelectOptionAsync("dry-cured-ham");
        await Expect(Level(bench, "nitrite-dry").Locator(".verdict")).ToContainTextAsync("Inside: 625 ppm; 625 ppm at most");
        await Expect(Level(bench, "nitrite-bacon-dry")).ToHaveCountAsync(0);
    }

    [RequiresChromiumTheory]
    [InlineData("", "Write what its pack declares. It is never assumed.")]
    [InlineData("0", "“0” cannot be: more than 0 and at most 100 %.")]
    [InlineData("120", "“120” cannot be: more than 0 and at most 100 %.")]
    [InlineData("six", "“six” is not a number.")]
    [InlineData("0.0625", "“0.0625” could be 0.0625 %, or 6.25 % written as a part of 1. Which does the pack say?")]
    public async Task The_content_of_a_cure_is_never_guessed(string declared, string expected)
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.CureAsync(bench, "dry", "pork-loin", "4 kg", ("cure-6-25", declared, "10 g"));
        await Expect(bench.Page.Locator("#cure-nitrite-0-fault p").First).ToHaveTextAsync(expected);
        await Expect(bench.Page.Locator("#cure-outcome table")).ToHaveCountAsync(0);

        await bench.Page.Locator("#cure-ingredient-0").SelectOptionAsync("plant-nitrite-powder");
        await Expect(bench.Page.Locator("#cure-nitrite-0-fault p").First).ToHaveTextAsync(expected);
        await Expect(bench.Page.Locator("#cure-nitrite-0")).ToHaveValueAsync(declared);
    }

    [RequiresChromiumFact]
    public async Task A_part_of_one_is_read_as_the_cook_says()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.CureAsync(bench, "dry", "pork-loin", "4 kg", ("cure-6-25", "0.0625", "10 g"));
        await bench.Page.Locator("#cure-nitrite-0-fault button").Last.ClickAsync();
        await Expect(bench.Page.Locator("#cure-nitrite-0")).ToHaveValueAsync("6.25 %");
        await Expect(Level(bench, "nitrite-dry").Locator(".verdict")).ToContainTextAsync("Inside: 156.25 ppm");
    }

    [RequiresChromiumFact]
    public async Task All_faults_stand_at_once_and_what_is_written_survives_a_reload()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address, locale: "de-DE");
        await Filled.CureAsync(bench, "injection", "pork-belly", "2,5 kg\nmuch", ("cure-0-6", "0,6", "3 cups of it"));
        await bench.Page.Locator("#cure-pump").FillAsync("ten");
        await bench.Page.Locator("#cure-temperature").FillAsync("4");
        await bench.Page.Locator("#cure-step").FillAsync("0,1 stone");
        (string Field, string Fault)[] faults =
        [
            ("meat", "“much” cannot be read"), ("nitrite-1", "0,6 %, or 60 %"), ("amount-1", "“cups of it” is no measure"),
            ("pump", "cannot be read"), ("temperature", "names no unit"), ("step", "“stone” is no measure"),
        ];
        await AssertFaultsAsync(bench, faults);

        await bench.ReloadAsync();
        await AssertFaultsAsync(bench, faults);
        await Expect(bench.Page.Locator("#cure-meat")).ToHaveValueAsync("2,5 kg\nmuch");
        await Expect(bench.Page.Locator("#cure-amount-1")).ToHaveValueAsync("3 cups of it");
        await Expect(bench.Page.Locator("#cure-method")).ToHaveValueAsync("injection");
    }

    [RequiresChromiumFact]
    public async Task A_pump_of_nothing_and_of_four_times_the_meat_is_refused_and_one_of_its_weight_is_not()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.CureAsync(bench, "injection", "pork-leg", "4 kg", ("cure-6-25", "6.25", "0.3 %"));
        foreach (var pump in (string[])["0", "400"])
        {
            await bench.Page.Locator("#cure-pump").FillAsync(pump);
            await Expect(bench.Page.Locator("#cure-pump-fault")).ToContainTextAsync("out of range");
        }

        await bench.Page.Locator("#cure-pump").FillAsync("100");
        await Expect(bench.Page.Locator("#cure-pump-fault")).ToBeEmptyAsync();
        await Expect(bench.Page.Locator("#cure-amount-1-fault")).ToContainTextAsync("187.5 ppm in all, and 120 ppm is the most");
    }

    [RequiresChromiumFact]
    public async Task What_must_be_known_of_a_cure_stands_before_everything_else()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.GoAsync("cure");
        var cautions = bench.Page.Locator("#cure-cautions");
        await Expect(cautions).ToContainTextAsync("Curing salt is not table salt. Keep it marked, apart and locked away");
        await Expect(cautions).ToContainTextAsync("Nitrite above its level is a poison");
        await Expect(cautions).ToContainTextAsync("a licence, a variance or an approved process");
        Assert.True(await cautions.EvaluateAsync<bool>("e => Boolean(e.compareDocumentPosition(document.getElementById('cure-method')) & Node.DOCUMENT_POSITION_FOLLOWING)"));
    }

    [RequiresChromiumFact]
    public async Task A_soak_counts_as_if_even_over_meat_and_pickle()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.CureAsync(bench, "soak", "pork-leg", "4 kg", ("cure-6-25", "6.25", "16 g"));
        await bench.Page.Locator("#cure-product").SelectOptionAsync("other");
        await bench.Page.Locator("#cure-amount-0").FillAsync("4984 g");
        await bench.Page.Locator("#cure-liquid").FillAsync("6 kg");

        // 16 g in 5 000 are 19.2 g in 6 kg; 1.2 g of nitrite over 10 kg.
        await Expect(Level(bench, "nitrite-soak").Locator(".verdict")).ToContainTextAsync("Inside: 120 ppm; 200 ppm at most");
        await bench.Page.Locator("#cure-liquid").FillAsync("");
        await Expect(bench.Page.Locator("#cure-liquid-fault")).ToHaveTextAsync("Write how much liquid there is.");
    }

    private static ILocator Level(Bench bench, string id) => bench.Page.Locator($"#cure-outcome [data-limit={id}]");

    private static async Task AddAsync(Bench bench, int row, string ingredient, string amount, bool isTarget = false)
    {
        await bench.Page.Locator("#cure-lines").ClickAsync();
        await bench.Page.Locator($"#cure-ingredient-{row}").SelectOptionAsync(ingredient);
        if (isTarget)
        {
            await bench.Page.Locator($"#cure-how-{row}").SelectOptionAsync("target");
        }

        await bench.Page.Locator($"#cure-amount-{row}").FillAsync(amount);
    }

    private static async Task AssertFaultsAsync(Bench bench, (string Field, string Fault)[] faults)
    {
        foreach (var (field, fault) in faults)
        {
            await Expect(bench.Page.Locator($"#cure-{field}-fault")).ToContainTextAsync(fault);
        }
    }
}
