using System.Text.RegularExpressions;
using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class PeopleTests(Published published)
{
    private const string Plan = """
        { "guests": [ { "appetite": "ordinary", "count": 40 } ], "reserve": { "value": 10, "unit": "%" }, "buyFor": "typical", "boughtIn": "lb",
          "menu": [ { "id": "pork-shoulder", "cut": "pork-shoulder", "share": { "value": 60, "unit": "%" },
                      "price": { "amount": 6.9, "currency": "EUR", "per": { "value": 1, "unit": "lb" } }, "formulas": [ { "formulaId": "lockside-dry-brine" } ] },
                    { "id": "beef-brisket", "cut": "beef-brisket", "share": { "value": 40, "unit": "%" } } ] }
        """;

    private static readonly (string Field, string Written, string Said)[] Unbelievable =
    [
        ("people-ordinary", "0", "Nobody comes: write how many."),
        ("people-ordinary", "0.5", "“0.5” is not a whole number."),
        ("people-ordinary", "2000000", "2000000 is out of range: from 1 to 1000000 guests."),
        ("people-price-0", "-5", "-5 is out of range: from 0 up to 1000000000."),
        ("people-price-0", "$5", "“$5” names another currency than EUR. All prices are in one."),
        ("people-price-0", "6.90 usd", "“6.90 usd” names another currency than EUR. All prices are in one."),
        ("people-price-0", "cheap", "“cheap” is not a number."),
        ("people-currency", "XXL", "'XXL' is not a currency code of ISO 4217, such as EUR or USD."),
        ("people-share-0", "50", "The shares sum to 90 %, not to 100."),
        ("people-reserve", "-5", "“-5” cannot be read as an amount."),
        ("people-trim-0", "100", "out of range"),
        ("people-piece-0", "0", "out of range"),
        ("pack-size-0", "0", "out of range"),
        ("pack-price-0", "-1", "out of range"),
        ("pack-price-0", "£1", "“£1” names another currency than EUR."),
        ("pack-stock-0", "some", "“some” cannot be read as an amount."),
    ];

    [RequiresChromiumFact]
    public async Task A_plan_agrees_with_the_server_and_so_do_its_shopping_list_and_its_portions()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Agreement.AssertAsync(bench, published.Server, "planPurchase", "v1/purchase-plans", Plan, "lockside-dry-brine");
        await Agreement.AssertAsync(
            bench, published.Server, "listShopping", "v1/shopping-lists",
            $$"""
            { "purchasePlans": [ {{Plan}} ], "packs": [ { "ingredient": "salt", "form": "table", "size": { "value": 1, "unit": "kg" }, "price": { "amount": 1.2, "currency": "EUR" } } ],
              "stock": [ { "ingredient": "salt", "form": "table", "amount": { "value": 0.25, "unit": "cup" } } ] }
            """,
            "lockside-dry-brine");
        await Agreement.AssertAsync(
            bench, published.Server, "countPortions", "v1/portion-counts",
            """
            { "pile": [ { "cut": "beef-brisket", "count": 3, "totalWeight": { "value": 38.7, "unit": "lb" }, "weightIs": "purchase" },
                        { "cut": "chicken-leg", "pieces": [ { "weight": { "value": 310, "unit": "g" } } ] } ], "appetite": "hearty", "paid": { "amount": 180, "currency": "EUR" } }
            """);
    }

    [RequiresChromiumFact]
    public async Task A_plan_goes_to_the_bench_as_bought_and_what_stood_there_can_be_had_back()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(published.ExampleFormula, "lamb-shoulder", "10 kg");
        await Filled.PeopleAsync(bench);
        await Expect(bench.Page.Locator("#people-outcome .buys > li")).ToHaveCountAsync(2);
        await Expect(bench.Page.Locator("#people-outcome")).ToContainTextAsync("Left over:");
        await bench.Page.Locator("#people-take").ClickAsync();

        await Expect(bench.Page.Locator("#cut-0")).ToHaveValueAsync("pork-shoulder");
        await Expect(bench.Page.Locator("#pile-0")).ToHaveValueAsync("2 x 14.00\u00a0lb");
        await Expect(bench.Page.Locator("#sheet-body")).ToContainTextAsync("A plan: the trim loss is not known yet.");
        await bench.Page.Locator("#notices").GetByText("Take it back").ClickAsync();
        await Expect(bench.Page.Locator("#cut-0")).ToHaveValueAsync("lamb-shoulder");
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("220\u00a0g");
    }

    [RequiresChromiumFact]
    public async Task Trimmed_weights_take_the_place_of_planned_ones_line_by_line_and_the_plan_becomes_a_sheet()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.PeopleAsync(bench);
        await bench.Page.Locator("#people-take").ClickAsync();
        await Expect(bench.Page.Locator("#planned-0")).ToHaveTextAsync("Planned: 2 x 14.00\u00a0lb as bought.");
        await bench.Page.GetByLabel("Write trimmed weights: Pork shoulder").ClickAsync();
        await Expect(bench.Page.Locator("#pile-0")).ToBeFocusedAsync();
        await bench.Page.Locator("#pile-0").FillAsync("6 kg");
        await Expect(bench.Page.Locator("#planned-0")).ToHaveTextAsync("Planned: 2 x 14.00\u00a0lb as bought. 1 trimmed piece of 2 is written.");
        await Expect(bench.Page.Locator("#sheet-body")).ToContainTextAsync("A plan:");
        await bench.ReloadAsync();
        await bench.Page.Locator("#pile-0").FillAsync("6 kg\n5 kg");
        await Expect(bench.Page.Locator("#planned-0")).ToContainTextAsync("2 trimmed pieces of 2 are written.");
        await bench.Page.Locator("#swap-1").ClickAsync();
        await bench.Page.Locator("#pile-1").FillAsync("9 kg");

        // 20 kg at 13.5 g/kg.
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("270\u00a0g");
        await Expect(bench.Page.Locator("#sheet-body")).Not.ToContainTextAsync("A plan:");
        await bench.Page.GetByLabel("Back to the planned weights: Pork shoulder").ClickAsync();
        await Expect(bench.Page.Locator("#pile-0")).ToHaveValueAsync("2 x 14.00\u00a0lb");
        await Expect(bench.Page.Locator("#sheet-body")).ToContainTextAsync("A plan:");
    }

    [RequiresChromiumTheory]
    [InlineData("lb", "28.0\u00a0lb in all; one weighs 8.0 – 20.0\u00a0lb.", "[0-9]\\s(kg|g)\\b", "6.1\u00a0oz of cooked meat")]
    [InlineData("kg", "12.7\u00a0kg in all; one weighs 3.6 – 9.1\u00a0kg.", "[0-9]\\s(lb|oz)\\b", "174\u00a0g of cooked meat")]
    public async Task Every_weight_is_in_the_kitchens_own_unit_and_what_is_uncertain_is_drawn(string unit, string bought, string other, string portion)
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.GoAsync("own");
        await bench.Page.Locator("#own-bareUnit").SelectOptionAsync(unit);
        await Filled.PeopleAsync(bench);
        var outcome = bench.Page.Locator("#people-outcome");
        await Expect(outcome.Locator(".buys > li")).ToHaveCountAsync(2);
        await Expect(outcome).ToContainTextAsync(bought);
        await Expect(outcome).ToContainTextAsync(portion);
        var said = await outcome.InnerTextAsync();
        Assert.DoesNotMatch(other, said.Replace(portion, "", StringComparison.Ordinal));
        Assert.DoesNotContain("pork-shoulder", said, StringComparison.Ordinal);

        var bands = await outcome.Locator(".buys > li").First.Locator("svg").EvaluateAllAsync<string[]>("all => all.map(svg => svg.getAttribute('aria-label'))");
        Assert.Collection(
            bands, label => Assert.StartsWith("Pieces: ", label, StringComparison.Ordinal), label => Assert.StartsWith("Portions: ", label, StringComparison.Ordinal),
            label => Assert.StartsWith("Left over: ", label, StringComparison.Ordinal));
    }

    [RequiresChromiumFact]
    public async Task A_pile_is_reckoned_back_to_whom_it_feeds()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.GoAsync("people");
        await bench.Page.Locator("#feeds-weights").FillAsync("3 x 5,85 kg");
        await Expect(bench.Page.Locator("#feeds-cut-fault")).ToHaveTextAsync("Choose the cut of these pieces.");
        await bench.Page.Locator("#feeds-cut").SelectOptionAsync("beef-brisket");
        await bench.Page.Locator("#feeds-paid").FillAsync("180 EUR");
        await Expect(bench.Page.Locator("#feeds-paid-fault")).ToHaveTextAsync("Name the currency of the prices.");
        await bench.Page.Locator("#people-currency").FillAsync("eur");

        // The trade's three whole briskets for fifty.
        await Expect(bench.Page.Locator("#feeds-outcome .result")).ToHaveTextAsync("50 portions");
        await Expect(bench.Page.Locator("#feeds-outcome svg")).ToHaveAttributeAsync("aria-label", new Regex("^Portions: "));
        await Expect(bench.Page.Locator("#feeds-cost")).ToContainTextAsync("It costs €180.00: €3.60 a portion, €60.00 a piece");
        await bench.Page.Locator("#feeds-appetite").SelectOptionAsync("hearty");
        await Expect(bench.Page.Locator("#feeds-outcome .result")).Not.ToHaveTextAsync("50 portions");
        await bench.Page.Locator("#feeds-portion").FillAsync("100 kg");
        await Expect(bench.Page.Locator("#feeds-portion-fault")).ToContainTextAsync("out of range");
        await bench.Page.Locator("#feeds-portion").FillAsync("");

        await bench.Page.Locator("#feeds-of").SelectOptionAsync("bench");
        await Expect(bench.Page.Locator("#feeds-outcome")).ToHaveTextAsync("There is no pile on the bench yet.");
        await bench.GoAsync("bench");
        await bench.Page.Locator("#cut-0").SelectOptionAsync("beef-brisket");
        await bench.Page.Locator("#pile-0").FillAsync("2 x 5 kg");
        await bench.GoAsync("people");
        await Expect(bench.Page.Locator("#feeds-outcome .result")).ToContainTextAsync("portions");
        await Expect(bench.Page.Locator("#feeds-weights")).ToBeHiddenAsync();
        await bench.ReloadAsync();
        await Expect(bench.Page.Locator("#feeds-of")).ToHaveValueAsync("bench");
    }

    [RequiresChromiumFact]
    public async Task Packs_stock_and_prices_are_counted_for_the_sheet_on_the_bench_and_the_form_outlives_a_reload()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", "100 kg");
        await bench.GoAsync("own");
        await bench.Page.Locator("#own-currency").SelectOptionAsync("EUR");
        await bench.GoAsync("people");
        await Expect(bench.Page.Locator("#people-currency-hint")).ToContainTextAsync("Empty: EUR, as set in Own numbers.");

        // 100 kg at 22 g/kg and 5 % over: 2,310 g, two parts of five of it salt.
        await Expect(bench.Page.Locator("#shopping-amount-0")).ToHaveTextAsync("Buy 924\u00a0g");
        await Expect(bench.Page.Locator("#shopping-needed-0")).ToHaveTextAsync(new Regex("^Needed: 924.g, [0-9/ ]+cup"));
        await bench.Page.Locator("#pack-size-0").FillAsync("500 g");
        await bench.Page.Locator("#pack-price-0").FillAsync("1,20");
        await Expect(bench.Page.Locator("#shopping-amount-0")).ToHaveTextAsync("Buy 2 packs of 500\u00a0g, 76\u00a0g left over, €2.40");
        await bench.Page.Locator("#people-portions").FillAsync("600");
        await Expect(bench.Page.Locator("#shopping-used")).ToHaveTextAsync("What goes into it costs €2.22: €0.00 a portion, €2.22 a piece, €0.01 a lb of meat.");
        await bench.Page.Locator("#pack-stock-0").FillAsync("450 g");
        await Expect(bench.Page.Locator("#shopping-amount-0")).ToHaveTextAsync("Buy 1 pack of 500\u00a0g, 26\u00a0g left over, €1.20");
        await bench.Page.Locator("#pack-stock-0").FillAsync("1 kg");
        await Expect(bench.Page.Locator("#shopping-amount-0")).ToHaveTextAsync("Enough on hand");
        await bench.Page.Locator("#pack-stock-0").FillAsync("");
        await bench.Page.Locator("#people-small").FillAsync("many");
        await Expect(bench.Page.Locator("#people-small-fault")).ToHaveTextAsync("“many” is not a whole number.");
        await bench.ReloadAsync();

        await Expect(bench.Page.Locator("#people-small")).ToHaveValueAsync("many");
        await Expect(bench.Page.Locator("#pack-size-0")).ToHaveValueAsync("500 g");
        await Expect(bench.Page.Locator("#shopping-outlay")).ToHaveTextAsync("At the till: €2.40.");
    }

    [RequiresChromiumFact]
    public async Task One_list_is_made_over_several_sheets_and_a_plan_and_prints()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", "100 kg");
        await bench.GoAsync("people");
        await bench.Page.Locator("#shopping-keep").ClickAsync();
        await Expect(bench.Page.Locator("#shopping-of")).ToContainTextAsync("The sheet on the bench is on the list.");
        await Expect(bench.Page.Locator("#shopping-amount-0")).ToHaveTextAsync("Buy 924\u00a0g");
        await bench.GoAsync("bench");
        await bench.Page.Locator("#pile-0").FillAsync("50 kg");
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("1,100\u00a0g");
        await bench.ReloadAsync();
        await bench.GoAsync("people");
        await Expect(bench.Page.Locator("#shopping-amount-0")).ToHaveTextAsync("Buy 1.39\u00a0kg");
        await bench.Page.Locator("#shopping-bench").UncheckAsync();
        await Expect(bench.Page.Locator("#shopping-amount-0")).ToHaveTextAsync("Buy 924\u00a0g");

        await Filled.MenuAsync(bench);
        await Expect(bench.Page.Locator("#shopping-meat li")).ToHaveTextAsync([new Regex("^Pork shoulder 2 pieces, 28[.]0.lb"), new Regex("^Beef brisket 2 pieces, 25[.]8.lb")]);
        await Expect(bench.Page.Locator("#shopping-items li")).ToHaveCountAsync(2);
        await bench.Page.Locator("#shopping-mixes").CheckAsync();
        await Expect(bench.Page.Locator("#shopping-items li")).ToHaveCountAsync(4);
        await bench.Page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Print });
        await Expect(bench.Page.Locator(".shopping-page")).ToBeVisibleAsync();
        await Expect(bench.Page.Locator("#people-ordinary")).ToBeHiddenAsync();
        await Expect(bench.Page.Locator(".shopping-page tbody tr")).ToHaveCountAsync(6);
        await Expect(bench.Page.Locator(".shopping-page tbody tr").First).ToContainTextAsync("2 pieces, 28.0\u00a0lb");
        await bench.Page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Screen });

        await bench.Page.GetByLabel(new Regex("^Take off the list: Two and three: 1 piece")).ClickAsync();
        await Expect(bench.Page.Locator("#shopping-items li")).ToHaveCountAsync(3);
    }

    [RequiresChromiumFact]
    public async Task What_cannot_be_is_said_beside_its_field_and_nothing_written_is_lost()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.PeopleAsync(bench);
        await bench.Page.GetByText("What you know of this meat").First.ClickAsync();
        await bench.Page.Locator("#pack-size-0").FillAsync("500 g");
        foreach (var (field, written, said) in Unbelievable)
        {
            await Expect(bench.Page.Locator("#shopping-amount-0")).ToContainTextAsync("pack");
            await Expect(bench.Page.Locator("#people-take")).ToBeVisibleAsync();
            var input = bench.Page.Locator($"#{field}");
            var before = await input.InputValueAsync();
            await input.FillAsync(written);

            await Expect(bench.Page.Locator($"#{field}-fault")).ToContainTextAsync(said);
            await Expect(input).ToHaveAttributeAsync("aria-invalid", "true");
            if (field.StartsWith("people", StringComparison.Ordinal))
            {
                await Expect(bench.Page.Locator("#people-outcome")).ToHaveTextAsync("Mend what is marked to see what to buy.");
            }

            await input.FillAsync(before);
            await Expect(bench.Page.Locator($"#{field}-fault")).ToBeEmptyAsync();
        }

        await bench.Page.Locator("#pack-price-0").FillAsync("cheap");
        await bench.Page.Locator("#people-trim-0").FillAsync("much");
        await bench.ReloadAsync();
        await Expect(bench.Page.Locator("#people-trim-0")).ToHaveValueAsync("much");
        await bench.Page.Locator("#people-trim-0").FillAsync("");
        await Expect(bench.Page.Locator("#pack-price-0")).ToHaveValueAsync("cheap");
    }

    [RequiresChromiumFact]
    public async Task What_the_cook_knows_of_the_meat_takes_the_place_of_what_is_assumed()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await Filled.PeopleAsync(bench);
        await Expect(bench.Page.Locator("#people-outcome .findings")).ToContainTextAsync("Pork shoulder: a piece is taken as 14 lb");
        await bench.Page.GetByText("What you know of this meat").First.ClickAsync();
        await bench.Page.Locator("#people-piece-0").FillAsync("7 lb");
        await bench.Page.Locator("#people-trim-0").FillAsync("8,5 %");
        await bench.Page.Locator("#people-method-0").SelectOptionAsync("roasted");

        await Expect(bench.Page.Locator("#people-outcome .findings")).Not.ToContainTextAsync("Pork shoulder: a piece is taken as");
        await Expect(bench.Page.Locator("#people-outcome .findings")).Not.ToContainTextAsync("Pork shoulder: trim is taken as");
        await Expect(bench.Page.Locator("#people-outcome .findings")).ToContainTextAsync("Pork shoulder: cooking yield is taken as 73.8 %");
        await Expect(bench.Page.Locator("#people-outcome .buys > li").First).ToContainTextAsync("one weighs 7.0\u00a0lb.");
    }
}
