using RubLab.Core.Quantities;
using RubLab.Core.Serving;
using RubLab.Core.Tests.Published;
using RubLab.Core.Yields;

namespace RubLab.Core.Tests.Serving;

/// <summary>Purchases and servings held to what was published.</summary>
public sealed class PublishedServingTests
{
    private static readonly List<PublishedCase> Cases = PublishedCase.Read("serving.csv");
    private static readonly double Pound = UnitTable.Get("lb").Factor;
    private static readonly double Ounce = UnitTable.Get("oz").Factor;

    public static TheoryData<string> Units => Starting("units-");

    public static TheoryData<string> Ounces => Starting("ounces-");

    public static TheoryData<string> Edible => Starting("edible-");

    public static TheoryData<string> Plans => new(Cases.Where(c => c.Unit == "lb to buy").Select(c => c.Id));

    [Theory]
    [MemberData(nameof(Units))]
    public void Units_for_a_hundred_servings_go_up_to_the_next_tenth(string id)
    {
        var printed = Of(id);

        printed.AssertIs(BuyingGuide.UnitsPerHundred(printed.Input("servings_per_unit"), Seed.Catalogue.Constants.BuyingGuideStep));
    }

    [Theory]
    [MemberData(nameof(Ounces))]
    public void A_pound_gives_the_ounces_printed(string id)
    {
        var printed = Of(id);
        var yields = Seed.Catalogue.Serving.PurchaseYieldsOf(printed.InputText("cut"))
            .Single(y => y.Citation.SourceId == "usda-food-buying-guide" && !y.IsWithoutSkin);

        printed.AssertIs(EdibleYield.OfPurchase(Band.Exact(yields.Percent)).EdiblePerPurchase.Typical * Pound / Ounce);
    }

    [Theory]
    [MemberData(nameof(Edible))]
    public void A_bird_by_its_purchase_yield_gives_the_pounds_printed(string id)
    {
        var printed = Of(id);
        var choice = YieldChoice.Of(
            Given.Cut(printed.InputText("cut")), new YieldRequest { Method = printed.InputText("method"), ByPurchaseYield = true }, Seed.Catalogue, out _)!;

        printed.AssertIs(PortionCount.Of(printed.Input("bought_lb") * Pound, choice.Yield, Ounce).EdibleGrams.Typical / Pound);
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void A_purchase_is_what_was_printed_before_it_is_rounded_up(string id)
    {
        var printed = Of(id);
        var plan = Suppers.Plan(
            (long)printed.Input("guests"), printed.Input("portion_oz") * Ounce,
            EdibleYield.OfPurchase(Band.Exact(printed.Input("yield"))), unit: "lb");

        printed.AssertIs(plan.Lines[0].PurchaseNeededGrams.Typical / Pound);
        Assert.InRange(plan.Lines[0].BoughtGrams - plan.Lines[0].PurchaseNeededGrams.Typical, 0, 0.1 * Pound);
    }

    // Ten pounds at 80 % in three-ounce servings: 42.67, of which 42 can be served.
    [Fact]
    public void Servings_go_down()
    {
        var count = PortionCount.Of(10 * Pound, EdibleYield.OfPurchase(Band.Exact(80)), 3 * Ounce);

        Assert.Equal((42L, 42L, 42L), (count.Low, count.Typical, count.High));
        Assert.Equal(42.67, count.EdibleGrams.Typical / (3 * Ounce), 0.005);
    }

    // A page prints 32.5 lb for 25 lb cooked at 30 % loss. Cooked, those are 22.75 lb: nine guests of a hundred go without.
    [Fact]
    public void Adding_the_loss_instead_of_dividing_leaves_guests_without()
    {
        var yield = EdibleYield.OfPurchase(Band.Exact(70));

        Assert.Equal(91, PortionCount.Of(25 * 1.3 * Pound, yield, 4 * Ounce).Typical);
        Assert.Equal(100, PortionCount.Of(Suppers.Plan(100, 4 * Ounce, yield, unit: "lb").Lines[0].BoughtGrams, yield, 4 * Ounce).Typical);
    }

    // 14 lb of lean at 40 % fat of the whole take 9.33 lb of fat: what is divided by 0.6 is the lean, not the whole.
    [Fact]
    public void A_percentage_of_the_whole_divides_what_is_left_of_it()
    {
        var whole = 14 / EdibleYield.OfPurchase(Band.Exact(60)).EdiblePerPurchase.Typical;

        Assert.Equal(9.33, whole - 14, 0.005);
        Assert.Equal(23.077, 100 * 3.0 / (10 + 3), 0.0005);
        Assert.Equal(10, (10 + 3) * EdibleYield.OfPurchase(Band.Exact(100 * 10.0 / 13)).EdiblePerPurchase.Typical, 1e-9);
    }

    private static TheoryData<string> Starting(string prefix) => new(Cases.Where(c => c.Id.StartsWith(prefix, StringComparison.Ordinal)).Select(c => c.Id));

    private static PublishedCase Of(string id) => Cases.Single(c => c.Id == id);
}
