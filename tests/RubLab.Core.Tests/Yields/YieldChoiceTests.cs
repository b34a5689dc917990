using RubLab.Core.Quantities;
using RubLab.Core.Shopping;
using RubLab.Core.Tests.Serving;
using RubLab.Core.Yields;

namespace RubLab.Core.Tests.Yields;

public sealed class YieldChoiceTests
{
    // Trim 10 %, bone 20 % of the trimmed weight, 75 % cooked with the bone in: 0.9 x (0.75 - 0.2).
    [Fact]
    public void A_yield_of_the_whole_piece_keeps_the_bone_s_weight() => Assert.Equal(
        0.495, EdibleYield.OfChain(Band.Exact(10), Band.Exact(75), Band.Exact(20), yieldIsOfGreen: true)!.EdiblePerPurchase.Typical, 1e-12);

    // The same trim and bone, 70 % of the meat cooked: 0.9 x 0.8 x 0.7, and with the bone 0.9 x (0.56 + 0.2).
    [Fact]
    public void A_yield_of_the_edible_portion_leaves_the_bone_aside()
    {
        var yield = EdibleYield.OfChain(Band.Exact(10), Band.Exact(70), Band.Exact(20), yieldIsOfGreen: false)!;

        Assert.Equal(0.504, yield.EdiblePerPurchase.Typical, 1e-12);
        Assert.Equal(0.684, yield.CookedPerPurchase!.Value.Typical, 1e-12);
        Assert.Equal(0.76 / 0.56, yield.CookedPerEdible!.Value.Typical, 1e-12);
    }

    [Fact]
    public void A_yield_no_heavier_than_the_bone_is_impossible()
    {
        Assert.Null(EdibleYield.OfChain(Band.Exact(0), new Band(40, 60, 70), new Band(20, 30, 40), yieldIsOfGreen: true));
        Assert.Null(EdibleYield.OfCookedPurchase(new Band(30, 50, 60), Band.Exact(0), new Band(10, 20, 30)));
        Assert.Null(YieldChoice.Of(Given.Cut("chicken-wing"), new YieldRequest { CookYieldPercent = Band.Exact(50) }, Seed.Catalogue, out var isImpossible));
        Assert.True(isImpossible);
    }

    [Fact]
    public void A_cut_whose_cooking_nobody_published_is_planned_by_its_purchase_yield()
    {
        var wing = Suppers.Choice("turkey-wing");

        Assert.Equal(YieldOrigin.PurchaseYield, wing.Origin);
        Assert.Equal(new Band(41, 43, 46), wing.Cooking.Band);
        Assert.Null(wing.Trim);
        Assert.Null(YieldChoice.Of(Given.Cut("pork-belly"), default, Seed.Catalogue, out var isImpossible));
        Assert.False(isImpossible);
    }

    // 43 % of purchase weight; typically 2 % has been trimmed off it, so 43 / 0.98 of what is left.
    [Fact]
    public void A_purchase_yield_of_trimmed_meat_has_the_trim_off_it() => Assert.Equal(
        0.43 / 0.98, Suppers.Choice("turkey-wing", new YieldRequest { IsOfGreen = true }).Yield.EdiblePerPurchase.Typical, 1e-12);

    [Fact]
    public void A_published_yield_is_that_of_the_usual_way_of_cooking_within_all_of_them()
    {
        var turkey = YieldChoice.Published(Given.Cut("turkey-whole"), null, Seed.Catalogue)!;

        Assert.Equal(new Band(49, 54, 57), turkey.Band);
        Assert.Equal(("usda-ah-102", "turkey whole with neck and giblets, roasted"), (turkey.Citation.SourceId, turkey.Citation.Locator));
        Assert.Null(YieldChoice.Published(Given.Cut("turkey-whole"), "smoked", Seed.Catalogue));
    }

    [Fact]
    public void Packs_go_up_and_stock_comes_off_first()
    {
        Assert.Equal(new Packs(620, 7, 80), Packs.For(650, 30, 100));
        Assert.Equal(new Packs(0, 0, 50), Packs.For(650, 700, 100));
        Assert.Equal(new Packs(600, 6, 0), Packs.For(600, 0, 100));
        Assert.Equal(new Packs(650, null, 0), Packs.For(650, 0, null));
    }

    [Theory]
    [InlineData("EUR", 2, 10.125, 10.13)]
    [InlineData("JPY", 0, 10.5, 11)]
    [InlineData("KWD", 3, 10.1235, 10.124)]
    public void Money_is_in_whole_smallest_units_halves_up(string code, int digits, double amount, double rounded)
    {
        Assert.True(Seed.Catalogue.Serving.TryFindCurrency(code, out var currency));
        Assert.Equal((digits, (decimal)rounded), (currency.MinorDigits, currency.Rounded((decimal)amount)));
    }

    [Fact]
    public void A_price_is_for_a_weight_or_for_a_piece()
    {
        Assert.Equal(57.5m, new Price(11.5m, 1000).Of(5000, 2));
        Assert.Equal(23m, new Price(11.5m, null).Of(5000, 2));
        var cost = Cost.Of(new Currency("EUR", 2), 100m, 3, 7, 1500);
        Assert.Equal((33.33m, 14.29m, 66.67m), (cost.PerPortion!.Value, cost.PerPiece!.Value, cost.PerKilogram!.Value));
        Assert.Equal((null, null, null), (Cost.Of(new Currency("EUR", 2), 1m, 0, 0, 0).PerPortion, Cost.Of(new Currency("EUR", 2), 1m, 0, 0, 0).PerPiece, Cost.Of(new Currency("EUR", 2), 1m, 0, 0, 0).PerKilogram));
    }
}
