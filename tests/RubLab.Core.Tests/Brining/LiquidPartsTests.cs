using RubLab.Core.Brining;
using RubLab.Core.Ingredients;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;

namespace RubLab.Core.Tests.Brining;

/// <summary>What a liquid is made of, in which order it goes in, and what of it stays in the meat.</summary>
public sealed class LiquidPartsTests
{
    private static readonly Ingredient Salt = Given.Ingredient("sodium-chloride");
    private static readonly Ingredient Water = Given.MadeUp("pure-water", null, Band.Exact(0), 0, "liquid") with { WaterGramsPer100Grams = 100 };

    // Ten grams of salt and ninety of water fill what a brine of 10 % does (1.0707 g/mL at 20 C, as printed), and twenty of anything else
    // add their own volume.
    [Fact]
    public void What_is_dissolved_beside_salt_adds_its_own_volume()
    {
        var figures = Seed.Catalogue.Brines;
        var other = Given.MadeUp("other", null, Band.Exact(0), 0);

        Assert.Equal(100 / 1.0707, 100 * Brine.Of([Salt, Water], [10, 90]).MillilitresPerGram(figures, 20), 0.01);
        Assert.Equal(
            (100 / 1.0707) + (20 * figures.DissolvedMillilitresPerGram), 120 * Brine.Of([Salt, Water, other], [10, 90, 20]).MillilitresPerGram(figures, 20), 0.01);
    }

    [Fact]
    public void What_is_neither_water_nor_salt_is_counted_and_doubt_of_salt_is_kept()
    {
        var doubtful = Given.MadeUp("doubtful", null, new Band(0, 30, 60), 0) with { WaterGramsPer100Grams = 50 };
        var brine = Brine.Of([doubtful, Water], [100, 300]);

        Assert.Equal((0, 0.075, 0.15), (brine.SaltFraction.Low, Math.Round(brine.SaltFraction.Typical, 12), Math.Round(brine.SaltFraction.High, 12)));
        Assert.Equal(0.875, brine.WaterFraction, 1e-12);
        Assert.Equal(0.05, brine.OtherFraction, 1e-12);
        Assert.Throws<ArgumentException>(() => Brine.Of([Salt, Water], [1]));
        Assert.Throws<ArgumentException>(() => Brine.Of([Salt, Water], [double.NaN, 1]));
    }

    [Fact]
    public void Every_liquid_goes_in_first_and_lines_of_one_step_keep_their_order()
    {
        string[] ids = ["honey", "sodium-erythorbate", "salt", "apple-juice", "black-pepper", "tetrasodium-pyrophosphate", "cooking-juices", "sugar-brown", "ice"];

        Assert.Equal(
            ["apple-juice", "cooking-juices", "ice", "tetrasodium-pyrophosphate", "salt", "honey", "sugar-brown", "sodium-erythorbate", "black-pepper"],
            InOrder(ids));
    }

    // Bouillon is up to two thirds salt: a phosphate that went in after it would not dissolve.
    [Theory]
    [InlineData("beef-bouillon-powder")]
    [InlineData("chicken-bouillon-cube")]
    [InlineData("coffee-instant-powder")]
    public void A_powder_of_a_broth_or_a_drink_is_no_liquid(string powder) =>
        Assert.Equal(["water", "sodium-tripolyphosphate", "salt", powder], InOrder([powder, "salt", "sodium-tripolyphosphate", "water"]));

    [Theory]
    [InlineData("sodium-tripolyphosphate", true)]
    [InlineData("tetrasodium-pyrophosphate", true)]
    [InlineData("sodium-erythorbate", false)]
    [InlineData("salt", false)]
    public void Phosphates_are_told_from_other_additives(string id, bool isPhosphate)
    {
        Assert.Equal(isPhosphate, DissolvingOrder.IsPhosphate(Given.Ingredient(id)));
        Assert.False(DissolvingOrder.IsPhosphate(Given.Ingredient(id) with { Group = "leavening" }));
    }

