using CsCheck;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Sauces;
using RubLab.Core.Tests.Published;

namespace RubLab.Core.Tests.Sauces;

public sealed class ReductionTests
{
    private static readonly List<PublishedCase> Cases = PublishedCase.Read("reductions.csv");

    public static TheoryData<string> Ids => new(Cases.Select(c => c.Id));

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_published_evaporation_comes_out(string id)
    {
        // Whatever does not evaporate stands in for the dissolved solid of the problem: here sodium chloride in pure water.
        var published = Cases.Single(c => c.Id == id);
        var pot = Of(Salt(published.Input("salt")), Water(100 - published.Input("salt")));

        var left = pot.PercentLeftAtSalt(published.Input("to_salt_percent"));

        published.AssertIs(published.Input("pot") * (id.EndsWith("left", StringComparison.Ordinal) ? left : 100 - left) / 100);
    }

    [Fact]
    public void All_that_is_no_water_stays()
    {
        // USDA SR28: honey 17.1 % water (19296).
        var pot = Of(Given.Line("honey", null, 30, "parts-by-mass"), Water(70));

        Assert.Equal(30 * 0.829 * 10, pot.SolidsGramsPerKilogram, 1e-9);
        Assert.Equal(49.74, pot.SolidsPercentAt(50), 1e-9);
        Assert.Equal(50, pot.PercentLeftAtSolids(49.74), 1e-9);
    }

    [Theory]
    [InlineData(100, true)]
    [InlineData(20, true)]
    [InlineData(19.999, false)]
    [InlineData(100.001, false)]
    public void A_pot_boils_down_to_its_solids_and_no_further(double percentLeft, bool can) =>
        Assert.Equal(can, Of(Salt(20), Water(80)).CanReach(percentLeft));

    [Fact]
    public void What_is_boiled_off_is_water_and_what_stays_is_all_the_rest() => Law.Holds(
        Gen.Select(Gen.Double[0.1, 30], Gen.Double[1, 100]), 2_000, c =>
        {
            var (salt, portionOfWater) = c;
            var pot = Of(Salt(salt), Water(100 - salt));
            var left = 100 - ((100 - salt) * portionOfWater / 100);

            Assert.True(pot.CanReach(left));
            Assert.Equal(salt * 10, pot.SolidsPercentAt(left) * left / 10, 1e-9);
            Assert.Equal(left, pot.PercentLeftAtSolids(pot.SolidsPercentAt(left)), 1e-9);
        });

    [Fact]
    public void A_reduced_sauce_carries_the_salt_of_its_pot_in_less_weight()
    {
        var whole = Sauce(null);
        var reduced = Sauce(60);

        Assert.Equal(whole.SaltSharePercent.Typical / 0.6, reduced.SaltSharePercent.Typical, 1e-12);
        Assert.Equal(whole.DoseGramsPerKilogram, reduced.DoseGramsPerKilogram, 1e-12);
        Assert.Equal(100 / 0.6, reduced.PotGramsPerKilogram, 1e-12);
        Assert.Equal(whole.Lines[0].RatioGramsPerKilogram.Typical / 0.6, reduced.Lines[0].RatioGramsPerKilogram.Typical, 1e-12);
        Assert.Equal(whole.Lines[0].Share.Typical, reduced.Lines[0].Share.Typical, 1e-15);
        foreach (var isWeighed in new[] { true, false })
        {
            Assert.Equal(
                whole.GramsPerKilogram(i => i.SaltGramsPerGram, isWeighed, isDosed: true).Typical / 0.6,
                reduced.GramsPerKilogram(i => i.SaltGramsPerGram, isWeighed, isDosed: true).Typical, 1e-12);
        }
    }

    [Fact]
    public void Ratios_of_a_reduced_sauce_are_what_goes_into_the_pot()
    {
        var ratios = (Given.Draft(Given.Line("sodium-chloride", null, 2, "g/kg"), Given.Line("water", null, 98, "g/kg")) with
        {
            Kind = FormulaKind.Sauce,
            PercentLeft = 50,
        }).Ratios();

        Assert.Equal(100, ratios.PotGramsPerKilogram, 1e-12);
        Assert.Equal(50, ratios.DoseGramsPerKilogram, 1e-12);
        Assert.Equal(4, ratios.SaltSharePercent.Typical, 1e-12);
        Assert.Equal(2, ratios.GramsPerKilogram(i => i.SaltGramsPerGram, isWeighed: true, isDosed: false).Typical, 1e-12);
    }

    private static FormulaRatios Sauce(double? percentLeft) =>
        (Given.Draft(Salt(2), Water(98)) with { Kind = FormulaKind.Sauce, PercentLeft = percentLeft }).Dosed(100).Ratios();

    private static Reduction Of(params FormulaLineDraft[] lines) => Reduction.Of(Given.Draft(lines).Dosed(20).Ratios());

    private static FormulaLineDraft Salt(double parts) => Given.Line("sodium-chloride", null, parts, "parts-by-mass");

    // Pure water: what a tap adds is solid too.
    private static FormulaLineDraft Water(double parts) =>
        Given.Line(Given.Ingredient("water") with { WaterGramsPer100Grams = 100, SaltGramsPer100Grams = Band.Exact(0) }, parts, "parts-by-mass");
}
