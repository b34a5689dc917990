using System.Text.Json;
using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

/// <summary>Injections, soaks and boiled sauces on the bench, in the weigh-out, on paper and on the formula's card.</summary>
[Collection(PublishedTests.Name)]
public sealed class LiquidBenchTests(Published published)
{
    private const string Injection = "lockside-lock-water-injection";
    private const string Soak = "lockside-towpath-bird-soak";

    [RequiresChromiumFact]
    public async Task An_injection_goes_into_each_piece_until_the_scale_shows_its_target()
    {
        await using var bench = await EnterAsync(Injection, "beef-brisket", "5 kg\n4 kg");

        await Expect(bench.Page.Locator(".totals dt")).ToHaveTextAsync(["To mix", "Into the meat"]);
        // 8 % of 5 and of 4 kg.
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("720 g");
        await Expect(bench.Page.Locator(".pieces h4")).ToHaveTextAsync("Into each piece");
        await Expect(bench.Page.Locator(".pieces .target")).ToHaveTextAsync(["until it weighs 5.400 kg", "until it weighs 4.320 kg"]);
        await Expect(bench.Page.Locator("#at-once")).ToHaveTextAsync("720 g into the meat, 756 g to mix");
        await bench.Page.Locator("#weigh-out").ClickAsync();

        Assert.Equal(
            ["Water 703 g", "Salt 38 g", "Brown sugar 15 g", "Mix it well 756 g", "Now the meat: Lockside lock-water injection", "Piece 1 5.400 kg", "Piece 2 4.320 kg"],
            await StepsAsync(bench));
        await Expect(bench.Page.Locator(".left")).ToHaveTextAsync("36 g of Lockside lock-water injection is left in the bowl.");
        await Expect(bench.Page.Locator(".stage")).ToContainTextAsync("is thrown away.");
        await Expect(bench.Page.Locator(".stage")).Not.ToContainTextAsync("may be used again");
    }

    // 8 % of 12 lb 8 oz make 13 lb 8 oz of it, of 10.5 lb 11.34 lb.
    [RequiresChromiumFact]
    public async Task A_piece_is_pumped_to_a_weight_of_the_scale_it_was_read_off()
    {
        await using var bench = await EnterAsync(Injection, "beef-brisket", "12 lb 8 oz\n10.5 lb\n5 kg");

        await Expect(bench.Page.Locator(".pieces .target")).ToHaveTextAsync(["until it weighs 13 lb 8.0 oz", "until it weighs 11.34 lb", "until it weighs 5.400 kg"]);
        await Expect(bench.Page.Locator(".summary")).ToContainTextAsync("3 pieces, 15.433 kg green");
        await bench.Page.Locator("#pile-0").FillAsync("12 lb 8 oz\n10.5 lb");
        await Expect(bench.Page.Locator(".summary")).ToContainTextAsync("2 pieces, 23.00 lb green");
        await bench.GoAsync("paper");
        await Expect(bench.Page.Locator(".on-pieces small")).ToHaveTextAsync(["12 lb 8 oz until it weighs 13 lb 8.0 oz", "10.5 lb until it weighs 11.34 lb"]);
        await bench.GoAsync("bench");
        await bench.Page.Locator("#weigh-out").ClickAsync();
        var steps = await StepsAsync(bench);
        Assert.Equal(["Piece 1 13 lb 8.0 oz", "Piece 2 11.34 lb"], steps[^2..]);
    }

