using RubLab.Core.Salt;
using RubLab.Core.Scaling;
using RubLab.Core.Tests.Curing;

namespace RubLab.Core.Tests.Salt;

public sealed class WetFormulationTests
{
    // 9 CFR 318.10(c)(3)(i) Method 6, Table 4 footnote 1 (2015): pork 120 lb, salt 3.56, spices 2, wine 0.5, water and starter 1,
    // sugar 0.8, sodium nitrite 0.012; 356/121.5 = 2.93, and the 2.9 row of the table is taken.
    private static readonly Treatment Seasoning = Given.Draft(
        Given.Line("salt", "table", 3.56, "lb"), Given.Line("black-pepper", "ground", 2, "lb"), Given.Line("wine-red", null, 0.5, "lb"),
        Given.Line("water", null, 1, "lb"), Given.Line("sucrose", null, 0.8, "lb"), Given.Line("sodium-nitrite", null, 0.012, "lb"))
        .WrittenFor(120, "lb").Ratios().On(0);

    private static readonly PileLine Pork = Given.Pieces("beef-ground-80", 120 * 453.59237) with { Product = "dry-sausage" };

    [Fact]
    public void The_rule_s_own_example_comes_out_as_printed()
    {
        var salt = WetFormulation.SaltGramsPerKilogram(Given.Pile(Pork), 0, [Seasoning])!.Value;
        Assert.Equal(2.93, salt / 10, 0.005);
        Assert.Equal(356 / 121.5, salt / 10, 1e-9);
        Assert.Equal(2.9, WetFormulation.PercentRoundedDown(salt));
    }

    [Fact]
    public void The_range_of_that_rule_is_judged_on_that_base()
    {
        var check = SaltCheck.Of(SaltLedger.Of(Given.Pile(Pork), 0, [Seasoning], isWeighed: true), Seed.Catalogue).Single(c => c.Id == "S10");
        Assert.Equal((29, Verdict.Within), (check.Measured!.Value.Typical, check.Verdict));
    }

    [Fact]
    public void Meat_that_is_not_ground_has_no_formulation() => Assert.Null(
        WetFormulation.SaltGramsPerKilogram(Given.Pile(Given.Pieces("pork-loin", 1000)), 0, [Cures.Mix(Given.Ingredient("salt"), 1, 1, 20)]));

    [Theory]
    [InlineData("salt", true)]
    [InlineData("paprika", true)]
    [InlineData("cure-6-25", true)]
    [InlineData("water", false)]
    [InlineData("ice", false)]
    [InlineData("vinegar-cider", false)]
    public void What_is_dry_leaves_the_whole_and_what_is_wet_stays(string ingredient, bool isDry) =>
        Assert.Equal(isDry, WetFormulation.IsDry(Given.Ingredient(ingredient)));
}
