using CsCheck;
using RubLab.Core.Quantities;
using RubLab.Core.Serving;
using RubLab.Core.Yields;

namespace RubLab.Core.Tests.Serving;

public sealed class PurchasePlanLaws
{
    private sealed record Supper(long Guests, double Portion, Band Trim, Band Cook, Band Bone, bool IsOfGreen, double Reserve, Band? Piece, PurchaseEnd End)
    {
        public EdibleYield Yield => EdibleYield.OfChain(Trim, Cook, Bone, IsOfGreen)!;

        public PurchasePlan Plan(long? guests = null, double? reserve = null, EdibleYield? yield = null, PurchaseEnd? end = null) =>
            Suppers.Plan(guests ?? Guests, Portion, yield ?? Yield, reserve ?? Reserve, end ?? End, Piece);
    }

    private static readonly Gen<Supper> AnySupper =
        from guests in Gen.Long[1, 10_000]
        from portion in Gen.Double[10, 500]
        from trim in Gens.BandOf(0, 40)
        from cook in Gens.BandOf(50, 100)
        from bone in Gens.BandOf(0, 45)
        from isOfGreen in Gen.Bool
        from reserve in Gen.Double[0, 30]
        from piece in Gen.OneOf(Gens.BandOf(100, 9000).Select(b => (Band?)b), Gen.Const((Band?)null))
        from end in Gen.OneOf(Gen.Const(PurchaseEnd.Typical), Gen.Const(PurchaseEnd.Safe))
        select new Supper(guests, portion, trim, cook, bone, isOfGreen, reserve, piece, end);

    [Fact]
    public void What_is_bought_feeds_the_guests_at_the_end_it_was_bought_for() => Law.Holds(AnySupper, 5_000, supper =>
    {
        var line = supper.Plan().Lines[0];

        Assert.True(line.Portions.Typical >= supper.Guests);
        if (supper.End == PurchaseEnd.Safe)
        {
            Assert.True(line.Portions.Low >= supper.Guests);
            Assert.Equal(0, line.ShortfallGrams.High, 1e-6);
        }
    });

    [Fact]
    public void Counting_the_portions_of_what_was_bought_comes_back_to_the_plan() => Law.Holds(AnySupper, 2_000, supper =>
    {
        var line = supper.Plan().Lines[0];
        var count = PortionCount.Of(line.BoughtGrams, supper.Yield, line.PortionGrams);

        Assert.Equal(line.Portions.Typical, count.Typical);
    });

    [Fact]
    public void One_piece_or_step_less_would_not_do() => Law.Holds(AnySupper, 5_000, supper =>
    {
        var line = supper.Plan().Lines[0];
        var (needed, one) = supper.End == PurchaseEnd.Safe
            ? (line.PurchaseNeededGrams.High, supper.Piece?.Typical ?? 100)
            : (line.PurchaseNeededGrams.Typical, supper.Piece?.Typical ?? 100);

        Assert.True(line.BoughtGrams >= needed * (1 - 1e-9));
        Assert.True(line.BoughtGrams - one < needed);
        if (line.Pieces is { } pieces)
        {
            Assert.True(pieces.Low * supper.Piece!.Value.High >= needed * (1 - 1e-9) && (pieces.Low - 1) * supper.Piece.Value.High < needed);
            Assert.True(pieces.High * supper.Piece.Value.Low >= needed * (1 - 1e-9) && (pieces.High - 1) * supper.Piece.Value.Low < needed);
        }
    });

    [Fact]
    public void More_guests_and_more_reserve_never_take_less() => Law.Holds(
        Gen.Select(AnySupper, Gen.Long[0, 5000], Gen.Double[0, 50]), 5_000, c =>
        {
            var (supper, guests, reserve) = c;
            var less = supper.Plan().Lines[0].BoughtGrams;

            Assert.True(supper.Plan(guests: supper.Guests + guests).Lines[0].BoughtGrams >= less);
            Assert.True(supper.Plan(reserve: supper.Reserve + reserve).Lines[0].BoughtGrams >= less);
        });

    [Fact]
    public void A_better_yield_never_takes_more() => Law.Holds(Gen.Select(AnySupper, Gen.Double[0, 1]), 5_000, c =>
    {
        var (supper, part) = c;
        var better = EdibleYield.OfChain(supper.Trim.Times(1 - part), supper.Cook, supper.Bone.Times(1 - part), supper.IsOfGreen)!;

        Assert.True(supper.Plan(yield: better).Lines[0].BoughtGrams <= supper.Plan().Lines[0].BoughtGrams * (1 + 1e-12));
    });