    [RequiresChromiumFact]
    public async Task A_soak_lies_around_the_meat_without_cups_and_takes_its_time()
    {
        await using var bench = await EnterAsync(Soak, "chicken-whole", "2 kg\n1.5 kg");

        await Expect(bench.Page.Locator(".totals dt")).ToHaveTextAsync(["To mix", "Around the meat"]);
        await Expect(bench.Sheet).ToContainTextAsync("All pieces lie in it together, covered and cold.");
        await Expect(bench.Page.Locator(".pieces")).ToHaveCountAsync(0);
        await Expect(bench.Page.Locator(".findings")).ToContainTextAsync("counted as even");
        var even = await SaltAsync(bench);
        await bench.Page.Locator("#how-0").ClickAsync();
        await Expect(bench.Page.Locator("#retained-0")).ToBeHiddenAsync();
        await Expect(bench.Page.Locator("#applications-0")).ToBeHiddenAsync();
        await bench.Page.Locator("#time-0").FillAsync("4 h");
        await bench.Page.Locator("#temperature-0").FillAsync("39,2 F");
        await Expect(bench.Page.Locator("#how-0")).ToHaveTextAsync("for 4 h, at 39,2 F");
        await Expect(bench.Page.Locator(".findings")).Not.ToContainTextAsync("counted as even");
        Assert.True(await SaltAsync(bench) < even, "Four hours bring as much salt as lying until it is even.");

        await bench.Page.Locator("#time-0").FillAsync("soon");
        await Expect(bench.Page.Locator("#time-0-fault")).ToHaveTextAsync("“soon” is not a number.");
        await bench.Page.Locator("#time-0").FillAsync("4 h");
        await bench.Page.Locator("#temperature-0").FillAsync("90 C");
        await Expect(bench.Page.Locator("#temperature-0-fault")).ToContainTextAsync("40");
        await bench.Page.Locator("#temperature-0").FillAsync("");
        await bench.Page.Locator("#weigh-out").ClickAsync();
        var steps = await StepsAsync(bench);
        Assert.Equal(["Mix it well", "Now the meat: Lockside towpath bird soak"], steps.TakeLast(2).Select(s => s.Split(" 3,")[0]));
        Assert.DoesNotContain(steps, s => s.StartsWith("Cup", StringComparison.Ordinal));
    }

    [RequiresChromiumFact]
    public async Task What_stays_of_an_injection_may_be_a_band_and_is_never_guessed()
    {
        await using var bench = await EnterAsync(Injection, "beef-brisket", "5 kg");
        var all = await SaltAsync(bench);
        await bench.Page.Locator("#how-0").ClickAsync();
        await bench.Page.Locator("#retained-0").FillAsync("75 - 95 %");

        await Expect(bench.Page.Locator(".salt .bands dd").First.Locator(".band")).ToBeVisibleAsync();
        await Expect(bench.Page.Locator("#retained-0-fault")).ToBeEmptyAsync();
        await Expect(bench.Page.Locator("#how-0")).ToHaveTextAsync("75 - 95 % stays");
        // 85 % of all of it; the page shows three digits.
        Assert.Equal(0.85, await SaltAsync(bench) / all, 0.005);

        await bench.Page.Locator("#retained-0").FillAsync("most of it");
        await Expect(bench.Page.Locator("#retained-0-fault")).ToHaveTextAsync("“most of it” is no part in %. Write one figure, or 80 - 100, or 80 - 90 - 100.");
        await Expect(bench.Page.Locator(".salt")).ToHaveCountAsync(0);
        await Expect(bench.Sheet).ToContainTextAsync("Mend what is marked");
    }

    [RequiresChromiumFact]
    public async Task What_is_kept_for_another_kind_is_not_sent_and_not_lost()
    {
        await using var bench = await EnterAsync(published.ExampleFormula, "chicken-whole", "2 kg");
        await bench.Page.Locator("#how-0").ClickAsync();
        await bench.Page.Locator("#retained-0").FillAsync("90");
        await bench.Page.Locator("#formula-0").SelectOptionAsync(Soak);
        await Expect(bench.Page.Locator(".totals dt").Last).ToHaveTextAsync("Around the meat");
        await Expect(bench.Page.Locator(".fault:not(:empty)")).ToHaveCountAsync(0);
        await bench.Page.Locator("#formula-0").SelectOptionAsync(published.ExampleFormula);

        await Expect(bench.Page.Locator("#retained-0")).ToHaveValueAsync("90");
        await Expect(bench.Page.Locator("#how-0")).ToHaveTextAsync("90 % stays");
    }

