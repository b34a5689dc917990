using CsCheck;
using RubLab.Core.Quantities;
using RubLab.Core.Sources;
using RubLab.Core.Yields;

namespace RubLab.Core.Tests.Yields;

public sealed class OwnYieldTests
{
    private const int Full = 5;
    private const double General = 10;

    private static readonly Gen<(double Before, double After)[]> Cooks = Gen.Select(
        Gen.Double[500, 9000], Gen.Double[0.3, 0.95], (before, part) => (before, before * part)).Array[1, 20];

    private static readonly Gen<Band?> References = Gen.OneOf(Gens.BandOf(40, 90).Select(b => (Band?)b), Gen.Const((Band?)null));

    // One record of 70 % against a reference of exactly 60: a fifth of the way is 62.
    [Theory]
    [InlineData(1, 62)]
    [InlineData(2, 64)]
    [InlineData(4, 68)]
    [InlineData(5, 70)]
    [InlineData(9, 70)]
    public void Each_record_below_five_moves_the_yield_a_fifth_of_the_way(int count, double percent)
    {
        var own = Repeated(0.7, count, Band.Exact(60));

        Assert.Equal(percent, own.Percent.Typical, 1e-9);
        Assert.Equal(70, own.MeanPercent, 1e-9);
        Assert.Equal(Math.Min(1, count / 5.0), own.OwnShare, 1e-12);
        Assert.Equal(count < 5 ? Confidence.Fair : Confidence.Good, own.Citation.Confidence);
    }

    [Fact]
    public void Without_a_reference_a_single_record_stands_alone_with_the_spread_of_one_cook()
    {
        var own = Repeated(0.7, 1, null);

        Assert.Equal((70 * 0.9, 70.0, 70 * 1.1), (own.Percent.Low, own.Percent.Typical, own.Percent.High));
        Assert.Null(own.SpreadPercent);
        Assert.Equal((OwnYield.SourceId, "one record"), (own.Citation.SourceId, own.Citation.Locator));
    }

    // Half of them 4 % below the mean and half above: a standard deviation of 4 %, of which the band takes two.
    [Fact]
    public void Many_records_have_their_own_spread()
    {
        var own = OwnYield.From(
            Enumerable.Repeat(1000.0, 1000).ToArray(), Enumerable.Range(0, 1000).Select(i => i % 2 == 0 ? 576.0 : 624.0).ToArray(), Band.Exact(50), Full, General);

        Assert.Equal(4, own.SpreadPercent!.Value, 0.01);
        Assert.Equal(60 * 0.92, own.Percent.Low, 0.05);
        Assert.Equal(60 * 1.08, own.Percent.High, 0.05);
    }

    [Fact]
    public void More_records_that_agree_narrow_the_band() => Law.Holds(
        Gen.Select(Gen.Double[0.3, 0.9], Gen.Int[1, 30], References), 5_000, c =>
        {
            var (part, count, reference) = c;
            Band fewer = Repeated(part, count, reference).Percent, more = Repeated(part, count + 1, reference).Percent;

            Assert.True(more.High - more.Low <= fewer.High - fewer.Low + 1e-9, $"{fewer} then {more}");
        });

    [Fact]
    public void The_band_always_holds_what_the_kitchen_measured() => Law.Holds(Gen.Select(Cooks, References), 5_000, c =>
    {
        var own = Of(c.Item1, c.Item2);

        Assert.True(own.Percent.Contains(own.MeanPercent), $"{own.Percent} {own.MeanPercent}");
        Assert.Equal(c.Item1.Sum(r => r.After) / c.Item1.Sum(r => r.Before) * 100, own.MeanPercent, 1e-9);
        Assert.InRange(own.Percent.Low, 1, 100);
        Assert.InRange(own.Percent.High, 1, 100);
    });

    [Fact]
    public void The_typical_lies_between_the_records_and_the_reference() => Law.Holds(Gen.Select(Cooks, Gens.BandOf(40, 90)), 5_000, c =>
    {
        var own = Of(c.Item1, c.Item2);

        Assert.InRange(own.Percent.Typical, Math.Min(own.MeanPercent, c.Item2.Typical) - 1e-9, Math.Max(own.MeanPercent, c.Item2.Typical) + 1e-9);
    });