    [Fact]
    public void The_safe_end_takes_no_less_than_the_typical() => Law.Holds(AnySupper, 5_000, supper =>
    {
        var typical = supper.Plan(end: PurchaseEnd.Typical).Lines[0];
        var safe = supper.Plan(end: PurchaseEnd.Safe).Lines[0];

        Assert.True(safe.BoughtGrams >= typical.BoughtGrams);
        Assert.True(safe.UnitsPerHundred >= typical.UnitsPerHundred);
        Assert.Equal(safe.BoughtGrams, typical.SafeGrams);
    });

    [Fact]
    public void Edible_meat_is_eaten_left_or_missing() => Law.Holds(AnySupper, 5_000, supper =>
    {
        var line = supper.Plan().Lines[0];

        Assert.Equal(line.EdibleGrams.Low, line.EatenGrams + line.LeftOverGrams.Low - line.ShortfallGrams.High, 1e-6 * line.EatenGrams);
        Assert.Equal(line.EdibleGrams.Typical, line.EatenGrams + line.LeftOverGrams.Typical - line.ShortfallGrams.Typical, 1e-6 * line.EatenGrams);
        Assert.Equal(line.EdibleGrams.High, line.EatenGrams + line.LeftOverGrams.High - line.ShortfallGrams.Low, 1e-6 * line.EatenGrams);
        Assert.Equal(supper.Guests * supper.Portion * (1 + (supper.Reserve / 100)), line.EdibleNeededGrams, 1e-6 * line.EatenGrams);
    });

    [Fact]
    public void A_kilogram_as_bought_is_trim_cooking_loss_bone_and_meat() => Law.Holds(AnySupper, 5_000, supper =>
    {
        var yield = supper.Yield;
        var trim = 1 - yield.GreenPerPurchase!.Value.Typical;
        var loss = yield.GreenPerPurchase.Value.Typical - yield.CookedPerPurchase!.Value.Typical;

        Assert.True(loss >= -1e-12);
        Assert.Equal(1, trim + loss + yield.BonePerPurchase!.Value.Typical + yield.EdiblePerPurchase.Typical, 1e-9);
        Assert.Equal(yield.EdiblePerGreen!.Value.Typical * yield.CookedPerEdible!.Value.Typical * yield.GreenPerPurchase.Value.Typical, yield.CookedPerPurchase.Value.Typical, 1e-9);
    });

    [Fact]
    public void Any_trim_yield_and_bone_within_their_bands_stay_within_the_plan_s() => Law.Holds(
        Gen.Select(AnySupper, Gens.Unit, Gens.Unit, Gens.Unit), 5_000, c =>
        {
            var (supper, t, y, b) = c;
            var one = EdibleYield.OfChain(
                Band.Exact(Gens.Inside(supper.Trim, t)), Band.Exact(Gens.Inside(supper.Cook, y)), Band.Exact(Gens.Inside(supper.Bone, b)), supper.IsOfGreen)!;

            Within(supper.Yield.EdiblePerPurchase, one.EdiblePerPurchase.Typical);
            Within(supper.Yield.CookedPerPurchase!.Value, one.CookedPerPurchase!.Value.Typical);
            Within(supper.Yield.CookedPerEdible!.Value, one.CookedPerEdible!.Value.Typical);
        });

    [Fact]
    public void The_parts_of_a_menu_make_up_the_portion() => Law.Holds(Gen.Select(Gen.Long[1, 1000], Gen.Double[1, 99]), 1_000, c =>
    {
        var (guests, share) = c;
        var plan = PurchasePlan.Compute(Suppers.Request(
            guests, 174, 0, PurchaseEnd.Typical, "kg", Suppers.Line("beef-brisket", share), Suppers.Line("pork-boston-butt", 100 - share)));

        Assert.Equal(174, plan.Lines.Sum(l => l.PortionGrams), 1e-9);
        Assert.Equal(174 * guests, plan.EatenGrams, 1e-6);
        Assert.True(plan.Fed.Typical >= guests);
        Assert.True(plan.Fed.Low <= plan.Fed.Typical && plan.Fed.Typical <= plan.Fed.High);
    });

    private static void Within(Band band, double value) =>
        Assert.True(value >= band.Low * (1 - 1e-12) && value <= band.High * (1 + 1e-12), $"{value} not in {band}");
}
