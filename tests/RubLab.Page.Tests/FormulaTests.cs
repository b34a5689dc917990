using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class FormulaTests(Published published)
{
    [RequiresChromiumFact]
    public async Task A_formula_is_written_saved_and_stands_on_the_bench()
    {
        await using var server = await Server.StartAsync(published.Program);
        await using var bench = await Bench.OpenAsync(published.Browser, server.Address);
        await bench.ClickAsync("Write a formula");
        await WriteLineAsync(bench, 0, "salt", "table", "2", "parts-by-mass");
        await bench.ClickAsync("Another ingredient");
        await WriteLineAsync(bench, 1, "black-pepper", "ground", "3", "parts-by-mass");
        await bench.Page.Locator("#dose").FillAsync("22");
        await Expect(bench.Page.Locator("#comes-0")).ToHaveTextAsync("8.8 g/kg, 40 % of the mix");
        await Expect(bench.Page.Locator("#whole .figure").First).ToHaveTextAsync("22 g/kg");
        await bench.ReloadAsync();
        await Expect(bench.Page.Locator("#amount-1")).ToHaveValueAsync("3");

        await bench.ClickAsync("Save the formula");
        await Expect(bench.Page.Locator("#name-fault")).ToHaveTextAsync("Give it a name.");
        await bench.Page.Locator("#name").FillAsync("Lock keeper's two");
        await bench.ClickAsync("Save the formula");
        await Expect(bench.Page.Locator("#saved")).ToContainTextAsync("Saved as revision 1.");
        await bench.ClickAsync("Back to the bench");
        await bench.Page.Locator("#cut-0").SelectOptionAsync("pork-shoulder");
        await bench.Page.Locator("#pile-0").FillAsync("10 kg");
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("220 g");
        await Expect(bench.Page.Locator(".treatment h3")).ToHaveTextAsync("Lock keeper's two");
        Assert.Contains("Lock keeper", await server.Http.GetStringAsync(new Uri("v1/formulas", UriKind.Relative)), StringComparison.Ordinal);
    }

    [RequiresChromiumFact]
    public async Task A_formula_saved_with_a_double_tap_is_stored_once()
    {
        await using var server = await Server.StartAsync(published.Program);
        await using var bench = await Bench.OpenAsync(published.Browser, server.Address);
        await bench.GoAsync("formula/new");
        await bench.Page.Locator("#name").FillAsync("Twice tapped");
        await WriteLineAsync(bench, 0, "salt", "table", "2", "parts-by-mass");
        await bench.Page.Locator("#dose").FillAsync("22");
        await bench.Page.Locator("#save:enabled").DblClickAsync();
        await Expect(bench.Page.Locator("#saved")).ToContainTextAsync("Saved as revision");
        await bench.GoAsync("formulas");
        await Expect(bench.Page.Locator("#screen-formulas").GetByText("Twice tapped")).ToHaveCountAsync(1);

        Assert.Equal(2, (await server.Http.GetStringAsync(new Uri("v1/formulas?limit=100", UriKind.Relative))).Split("Twice tapped").Length);
    }

    [RequiresChromiumFact]
    public async Task More_of_one_line_holds_the_salt_or_the_dose_as_asked()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.GoAsync($"formula/{published.ExampleFormula}");
        await bench.Page.Locator("#amount-1").FillAsync("4");

        // Two parts of six must still be 8.8 g/kg: the dose goes to 26.4.
        await Expect(bench.Page.Locator("#dose")).ToHaveValueAsync("26.4");
        await Expect(bench.Page.Locator("#comes-0")).ToHaveTextAsync("8.8 g/kg, 33.3 % of the mix");

        await bench.ClickAsync("Back to the saved one");
        await bench.Page.GetByLabel("the dose: the salt moves").CheckAsync();
        await bench.Page.Locator("#amount-1").FillAsync("4");
        await Expect(bench.Page.Locator("#dose")).ToHaveValueAsync("22");
        await Expect(bench.Page.Locator("#comes-0")).ToHaveTextAsync("7.33 g/kg, 33.3 % of the mix");
    }

    [RequiresChromiumFact]
    public async Task Another_crystal_of_salt_keeps_its_mass_and_changes_its_spoons()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.GoAsync("formula/lockside-old-card");
        await Expect(bench.Page.Locator("#amount-0")).ToHaveValueAsync("3");
        await bench.Page.Locator("#form-0").SelectOptionAsync("flake-hollow");

        // USDA table salt, 6 g a teaspoon (1.217 g/mL), against 0.56 g/mL: 2.17 times the spoons.
        var amount = double.Parse(await bench.Page.Locator("#amount-0").InputValueAsync(), System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(amount, 3 * 2.1, 3 * 2.25);
        await bench.Page.Locator("#compare").SelectOptionAsync("stored");
        await Expect(bench.Page.Locator(".compare thead th")).ToHaveTextAsync(["Side by side", "As written", "As saved"]);
        await Expect(bench.Page.Locator(".compare tbody tr").First.Locator("td")).ToHaveTextAsync(["39.9 g/kg", "39.9 g/kg"]);
    }

    [RequiresChromiumFact]
    public async Task What_cannot_be_read_is_named_beside_its_own_field()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.GoAsync("formula/new");
        await WriteLineAsync(bench, 0, "salt", "table", "some", "g");
        await Expect(bench.Page.Locator("#amount-0-fault")).ToHaveTextAsync("“some” cannot be read as an amount.");
        await bench.Page.Locator("#amount-0").FillAsync("3");
        await bench.Page.Locator("#dose").FillAsync("lots");
        await Expect(bench.Page.Locator("#dose-fault")).ToHaveTextAsync("“lots” is not a number.");
        await bench.Page.Locator("#dose").FillAsync("2000");
        await Expect(bench.Page.Locator("#dose-fault")).ToContainTextAsync("1000");
        await Expect(bench.Page.Locator("#save")).ToBeDisabledAsync();
    }

    [RequiresChromiumTheory]
    [InlineData("5,2 kg", "19.2 g/kg")]
    [InlineData("5.2", "42.4 g/kg")]
    [InlineData("3 lb 9 oz", "61.9 g/kg")]
    public async Task The_weight_a_card_was_written_for_says_its_own_unit(string written, string salt)
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.GoAsync("formula/new");
        await WriteLineAsync(bench, 0, "salt", "table", "100", "g");
        await Expect(bench.Page.Locator("#writtenFor-fault")).ToHaveTextAsync("Amounts need the weight of meat they were written for, or a dose.");
        await bench.Page.Locator("#writtenFor").FillAsync("some");
        await Expect(bench.Page.Locator("#writtenFor-fault")).ToHaveTextAsync("“some” cannot be read as one weight.");
        await bench.Page.Locator("#writtenFor").FillAsync(written);
        await Expect(bench.Page.Locator("#writtenFor-fault")).ToBeEmptyAsync();
        await Expect(bench.Page.Locator("#screen-formula .whole")).ToContainTextAsync(salt);
    }

    [RequiresChromiumFact]
    public async Task Amounts_are_read_as_cards_write_them()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        var read = await bench.Page.EvaluateAsync<string[]>(
            """
            async texts => {
              const { readAmount } = await import('/js/words/amounts.js');
              return texts.map(text => {
                const { amount, code } = readAmount(text, 'metric', 'g');
                return code ?? `${amount.value} ${amount.unit}`;
              });
            }
            """,
            (string[])["1 1/2 cup", "½ tsp", "2½ Tbsp.", "1/4 cup", "2,5 kg", "3", "0.3 %", "2 parts", "1,250 g", "3 handfuls", "1/0 cup", "", "-2 g"]);

        Assert.Equal(
            ["1.5 metric-cup", "0.5 metric-tsp", "2.5 metric-tbsp", "0.25 metric-cup", "2.5 kg", "3 g", "0.3 %", "2 parts-by-mass", "either", "unknown-measure", "not-an-amount", "not-an-amount", "not-an-amount"],
            read);
    }

    private static async Task WriteLineAsync(Bench bench, int line, string ingredient, string form, string amount, string unit)
    {
        await bench.Page.Locator($"#ingredient-{line}").SelectOptionAsync(ingredient);
        await bench.Page.Locator($"#form-{line}").SelectOptionAsync(form);
        await bench.Page.Locator($"#unit-{line}").SelectOptionAsync(unit);
        await bench.Page.Locator($"#amount-{line}").FillAsync(amount);
    }
}