    // 10 % pumped of which 50 to 90 % stay; brine of 3 to 5 %: at the least 1.5 g stay in 1050, at the most 4.5 in 1090.
    [Fact]
    public void What_stays_in_pumped_meat_is_a_band_of_both_strength_and_what_drains()
    {
        var pumped = new Injection(10, new Band(50, 80, 90));
        var share = new Band(0.03, 0.04, 0.05);

        AssertBand(1500 / 1050.0, 3200 / 1080.0, 4500 / 1090.0, pumped.GramsPerKilogramInjected(share));
        AssertBand(1.5, 3.2, 4.5, pumped.GramsPerKilogramGreen(share));
        AssertBand(5, 8, 9, pumped.AddedSolutionAfterDrainingPercent);
        // 9 CFR 317.2(e)(2): what is added, not what is left of it.
        Assert.Equal(10, pumped.AddedSolutionPercent);
    }

    // Salt all in the meat's water or all in the liquid's: without any there is no strength.
    [Fact]
    public void A_soak_without_salt_has_no_strength_and_salt_in_the_meat_gives_it_some()
    {
        var soak = new Soak { LiquidGramsPerKilogram = 1000, Liquid = Brine.Of([Water], [1]), MeatWaterGramsPerKilogram = 700 };

        Assert.Equal(0, soak.EvenStrengthPercent);
        // 17 g to 1700 g of water.
        Assert.Equal(100 * 17.0 / 1717, (soak with { SaltInMeatGramsPerKilogram = 17 }).EvenStrengthPercent, 1e-9);
        AssertBand(0.2 / 3, 0.5 / 3, 0.9 / 3, Soak.TakenUp(2, new Band(0.2, 0.5, 0.9)));
    }

    // Meat of 700 g of water in 1050 of it: the meat's part is 0.4. A liquid of 0 to 10 % by doubt, on meat that has 20 g already.
    [Fact]
    public void Doubt_of_a_soak_s_salt_and_of_its_time_reaches_the_meat()
    {
        var doubtful = Given.MadeUp("doubtful", null, new Band(0, 50, 100), 0);
        var soak = new Soak
        {
            LiquidGramsPerKilogram = 1150, Liquid = Brine.Of([doubtful, Water], [100, 1050]), MeatWaterGramsPerKilogram = 700,
            SaltInMeatGramsPerKilogram = 20, Evenness = new Band(0.25, 0.5, 0.75),
        };

        // Even it would be 0.4 x (20 + 0, 50, 100) = 8, 28, 48.
        AssertBand(8, 28, 48, soak.EvenSaltGramsPerKilogram);
        // It loses most with 8 to come to and three quarters of the way, gains most with 48 and as far.
        AssertBand(20 - (12 * 0.75), 24, 20 + (28 * 0.75), soak.SaltGramsPerKilogram);
    }

    // Of a cube of side a, volume over surface is a / 6 and half its thickness a / 2.
    [Fact]
    public void A_cube_is_between_a_sixth_of_its_side_and_half_of_it()
    {
        var piece = new PieceGeometry(6, 6, 6, 216, 216);

        var geometry = SoakGeometry.Of(piece);

        AssertBand(10, 10 * Math.Sqrt(3), 30, geometry.HalfThicknessMillimetres);
        Assert.False(geometry.IsCylinder);
        Assert.Equal(new SoakGeometry(Band.Exact(25), true), SoakGeometry.Measured(50, true));
    }

    // At first salt comes in through 2/r of surface a volume of a cylinder, and through 1/l of a slab (Crank 3.15): twice as fast.
    [Fact]
    public void A_cylinder_takes_up_salt_twice_as_fast_as_a_slab_at_first()
    {
        double At(bool isCylinder) => Soak.EvennessAfter(1e6, new SoakGeometry(Band.Exact(30), isCylinder), Band.Exact(3e-10), 5).Typical;
        var slab = 2 * Math.Sqrt(3e-10 * 300 / Math.PI) / 0.03;

        Assert.Equal(slab, At(false), slab * 0.001);
        Assert.Equal(2 * slab, At(true), slab * 0.02);
    }

    private static IEnumerable<string> InOrder(string[] ids) => DissolvingOrder.Of(ids.Select(Given.Ingredient).ToList()).Select(i => ids[i]);

    private static void AssertBand(double low, double typical, double high, Band band)
    {
        Assert.Equal(low, band.Low, 1e-9);
        Assert.Equal(typical, band.Typical, 1e-9);
        Assert.Equal(high, band.High, 1e-9);
    }
}