    [RequiresChromiumFact]
    public async Task A_boiled_sauce_says_what_the_pot_weighs_when_it_is_done()
    {
        await using var server = await Server.StartAsync(published.Program);
        using var stored = await server.Http.PostAsync(new Uri("v1/formulas", UriKind.Relative), Json("""
            {"name":"Lock glaze","kind":"sauce","dose":{"value":50,"unit":"g/kg"},"reducedTo":{"value":75,"unit":"%"},
             "lines":[{"ingredient":"cooking-juices","amount":{"value":3,"unit":"parts-by-mass"},"salt":{"value":2.5,"unit":"%"} },
                      {"ingredient":"vinegar-cider","form":"liquid","amount":{"value":1,"unit":"parts-by-mass"} }] }
            """));
        Assert.True(stored.IsSuccessStatusCode, await stored.Content.ReadAsStringAsync());
        using var given = JsonDocument.Parse(await stored.Content.ReadAsStringAsync());
        var id = given.RootElement.GetProperty("id").GetString()!;
        await using var bench = await Bench.OpenAsync(published.Browser, server.Address);
        await bench.Page.Locator("#formula-0").SelectOptionAsync(id);
        await bench.Page.Locator("#cut-0").SelectOptionAsync("beef-brisket");
        await bench.Page.Locator("#pile-0").FillAsync("4 kg");

        await Expect(bench.Sheet).ToContainTextAsync("Boil it down until the pot holds 210 g");
        await bench.Page.Locator("#weigh-out").ClickAsync();
        Assert.Equal(["Meat juices from the cook 210 g", "Cider vinegar 70 g", "Mix it well 280 g", "Boil it down until the pot holds 210 g", "Cup 1 200 g", "Now the meat: Lock glaze"], await StepsAsync(bench));
        await Expect(bench.Page.Locator(".left")).ToHaveTextAsync("10 g of Lock glaze is left in the bowl.");
        await bench.GoAsync("paper");
        await Expect(bench.Page.Locator(".page")).ToContainTextAsync("Boil it down until the pot holds 210 g");

        // Nothing the card shows no field for, or shows in another way, is lost by saving it.
        await bench.GoAsync($"formula/{id}");
        await Expect(bench.Page.Locator("#reducedTo")).ToHaveValueAsync("75");
        await Expect(bench.Page.Locator("#salt-0")).ToHaveValueAsync("2.5");
        await bench.Page.Locator("#name").FillAsync("Lock glaze, darker");
        await bench.Page.Locator("#reducedTo").FillAsync("60");
        await bench.ClickAsync("Save as a revision");
        await Expect(bench.Page.Locator("#saved")).ToContainTextAsync("Saved as revision 2.");
        using var read = JsonDocument.Parse(await server.Http.GetStringAsync(new Uri($"v1/formulas/{id}", UriKind.Relative)));
        Assert.Equal(60, read.RootElement.GetProperty("reducedTo").GetProperty("value").GetDouble());
        Assert.Equal(2.5, read.RootElement.GetProperty("lines")[0].GetProperty("salt").GetProperty("typical").GetDouble());
    }

