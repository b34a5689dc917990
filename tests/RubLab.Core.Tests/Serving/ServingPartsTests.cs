using RubLab.Core.Quantities;
using RubLab.Core.Serving;
using RubLab.Core.Shopping;
using RubLab.Core.Sources;
using RubLab.Core.Yields;

namespace RubLab.Core.Tests.Serving;

/// <summary>Both ends of yields and plans, each worked by hand from what a kilogram leaves.</summary>
public sealed class ServingPartsTests
{
    private static readonly Band Trim = new(0, 10, 20);

    // Of a kilogram trimmed 600 to 800 g come out of the cooker, 50 to 200 of them bone.
    [Fact]
    public void A_whole_piece_s_yield_has_its_ends_where_most_and_least_is_lost()
    {
        var yield = EdibleYield.OfChain(Trim, new Band(60, 75, 80), new Band(5, 10, 20), yieldIsOfGreen: true)!;

        AssertBand(0.4, 0.65, 0.75, yield.EdiblePerGreen!.Value);
        AssertBand(0.8 * 0.4, 0.9 * 0.65, 0.75, yield.EdiblePerPurchase);
        AssertBand(0.8 * 0.6, 0.9 * 0.75, 0.8, yield.CookedPerPurchase!.Value);
        AssertBand(0.8 * 0.05, 0.9 * 0.1, 0.2, yield.BonePerPurchase!.Value);
        // 800 g hold 750 of meat at the best, 600 hold 400 at the worst.
        AssertBand(800 / 750.0, 750 / 650.0, 600 / 400.0, yield.CookedPerEdible!.Value);
    }

    // Of 950 g of meat 80 % and 50 g of bone are 810; of 800 g of meat 60 % and 200 g of bone are 680.
    [Fact]
    public void An_edible_portion_s_yield_has_its_ends_where_most_and_least_is_lost()
    {
        var yield = EdibleYield.OfChain(Trim, new Band(60, 75, 80), new Band(5, 10, 20), yieldIsOfGreen: false)!;

        AssertBand(0.48, 0.675, 0.76, yield.EdiblePerGreen!.Value);
        AssertBand(810 / 760.0, 775 / 675.0, 680 / 480.0, yield.CookedPerEdible!.Value);
    }

    // Of a kilogram bought 400 to 600 g come out, and bone is a part of what trimming left: 80 to 200 g.
    [Fact]
    public void A_yield_of_what_was_bought_counts_the_bone_that_trimming_left()
    {
        var yield = EdibleYield.OfCookedPurchase(new Band(40, 50, 60), Trim, new Band(10, 15, 20))!;

        AssertBand(0.08, 0.135, 0.2, yield.BonePerPurchase!.Value);
        AssertBand(0.2, 0.365, 0.52, yield.EdiblePerPurchase);
        AssertBand(600 / 520.0, 500 / 365.0, 400 / 200.0, yield.CookedPerEdible!.Value);
    }

    // One record of 70 %, a fifth of the typical; a cook strays by 10 % of 70, and four fifths of the reference's own 10 and 20.
    [Fact]
    public void A_band_drawn_towards_the_reference_is_as_wide_as_both()
    {
        var own = OwnYield.From([1000], [700], new Band(50, 60, 80), 5, 10);
        AssertBand(62 - 7 - 8, 62, 62 + 7 + 16, own.Percent);
    }

    [Fact]
    public void Records_without_a_reference_are_all_the_kitchen_s_own()
    {
        var one = OwnYield.From([1000], [700], null, 5, 10);
        var three = OwnYield.From([1000, 1000, 1000], [700, 700, 700], null, 5, 10);

        Assert.Equal((1.0, Confidence.Good, "one record"), (one.OwnShare, one.Citation.Confidence, one.Citation.Locator));
        Assert.Equal("3 records", three.Citation.Locator);
        Assert.Throws<ArgumentOutOfRangeException>(() => OwnYield.From([1000], [700], null, 0, 10));
    }

    [Fact]
    public void Of_as_many_records_trimmed_weights_come_first_and_then_the_ways_of_cooking_by_name()
    {
        CookRecord[] records =
        [
            new("smoked", 1000, 500, true), new("braised", 1000, 500, true), new("smoked", 1000, 600, false), new("braised", 1000, 700, false),
        ];

        Assert.Equal(
            [("braised", false), ("smoked", false), ("braised", true), ("smoked", true)],
            OwnYields.Of(Given.Cut("beef-brisket"), records, Seed.Catalogue).Select(y => (y.Method!, y.IsOfPurchase)));
    }

