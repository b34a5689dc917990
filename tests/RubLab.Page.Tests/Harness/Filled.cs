using Microsoft.Playwright;

namespace RubLab.Page.Tests.Harness;

/// <summary>Screens beside the bench with something written on them, as a cook would.</summary>
public static class Filled
{
    /// <summary>Fills them all and comes back to the bench.</summary>
    public static async Task AllAsync(Bench bench)
    {
        await BrineAsync(bench);
        await TimeAsync(bench);
        await SauceAsync(bench);
        await CureAsync(bench, "dry", "pork-loin", "2 x 2 kg", ("cure-6-25", "6.25", "120"));
        await bench.Page.Locator("#cure-how-0").SelectOptionAsync("target");
        await PeopleAsync(bench);
        await OwnAsync(bench);
        await bench.GoAsync("bench");
    }

    /// <summary>An injection that is to reach 12 g/kg.</summary>
    public static async Task BrineAsync(Bench bench)
    {
        await bench.GoAsync("brine");
        await bench.Page.Locator("#brine-meat").FillAsync("2 x 3 kg");
        await bench.Page.Locator("#brine-retained").FillAsync("90");
        await bench.Page.Locator("#brine-temperature").FillAsync("4 C");
        await bench.Page.Locator("#brine-amount-0").FillAsync("2 L");
        await bench.Page.Locator("#brine-target").FillAsync("12");
    }

    /// <summary>A shoulder overnight and then in the cooker.</summary>
    public static async Task TimeAsync(Bench bench)
    {
        await bench.GoAsync("time");
        await bench.Page.Locator("#time-weight").FillAsync("3.6 kg");
        await bench.Page.Locator("#time-salt").FillAsync("10");
        await bench.Page.Locator("#time-add").ClickAsync();
        await bench.Page.Locator("#time-hours-1").FillAsync("6 h");
        await bench.Page.Locator("#time-temperature-1").FillAsync("80 C");
        await Assertions.Expect(bench.Page.Locator("#time-outcome .plot")).ToHaveCountAsync(2);
    }

    /// <summary>A cure of one line; in a pickle the water stands before it. The other lines are taken out.</summary>
    public static async Task CureAsync(Bench bench, string method, string cut, string meat, (string Ingredient, string Declared, string Amount) line)
    {
        await bench.GoAsync("cure");
        await bench.Page.Locator("#cure-method").SelectOptionAsync(method);
        await bench.Page.Locator("#cure-cut").SelectOptionAsync(cut);
        await bench.Page.Locator("#cure-meat").FillAsync(meat);
        var row = method is "injection" or "soak" ? 1 : 0;
        await bench.Page.Locator($"#cure-ingredient-{row}").SelectOptionAsync(line.Ingredient);
        if (line.Declared.Length > 0)
        {
            await bench.Page.Locator($"#cure-nitrite-{row}").FillAsync(line.Declared);
        }

        await bench.Page.Locator($"#cure-amount-{row}").FillAsync(line.Amount);
        await bench.Page.Locator("#screen-cure .lines button").Last.ClickAsync();
    }

    public static async Task SauceAsync(Bench bench)
    {
        await bench.GoAsync("sauce");
        await bench.Page.Locator("#sauce-formula").SelectOptionAsync("lockside-basin-table-sauce");
        await bench.Page.Locator("#sauce-make").FillAsync("2 kg");
        await bench.Page.Locator("#sauce-reduce").FillAsync("75");
        await bench.Page.Locator("#sauce-portion").FillAsync("30 g");
    }

    /// <summary>A menu, and a pile reckoned back.</summary>
    public static async Task PeopleAsync(Bench bench)
    {
        await bench.GoAsync("people");
        await MenuAsync(bench);
        await bench.Page.Locator("#feeds-cut").SelectOptionAsync("beef-brisket");
        await bench.Page.Locator("#feeds-weights").FillAsync("3 x 5.85 kg");
    }

    /// <summary>Forty guests, shoulder and brisket.</summary>
    public static async Task MenuAsync(Bench bench)
    {
        await bench.Page.Locator("#people-ordinary").FillAsync("40");
        await bench.Page.Locator("#people-reserve").FillAsync("10");
        await bench.Page.Locator("#people-currency").FillAsync("eur");
        await bench.Page.Locator("#people-cut-0").SelectOptionAsync("pork-shoulder");
        await bench.Page.Locator("#people-share-0").FillAsync("60");
        await bench.Page.Locator("#people-first-0").SelectOptionAsync("lockside-dry-brine");
        await bench.Page.Locator("#people-price-0").FillAsync("6,90");
        await bench.Page.Locator("#people-add").ClickAsync();
        await bench.Page.Locator("#people-cut-1").SelectOptionAsync("beef-brisket");
        await bench.Page.Locator("#people-share-1").FillAsync("40 %");
    }

    /// <summary>Two cooks of a brisket, read but not recorded.</summary>
    public static async Task OwnAsync(Bench bench)
    {
        await bench.GoAsync("own");
        await bench.Page.Locator("#yield-cut").SelectOptionAsync("beef-brisket");
        await bench.Page.Locator("#yield-method").SelectOptionAsync("smoked");
        await bench.Page.Locator("#yield-cooks").FillAsync("5.2 kg → 3.1 kg\n4.9 kg → 2.95 kg");
    }
}