    [RequiresChromiumFact]
    public async Task A_liquid_is_adjusted_on_its_card_and_a_cure_keeps_what_its_pack_declares()
    {
        await using var server = await Server.StartAsync(published.Program);
        await using var bench = await Bench.OpenAsync(published.Browser, server.Address);
        await bench.GoAsync($"formula/{Injection}");
        await Expect(bench.Page.Locator("#amount-0")).ToHaveValueAsync("");
        await Expect(bench.Page.Locator("#unit-1")).ToHaveValueAsync("%-of-liquid");
        await bench.Page.Locator("#compare").SelectOptionAsync("stored");
        await Expect(bench.Page.Locator(".compare tbody")).ToContainTextAsync("the rest");
        await Expect(bench.Page.Locator(".compare tbody")).ToContainTextAsync("5 % of the liquid");
        await bench.Page.GetByLabel("the dose: the salt moves").CheckAsync();
        await bench.Page.Locator("#amount-1").FillAsync("6");
        await Expect(bench.Page.Locator("#changed")).ToContainTextAsync("salt");

        await bench.ClickAsync("Another ingredient");
        await bench.Page.Locator("#ingredient-3").SelectOptionAsync("curing-salt");
        await bench.Page.Locator("#amount-3").FillAsync("2");
        await Expect(bench.Page.Locator("#nitrite-3-fault")).Not.ToBeEmptyAsync();
        await bench.Page.Locator("#nitrite-3").FillAsync("120");
        await Expect(bench.Page.Locator("#nitrite-3-fault")).Not.ToBeEmptyAsync();
        await bench.Page.Locator("#nitrite-3").FillAsync("0,6");
        await Expect(bench.Page.Locator("#nitrite-3-fault")).ToContainTextAsync("could be 0.6 %, or 60 %");
        await bench.Page.Locator("#nitrite-3").FillAsync("0,6 %");
        await Expect(bench.Page.Locator("#nitrite-3-fault")).ToBeEmptyAsync();
        await bench.ReloadAsync();
        await Expect(bench.Page.Locator("#nitrite-3")).ToHaveValueAsync("0,6 %");
        await bench.ClickAsync("Save as a revision");
        await Expect(bench.Page.Locator("#saved")).ToContainTextAsync("Saved as revision 2.");
        using var read = JsonDocument.Parse(await server.Http.GetStringAsync(new Uri($"v1/formulas/{Injection}", UriKind.Relative)));
        var lines = read.RootElement.GetProperty("lines");
        Assert.False(lines[0].TryGetProperty("amount", out _));
        Assert.Equal(6, lines[1].GetProperty("amount").GetProperty("value").GetDouble());
        Assert.Equal(0.006, lines[3].GetProperty("nitriteFraction").GetDouble());
    }

    [RequiresChromiumFact]
    public async Task Paper_says_where_a_liquid_goes_and_makes_no_jar_label_of_it()
    {
        await using var bench = await EnterAsync(Injection, "beef-brisket", "5 kg");
        await bench.GoAsync("paper");
        await Expect(bench.Page.Locator(".page caption")).ToHaveTextAsync("Mix 420 g; 400 g of it goes into the meat");
        await Expect(bench.Page.Locator(".on-pieces")).ToContainTextAsync("until it weighs 5.400 kg");
        await Expect(bench.Page.Locator(".label")).ToHaveCountAsync(0);
        await Expect(bench.Page.GetByText("Print the jar labels")).ToHaveCountAsync(0);
    }

    private async Task<Bench> EnterAsync(string formula, string cut, string pile)
    {
        var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(formula, cut, pile);
        await Expect(bench.Page.Locator("#on-meat-0")).ToBeVisibleAsync();
        return bench;
    }

    // The middle of the salt in a kilogram, as the ledger draws it.
    private static async Task<double> SaltAsync(Bench bench)
    {
        var text = await bench.Page.Locator(".salt .bands dd").First.InnerTextAsync();
        return double.Parse(text.Split('\u00a0', ' ')[0], System.Globalization.CultureInfo.InvariantCulture);
    }

    private static async Task<List<string>> StepsAsync(Bench bench)
    {
        var seen = new List<string>();
        while (await bench.Page.Locator("#step-done").CountAsync() > 0 || seen.Count == 0)
        {
            await Expect(bench.Page.Locator(".where")).ToContainTextAsync($", {seen.Count + 1} of ");
            var what = await bench.Page.Locator(".now .what").EvaluateAsync<string>("e => e.firstChild.textContent");
            var amount = bench.Page.Locator(".now .amount");
            seen.Add(await amount.CountAsync() > 0 ? $"{what} {await amount.InnerTextAsync()}".Replace('\u00a0', ' ') : what);
            var before = await bench.Page.Locator(".stage").InnerTextAsync();
            await bench.Page.Locator("#step-done").ClickAsync();
            await bench.Page.WaitForFunctionAsync("before => document.querySelector('.stage').innerText !== before", before);
        }

        return seen;
    }

    private static StringContent Json(string text) => new(text, System.Text.Encoding.UTF8, "application/json");
}
