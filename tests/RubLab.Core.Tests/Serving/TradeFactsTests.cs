using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Serving;
using RubLab.Core.Yields;

namespace RubLab.Core.Tests.Serving;

/// <summary>Facts of the trade, common practice with no source, that the planner's defaults must not contradict.</summary>
public sealed class TradeFactsTests
{
    // Defaults: trim 3-10-35 %, smoked yield 56-56-59.3 %, a piece of 5.85 kg, an ordinary portion of 174 g.
    [Fact]
    public void Three_whole_briskets_of_ordinary_size_feed_about_fifty()
    {
        var piece = Seed.Catalogue.Serving.PieceGramsOf("beef-brisket")!.Band.Typical;
        var count = PortionCount.Of(3 * piece, Suppers.Choice("beef-brisket").Yield, Suppers.Portion("ordinary"));

        Assert.True(count.Low <= 50 && 50 <= count.High, $"{count.Low} to {count.High}");
        Assert.InRange(count.Typical, 47, 53);
    }

    // The same defaults the other way: no reserve, bought for typical yields.
    [Fact]
    public void Fifty_ordinary_guests_take_three_whole_briskets()
    {
        var plan = PurchasePlan.Compute(Suppers.Request(50, Suppers.Portion("ordinary"), 0, PurchaseEnd.Typical, "kg", Suppers.Line("beef-brisket")));

        Assert.Equal(3, plan.Lines[0].Pieces!.Value.Typical);
    }

    // Defaults: the trim band of a brisket, and the brick its cut is taken for. A buyer's largest fat cap is 3/4 in, a usual
    // one half an inch; what lies on one broad face beyond a quarter inch comes off. Fat weighs about 0.92 g/mL.
    [Theory]
    [InlineData(0.75)]
    [InlineData(0.5)]
    public void Leaving_about_a_quarter_inch_of_fat_lies_within_the_trim_of_a_brisket(double capInches)
    {
        var grams = Seed.Catalogue.Serving.PieceGramsOf("beef-brisket")!.Band.Typical;
        var shape = Given.Cut("beef-brisket").Shape!;
        var thickness = Math.Cbrt(grams / (shape.DensityKilogramsPerCubicMetre / 1000) / (shape.LengthToThickness * shape.WidthToThickness));
        var face = shape.LengthToThickness * shape.WidthToThickness * thickness * thickness;
        var removed = face * (capInches - 0.25) * 2.54 * 0.92 / grams * 100;

        Assert.Equal(ShapeKind.Brick, shape.Kind);
        Assert.InRange(removed, Given.Cut("beef-brisket").TrimLossPercent!.Band.Low, Given.Cut("beef-brisket").TrimLossPercent!.Band.High);
        Assert.Contains("1/4 in", Given.Cut("beef-brisket").TrimLossPercent!.Citation.Locator, StringComparison.Ordinal);
    }

    // Common practice: an untrimmed brisket gives 46 to 53 % servable.
    [Fact]
    public void A_brisket_by_trim_and_yield_gives_what_practice_says_of_it()
    {
        var percent = Suppers.Choice("beef-brisket").Yield.EdiblePerPurchase.Times(100);

        Assert.InRange(percent.Typical, 46, 53);
        Assert.True(percent.Low <= 46 && percent.High >= 53);
    }

    // Experimental Cookery weighed edible over purchase: loin 51.0, leg of lamb 48.5. Defaults of trim, bone and yield hold both.
    [Theory]
    [InlineData("pork-loin", 51.0)]
    [InlineData("lamb-leg", 48.5)]
    [InlineData("turkey-whole", 54)]
    public void The_chain_holds_weighed_edible_yields(string cut, double percent) =>
        Assert.True(Suppers.Choice(cut).Yield.EdiblePerPurchase.Times(100).Contains(percent), $"{Suppers.Choice(cut).Yield.EdiblePerPurchase}");

    // 31 lb 4 oz of rib roast came out as 24 lb 10 oz; a loss of 21.2 %, bone in both weights.
    [Fact]
    public void A_rib_roast_s_cooking_yield_is_of_the_whole_piece()
    {
        var cooked = EdibleYield.OfChain(Band.Exact(0), Given.Cut("beef-rib-roast").CookYields[0].Percent, Given.Cut("beef-rib-roast").BonePercent!.Band, yieldIsOfGreen: true)!;

        Assert.True(Seed.Catalogue.Serving.IsYieldOfGreen("beef-rib-roast", "roasted"));
        Assert.False(Seed.Catalogue.Serving.IsYieldOfGreen("pork-boston-butt", "braised"));
        Assert.Equal(24.625 / 31.25, cooked.CookedPerPurchase!.Value.High, 0.0005);
    }
}
