using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class LiquidTests(Published published)
{
    [RequiresChromiumFact]
    public async Task An_injection_to_a_target_is_computed_without_the_server_and_as_the_server_does()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.WaitUntilKeptAsync();
        await bench.Page.Context.SetOfflineAsync(true);
        await Filled.BrineAsync(bench);

        // 12 g/kg of 6 kg is 72 g in the meat; a tenth pumped and nine tenths kept is 540 g, so 13.33 % of the liquid's weight.
        await Expect(bench.Page.Locator("#screen-brine .result .figure").Nth(1)).ToHaveTextAsync("3.300\u00a0kg");
        await Expect(bench.Page.Locator("#screen-brine td.figure")).ToHaveTextAsync(["2,002\u00a0g", "313\u00a0g"]);
        await Expect(bench.Page.Locator("#screen-brine .bands .figure").First).ToHaveTextAsync("12\u00a0g/kg");
        await Expect(bench.Page.Locator("#screen-brine .cautions")).ToContainTextAsync("no longer whole inside");
        await bench.Page.Context.SetOfflineAsync(false);
        await Agreement.AssertAsync(bench, published.Server, "computeBrine", "v1/brines", """
            { "kind": "injection", "cut": "pork-shoulder", "meat": { "value": 6, "unit": "kg" }, "pieces": 2, "dose": { "value": 10, "unit": "%" },
              "retained": { "value": 90, "unit": "%" }, "temperature": { "value": 4, "unit": "C" },
              "lines": [ { "ingredient": "water", "amount": { "value": 2, "unit": "L" } }, { "ingredient": "salt", "form": "table" } ],
              "targets": [ { "ingredient": "sodium-chloride", "reached": { "value": 12, "unit": "g/kg" } } ] }
            """);
    }

    [RequiresChromiumFact]
    public async Task Each_piece_is_pumped_to_a_weight_of_its_own()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.BrineAsync(bench);
        await bench.Page.Locator("#brine-meat").FillAsync("3 kg\n2,5 kg\n12 lb");
        await Expect(bench.Page.Locator("#brine-meat-fault")).Not.ToBeEmptyAsync();
        await bench.Page.Locator("#brine-meat").FillAsync("3 kg\n2,5 kg");

        await Expect(bench.Page.Locator("#brine-target-weight")).ToHaveTextAsync("Pump each piece until it weighs");
        await Expect(bench.Page.Locator("#brine-outcome .pieces .figure")).ToHaveTextAsync(["3.300\u00a0kg", "2.750\u00a0kg"]);
        // A tenth pumped, of which nine tenths stay.
        await Expect(bench.Page.Locator("#brine-outcome .pieces li").Last).ToContainTextAsync("drained 2.73\u00a0kg");
        await bench.Page.Locator("#brine-meat").FillAsync("10 lb\n8 lb 12 oz");
        await Expect(bench.Page.Locator("#brine-outcome .pieces .figure")).ToHaveTextAsync(["11.00\u00a0lb", "9\u00a0lb\u00a010.0\u00a0oz"]);
        await Expect(bench.Page.Locator("#brine-outcome .pieces li").First).ToContainTextAsync("drained 10.9\u00a0lb");
        await Agreement.AssertAsync(bench, published.Server, "computeBrine", "v1/brines", """
            { "kind": "injection", "cut": "pork-shoulder", "pieceWeights": [ { "value": 3, "unit": "kg" }, { "value": 2500, "unit": "g" } ], "dose": { "value": 10, "unit": "%" },
              "retained": { "low": 80, "typical": 90, "high": 100, "unit": "%" }, "temperature": { "value": 4, "unit": "C" },
              "lines": [ { "ingredient": "water" }, { "ingredient": "salt", "form": "table", "amount": { "value": 8, "unit": "%-of-liquid" } } ] }
            """);
    }

    [RequiresChromiumFact]
    public async Task Each_screen_says_which_unit_a_number_alone_is_in()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        (string Screen, string Field)[] fields = [("brine", "brine-meat"), ("cure", "cure-meat"), ("sauce", "sauce-make"), ("time", "time-weight"), ("people", "feeds-weights")];
        foreach (var unit in (string[])["lb", "kg"])
        {
            await bench.GoAsync("own");
            await bench.Page.Locator("#own-bareUnit").SelectOptionAsync(unit);
            foreach (var (screen, field) in fields)
            {
                await bench.GoAsync(screen);
                await Expect(bench.Page.Locator($"#{field}-hint")).ToContainTextAsync($"A number alone is in {unit}.");
            }
        }

        await bench.GoAsync("brine");
        await bench.Page.Locator("#brine-meat").FillAsync("8,2\n7.5");
        await bench.Page.Locator("#brine-amount-0").FillAsync("2 L");
        await bench.Page.Locator("#brine-amount-1").FillAsync("120 g");
        await Expect(bench.Page.Locator("#brine-outcome .weighing")).ToContainTextAsync("For 15.7\u00a0kg of meat.");
    }

    [RequiresChromiumFact]
    public async Task A_soak_keeps_what_was_written_and_faults_stand_beside_their_field()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.GoAsync("brine");
        await bench.Page.Locator("#brine-kind").SelectOptionAsync("soak");
        await bench.Page.Locator("#brine-cut").SelectOptionAsync("chicken-leg");
        await bench.Page.Locator("#brine-meat").FillAsync("3 kg");
        await bench.Page.Locator("#brine-liquid").FillAsync("4,5 l");
        await bench.Page.Locator("#brine-time").FillAsync("12 hours");
        await bench.Page.Locator("#brine-amount-1").FillAsync("6 %");
        await Expect(bench.Page.Locator("#brine-soak")).ToBeVisibleAsync();
        await bench.Page.Locator("#brine-temperature").FillAsync("4");
        await Expect(bench.Page.Locator("#brine-temperature-fault")).ToHaveTextAsync("“4” names no unit.");
        await bench.Page.Locator("#brine-temperature").FillAsync("60 C");
        await Expect(bench.Page.Locator("#brine-temperature-fault")).ToContainTextAsync("out of range");
        await bench.ReloadAsync();

        await Expect(bench.Page.Locator("#brine-liquid")).ToHaveValueAsync("4,5 l");
        await Expect(bench.Page.Locator("#brine-temperature")).ToHaveValueAsync("60 C");
        await Expect(bench.Page.Locator("#brine-amount-1")).ToHaveValueAsync("6 %");
        await Agreement.AssertAsync(bench, published.Server, "computeBrine", "v1/brines", """
            { "kind": "soak", "cut": "chicken-leg", "meat": { "value": 3, "unit": "kg" }, "liquid": { "value": 4.5, "unit": "L" }, "time": { "value": 12, "unit": "h" },
              "lines": [ { "ingredient": "water" }, { "ingredient": "salt", "form": "table", "amount": { "value": 6, "unit": "%-of-liquid" } } ] }
            """);
    }

    [RequiresChromiumFact]
    public async Task A_sauce_shows_the_weight_to_boil_down_to_and_keeps_its_form()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.SauceAsync(bench);

        // 2 kg at 75 % left: 2,667 g go in and 667 g boil off.
        await Expect(bench.Page.Locator("#screen-sauce .result .figure")).ToHaveTextAsync("2.000\u00a0kg");
        await Expect(bench.Page.Locator("#sauce-weigh")).ToContainTextAsync("2.667\u00a0kg");
        await Expect(bench.Page.Locator("#screen-sauce")).ToContainTextAsync("667\u00a0g of water boils off");
        await bench.Page.Locator("#sauce-reduce").FillAsync("2");
        await Expect(bench.Page.Locator("#sauce-reduce-fault")).ToContainTextAsync("Only water boils off");
        await bench.ReloadAsync();
        await Expect(bench.Page.Locator("#sauce-reduce")).ToHaveValueAsync("2");
        await Agreement.AssertAsync(bench, published.Server, "computeSauce", "v1/sauces", """
            { "formulaId": "lockside-basin-table-sauce", "make": { "value": 2, "unit": "kg" }, "reduce": { "left": { "value": 75, "unit": "%" } }, "portion": { "value": 2, "unit": "tbsp" } }
            """, "lockside-basin-table-sauce");
    }

    [RequiresChromiumFact]
    public async Task Pieces_weighed_back_take_the_place_of_the_estimate()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.BrineAsync(bench);
        await bench.ClickAsync("Weighed back after pumping");
        await bench.Page.Locator("#brine-pumped").FillAsync("3.28 kg\n3,31 kg");
        await bench.Page.Locator("#brine-drained").FillAsync("6450 g");

        // 590 of 6 000 g went in and 450 stay.
        await Expect(bench.Page.Locator("#brine-by-scale")).ToHaveTextAsync("By your scale 9.83 % went in, and 76.3 % of it stays.");
        await Expect(bench.Page.Locator("#screen-brine .result .figure").Nth(1)).ToHaveTextAsync("3.295 kg");
        await bench.Page.Locator("#brine-pumped").FillAsync("5 kg");
        await Expect(bench.Page.Locator("#brine-pumped-fault")).ToContainTextAsync("not above the green weight");
        await bench.ReloadAsync();
        await Expect(bench.Page.Locator("#brine-pumped")).ToHaveValueAsync("5 kg");
        await Expect(bench.Page.Locator("#brine-pumped")).ToBeVisibleAsync();
        await Agreement.AssertAsync(bench, published.Server, "computeBrine", "v1/brines", """
            { "kind": "injection", "cut": "pork-shoulder", "meat": { "value": 6, "unit": "kg" }, "pieces": 2, "dose": { "value": 10, "unit": "%" }, "loss": { "value": 5, "unit": "%" },
              "weighedBack": { "green": { "value": 6, "unit": "kg" }, "pumped": { "value": 6590, "unit": "g" }, "drained": { "value": 6450, "unit": "g" } },
              "lines": [ { "ingredient": "water" }, { "ingredient": "salt", "form": "table", "amount": { "value": 8, "unit": "%-of-liquid" } } ] }
            """);
    }

    [RequiresChromiumFact]
    public async Task What_stays_may_be_a_band_and_loss_is_made_besides()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.BrineAsync(bench);
        await bench.Page.Locator("#brine-retained").FillAsync("80 - 90 – 100 %");
        await bench.Page.Locator("#brine-target").FillAsync("");
        await bench.Page.Locator("#brine-amount-0").FillAsync("");
        await bench.Page.Locator("#brine-amount-1").FillAsync("8 %");
        await bench.Page.Locator("#brine-loss").FillAsync("5");

        // 600 g are needed: 631.6 of which a twentieth stays behind.
        await Expect(bench.Page.Locator("#brine-weigh ~ p >> nth=1")).ToContainTextAsync("Make 631.6 g");
        await Expect(bench.Page.Locator("#screen-brine .weighing .hint").First).ToContainTextAsync("600 g, about");
        await Expect(bench.Page.Locator("#brine-outcome .bands .figure").First).ToHaveTextAsync("6.31 – 7.88 g/kg");
        await Expect(bench.Page.Locator("#brine-outcome .bands .band-line").First).ToHaveAttributeAsync("aria-label", "Salt in a kilogram of green meat: 6.31 to 7.88\u00a0g/kg, typically 7.09\u00a0g/kg");
        await bench.Page.Locator("#brine-retained").FillAsync("most of it");
        await Expect(bench.Page.Locator("#brine-retained-fault")).ToHaveTextAsync("“most of it” is no part in %. Write one figure, or 80 - 100, or 80 - 90 - 100.");
    }

    [RequiresChromiumFact]
    public async Task Salt_that_does_not_dissolve_and_a_target_out_of_reach_are_told_with_the_reason()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.BrineAsync(bench);
        await bench.Page.Locator("#brine-kind").SelectOptionAsync("soak");
        await bench.Page.Locator("#brine-liquid").FillAsync("6");
        await bench.Page.Locator("#brine-time").FillAsync("24");
        await bench.Page.Locator("#brine-amount-0").FillAsync("");
        await bench.Page.Locator("#brine-target").FillAsync("9");
        await Expect(bench.Page.Locator("#brine-soak + dl .band-line")).ToHaveCountAsync(3);

        await bench.Page.Locator("#brine-target").FillAsync("60");
        await Expect(bench.Page.Locator("#brine-target-fault")).ToContainTextAsync("Use more liquid, more time, or thinner pieces.");
        await bench.Page.Locator("#brine-target").FillAsync("");
        await bench.Page.Locator("#brine-amount-1").FillAsync("30 %");
        await Expect(bench.Page.Locator("#brine-lines-fault")).ToContainTextAsync("at 4 C no more than 26.32 % dissolves");
        await bench.Page.Locator("#brine-amount-1").FillAsync("6 %");
        await bench.ClickAsync("The pieces and the vessel");
        await bench.Page.Locator("#brine-thickness").FillAsync("6");
        await Expect(bench.Page.Locator("#brine-thickness-fault")).ToHaveTextAsync("“6” names no unit.");
        await bench.Page.Locator("#brine-thickness").FillAsync("6 cm");
        await Expect(bench.Page.Locator("#brine-soak")).ToBeVisibleAsync();
    }

    [RequiresChromiumFact]
    public async Task A_cure_in_a_brine_needs_its_pack_is_held_to_its_level_and_never_rounded_up()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.BrineAsync(bench);
        await bench.Page.Locator("#brine-target").FillAsync("");
        await bench.Page.Locator("#brine-amount-0").FillAsync("");
        await bench.Page.Locator("#brine-amount-1").FillAsync("8 %");
        await bench.Page.Locator("#brine-lines").ClickAsync();
        await bench.Page.Locator("#brine-ingredient-2").SelectOptionAsync("cure-6-25");
        await bench.Page.Locator("#brine-amount-2").FillAsync("2 %");
        await Expect(bench.Page.Locator("#brine-nitrite-2-fault")).ToHaveTextAsync("Write what its pack declares. It is never assumed.");
        await bench.Page.Locator("#brine-nitrite-2").FillAsync("6.25");

        // 2 % of 6.25 % by a tenth is 125 ppm: 5 too much of 6 kg is 0.03 g.
        await Expect(bench.Page.Locator("#brine-amount-2-fault")).ToHaveTextAsync("Nitrite of pumped bacon: 125 ppm in all, and 120 ppm is the most. Over by 5 ppm: 0.03 g of nitrite too much.");
        await Expect(bench.Page.Locator("#brine-refused")).ToBeVisibleAsync();
        await bench.Page.Locator("#screen-brine summary").Last.ClickAsync();
        await bench.Page.Locator("#brine-product").SelectOptionAsync("cooked-ham");
        await Expect(bench.Page.Locator("#brine-outcome [data-limit=nitrite-injection] .verdict")).ToContainTextAsync("Inside: 125 ppm; 200 ppm at most");

        // 2.43 % of 600 g is 14.58 g.
        await bench.Page.Locator("#brine-amount-2").FillAsync("2.43 %");
        await Expect(bench.Page.Locator("#brine-outcome td.figure").Nth(2)).ToHaveTextAsync("14.5 g");
        await Expect(bench.Page.Locator("#brine-outcome .weighing a")).ToHaveAttributeAsync("href", "#/cure");
    }

    [RequiresChromiumFact]
    public async Task A_sauce_is_made_for_portions_and_takes_the_juices_of_the_meat()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.GoAsync("sauce");
        await bench.Page.Locator("#sauce-formula").SelectOptionAsync("lockside-basin-table-sauce");
        await bench.Page.Locator("#sauce-portions").FillAsync("40");
        await Expect(bench.Page.Locator("#sauce-portion-fault")).ToHaveTextAsync("Write what one portion is.");
        await bench.Page.Locator("#sauce-portion").FillAsync("30 mL");
        await bench.Page.Locator("#sauce-density").FillAsync("1,1");

        // 40 x 30 mL x 1.1 g/mL.
        await Expect(bench.Page.Locator("#screen-sauce .result .figure")).ToHaveTextAsync("1.320 kg");
        await bench.Page.Locator("#sauce-juices").FillAsync("680 g");
        await bench.Page.Locator("#sauce-juicesSalt").FillAsync("1 %");
        // The juices are part of what is wanted: 6.8 g of salt in 1.32 kg, and of the card 640 g.
        await Expect(bench.Page.Locator("#screen-sauce tbody tr").Last.Locator("td")).ToHaveTextAsync(["680 g", "5.15 g/kg"]);
        await Expect(bench.Page.Locator("#screen-sauce .result .figure")).ToHaveTextAsync("1.320 kg");
        await Expect(bench.Page.Locator("#sauce-said")).ToHaveTextAsync("The pot holds 1.320 kg.");
        await bench.Page.Locator("#sauce-reduce").FillAsync("80");
        await Expect(bench.Page.Locator("#screen-sauce .result .figure")).ToHaveTextAsync("1.320 kg");
        await Expect(bench.Page.Locator("#sauce-weigh")).ToHaveTextAsync("Into the pot: 1.650 kg");
        await bench.Page.Locator("#sauce-reduce").FillAsync("");
        await bench.Page.Locator("#sauce-juices").FillAsync("1.5 kg");
        await Expect(bench.Page.Locator("#sauce-juices-fault")).ToHaveTextAsync("The juices alone come to more than the sauce that is wanted.");
        await bench.Page.Locator("#sauce-juices").FillAsync("680 g");
        await bench.Page.Locator("#sauce-juicesSalt").FillAsync("101");
        await Expect(bench.Page.Locator("#sauce-juicesSalt-fault")).ToContainTextAsync("out of range");
        await Agreement.AssertAsync(bench, published.Server, "computeSauce", "v1/sauces", """
            { "formula": { "name": "Pot", "kind": "sauce", "lines": [ { "ingredient": "tomato-puree-no-salt", "amount": { "value": 660, "unit": "g" } },
              { "ingredient": "cooking-juices", "salt": { "low": 0.8, "typical": 1.1, "high": 1.4, "unit": "%" }, "amount": { "value": 600, "unit": "g" } } ] },
              "reduce": { "solids": { "value": 9, "unit": "%" } }, "portion": { "value": 2, "unit": "tbsp" }, "density": { "value": 1.1, "unit": "g/mL" } }
            """);
    }
}