    // Half of a kilogram bought is five portions of 100 g: twenty kilograms for a hundred. At the safe end it is four tenths, and 25.
    [Theory]
    [InlineData(PurchaseEnd.Typical, 20)]
    [InlineData(PurchaseEnd.Safe, 25)]
    public void Units_for_a_hundred_portions_are_of_the_end_bought_for(PurchaseEnd end, double kilograms) => Assert.Equal(
        kilograms, Suppers.Plan(7, 100, EdibleYield.OfPurchase(new Band(40, 50, 60)), end: end).Lines[0].UnitsPerHundred, 1e-9);

    // Ten portions of 250 g at half the weight bought: five kilograms, in pieces of 2 kg three of them, 6 kg.
    [Theory]
    [InlineData(null, 3 * 11.5)]
    [InlineData(1000.0, 6 * 11.5)]
    public void What_a_purchase_costs_is_of_its_pieces_or_of_its_weight(double? perGrams, double cost)
    {
        var line = Suppers.Plan(10, 250, EdibleYield.OfPurchase(Band.Exact(50)), piece: Band.Exact(2000)).Lines[0];

        Assert.Equal((decimal)cost, (line with { Line = line.Line with { Price = new Price(11.5m, perGrams) } }).Cost);
        Assert.Null(line.Cost);
    }

    [Fact]
    public void A_supper_without_guests_is_none() => Assert.Throws<ArgumentOutOfRangeException>(
        () => PurchasePlan.Compute(Suppers.Request(0, 174, 0, PurchaseEnd.Typical, "kg", Suppers.Line("beef-brisket"))));

    [Fact]
    public void Bone_is_told_where_there_is_some()
    {
        Assert.Equal(Given.Cut("pork-boston-butt").BonePercent!.Band, Suppers.Choice("pork-boston-butt").Bone!.Band);
        Assert.Null(Suppers.Choice("pork-boston-butt", new YieldRequest { BonePercent = Band.Exact(0) }).Bone);
        Assert.Equal(new Band(0, 0, 5), Suppers.Choice("pork-boston-butt", new YieldRequest { BonePercent = new Band(0, 0, 5) }).Bone!.Band);
    }

    // 41, 43 and 46 % of purchase weight; of what is left after 5, 10 and 20 % of trim.
    [Fact]
    public void A_purchase_yield_of_trimmed_meat_has_each_end_s_trim_off_it()
    {
        var wing = Given.Cut("turkey-wing") with { TrimLossPercent = new Cited(new Band(5, 10, 20), Given.NoSource) };

        var yield = YieldChoice.Of(wing, new YieldRequest { IsOfGreen = true }, Seed.Catalogue, out _)!.Yield;

        AssertBand(0.41 / 0.95, 0.43 / 0.9, 0.46 / 0.8, yield.EdiblePerPurchase);
    }

    [Theory]
    [InlineData(true, false)]
    [InlineData(false, true)]
    public void A_kitchen_s_yield_of_what_it_bought_does_not_fit_a_trim_of_its_own_or_trimmed_meat(bool trimIsStated, bool isOfGreen)
    {
        var own = OwnYields.Of(Given.Cut("beef-brisket"), Enumerable.Repeat(new CookRecord(null, 1000, 480, true), 5).ToList(), Seed.Catalogue);
        var asked = new YieldRequest { TrimPercent = trimIsStated ? Band.Exact(10) : null, IsOfGreen = isOfGreen };

        Assert.Equal(YieldOrigin.Reference, YieldChoice.Of(Given.Cut("beef-brisket") with { OwnYields = own }, asked, Seed.Catalogue, out _)!.Origin);
    }

    // Belly has no published cook at all; braised brisket keeps 71.3 % of its meat and smoked 56 %, as the edition cites them.
    [Fact]
    public void A_cook_is_drawn_towards_and_planned_by_the_published_one_of_its_kind()
    {
        Assert.Null(OwnYields.Of(Given.Cut("pork-belly"), [new CookRecord("smoked", 1000, 600, false)], Seed.Catalogue)[0].ReferencePercent);
        Assert.Equal(71.3, Suppers.Choice("beef-brisket", new YieldRequest { Method = "braised" }).Cooking.Band.Typical);
        Assert.Equal(56.0, Suppers.Choice("beef-brisket", new YieldRequest { Method = "smoked" }).Cooking.Band.Typical);
    }

    private static void AssertBand(double low, double typical, double high, Band band)
    {
        Assert.Equal(low, band.Low, 1e-9);
        Assert.Equal(typical, band.Typical, 1e-9);
        Assert.Equal(high, band.High, 1e-9);
    }
}