    [Fact]
    public void The_order_of_the_records_does_not_matter() => Law.Holds(Cooks, 2_000, cooks =>
    {
        Band forth = Of(cooks, Band.Exact(60)).Percent, back = Of(cooks.Reverse().ToArray(), Band.Exact(60)).Percent;

        Assert.Equal(forth.Low, back.Low, 1e-9);
        Assert.Equal(forth.High, back.High, 1e-9);
    });

    [Fact]
    public void Ways_of_cooking_and_kinds_of_weight_are_kept_apart_that_with_most_records_first()
    {
        var yields = OwnYields.Of(
            Given.Cut("beef-brisket"),
            [
                new CookRecord("braised", 1000, 700, false), new CookRecord("smoked", 1000, 600, false), new CookRecord("smoked", 1000, 590, false),
                new CookRecord("smoked", 2000, 1000, true),
            ],
            Seed.Catalogue);

        Assert.Equal(
            [("smoked", false, 2), ("braised", false, 1), ("smoked", true, 1)], yields.Select(y => (y.Method!, y.IsOfPurchase, y.Count)));
        // References: smoked 56, braised 71.3, and smoked of purchase weight with 10 % trim 50.4.
        Assert.Equal([56, 71.3, 50.4], yields.Select(y => Math.Round(y.ReferencePercent!.Value.Typical, 6)));
    }

    // Of Boston butt 69.5 % of the meat comes out; with 9 % bone, which keeps its weight, 0.91 x 69.5 + 9 of the whole.
    [Fact]
    public void A_reference_of_the_edible_portion_is_put_on_the_whole_piece()
    {
        var own = OwnYields.Of(Given.Cut("pork-boston-butt"), [new CookRecord(null, 1000, 650, false)], Seed.Catalogue)[0];

        Assert.Equal((0.91 * 69.5) + 9, own.ReferencePercent!.Value.Typical, 1e-9);
    }

    [Fact]
    public void A_kitchen_s_own_yield_stands_before_the_reference_and_is_named()
    {
        var own = OwnYields.Of(Given.Cut("beef-brisket"), Enumerable.Repeat(new CookRecord("smoked", 1000, 620, false), 5).ToList(), Seed.Catalogue);
        var kitchen = Seed.Catalogue.With(new Dictionary<string, IReadOnlyList<OwnYield>> { ["beef-brisket"] = own, ["no-such-cut"] = own });
        kitchen.TryFindCut("beef-brisket", out var cut);

        var choice = YieldChoice.Of(cut!, default, kitchen, out _)!;

        Assert.Equal((YieldOrigin.Own, 62.0), (choice.Origin, Math.Round(choice.Cooking.Band.Typical, 9)));
        Assert.Equal(OwnYield.SourceId, choice.Cooking.Citation!.SourceId);
        Assert.Equal(YieldOrigin.Reference, YieldChoice.Of(cut!, new YieldRequest { Method = "braised" }, kitchen, out _)!.Origin);
        Assert.Equal(YieldOrigin.Stated, YieldChoice.Of(cut!, new YieldRequest { CookYieldPercent = Band.Exact(58) }, kitchen, out _)!.Origin);
        Assert.DoesNotContain(Seed.Catalogue.Cuts, c => c.OwnYields.Count > 0);
        Assert.Same(Seed.Catalogue, Seed.Catalogue.With(new Dictionary<string, IReadOnlyList<OwnYield>>()));
    }

    [Fact]
    public void Records_of_purchase_weight_skip_the_trim_and_do_not_fit_trimmed_meat()
    {
        var own = OwnYields.Of(Given.Cut("beef-brisket"), Enumerable.Repeat(new CookRecord(null, 1000, 480, true), 5).ToList(), Seed.Catalogue);
        var cut = Given.Cut("beef-brisket") with { OwnYields = own };

        Assert.Equal(0.48, YieldChoice.Of(cut, default, Seed.Catalogue, out _)!.Yield.EdiblePerPurchase.Typical, 1e-9);
        Assert.Equal(YieldOrigin.Reference, YieldChoice.Of(cut, new YieldRequest { IsOfGreen = true, TrimPercent = Band.Exact(0) }, Seed.Catalogue, out _)!.Origin);
        Assert.Null(cut.OwnCookYield);
    }

    private static OwnYield Repeated(double part, int count, Band? reference) =>
        Of(Enumerable.Repeat((1000.0, 1000 * part), count).ToArray(), reference);

    private static OwnYield Of((double Before, double After)[] cooks, Band? reference) =>
        OwnYield.From(cooks.Select(c => c.Before).ToArray(), cooks.Select(c => c.After).ToArray(), reference, Full, General);
}
