using CsCheck;
using RubLab.Core.Brining;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;

namespace RubLab.Core.Tests.Brining;

public sealed class SoakTests
{
    private static readonly Brine Hundred = Brine.Of([Given.Ingredient("sodium-chloride"), Given.Ingredient("water")], [100, 1000]);

    // E11: 100 g of salt, 1000 g of water, 700 g of water in the meat: 41.18 g in the meat and 58.82 g in the liquid.
    private static readonly Soak Even = new() { LiquidGramsPerKilogram = 1100, Liquid = Hundred, MeatWaterGramsPerKilogram = 700 };

    [Fact]
    public void Salt_once_even_is_the_meat_s_part_of_the_water()
    {
        Assert.Equal(41.18, Even.SaltGramsPerKilogram.Typical, 0.005);
        Assert.Equal(58.82, 100 - Even.SaltGramsPerKilogram.Typical, 0.005);
        Assert.Equal(100.0 / 1800 * 100, Even.EvenStrengthPercent, 1e-9);
        Assert.Equal(41.18, Soak.TakenUp(1000.0 / 700, Band.Exact(1)).Typical * 100, 0.005);
    }

    [Fact]
    public void No_salt_is_lost() => Law.Holds(
        Gen.Select(Gen.Double[10, 5000], Gen.Double[100, 900], Gen.Double[0, 50], Gen.Double[0, 1]), 500, c =>
        {
            var (liquid, water, own, evenness) = c;
            var soak = Even with { LiquidGramsPerKilogram = liquid, MeatWaterGramsPerKilogram = water, SaltInMeatGramsPerKilogram = own, Evenness = Band.Exact(evenness) };
            var put = liquid * 100 / 1100;
            var inMeat = soak.SaltGramsPerKilogram.Typical;
            Assert.InRange(inMeat, Math.Min(own, soak.EvenSaltGramsPerKilogram.Typical) - 1e-9, Math.Max(own, soak.EvenSaltGramsPerKilogram.Typical) + 1e-9);
            var even = soak.EvenSaltGramsPerKilogram.Typical;
            // Once even, a gram of water holds as much salt in the meat as in the liquid.
            Assert.Equal(even / water, (put + own - even) / (liquid * 1000 / 1100), 1e-9);
        });

    [Fact]
    public void Meat_saltier_than_the_liquid_gives_salt_up()
    {
        var desalted = Even with { Liquid = Brine.Of([Given.Ingredient("water")], [1]), SaltInMeatGramsPerKilogram = 40, Evenness = new Band(0.2, 0.5, 0.9) };

        var even = 40 * 700.0 / (1100 + 700);
        Assert.Equal(even, desalted.EvenSaltGramsPerKilogram.Typical, 1e-9);
        Assert.Equal(40 - ((40 - even) * 0.9), desalted.SaltGramsPerKilogram.Low, 1e-9);
        Assert.Equal(40 - ((40 - even) * 0.2), desalted.SaltGramsPerKilogram.High, 1e-9);
    }

    [Fact]
    public void The_corners_hold_every_evenness_inside_them() => Law.Holds(
        Gen.Select(Gens.BandOf(5, 60), Gens.BandOf(1e-10, 1e-9), Gen.Double[1, 20000], Gens.Unit, Gens.Unit), 200, c =>
        {
            var (half, diffusivity, minutes, thick, fast) = c;
            var band = Soak.EvennessAfter(2, new SoakGeometry(half, false), diffusivity, minutes);
            var inside = Soak.EvennessAfter(
                2, new SoakGeometry(Band.Exact(Gens.Inside(half, thick)), false), Band.Exact(Gens.Inside(diffusivity, fast)), minutes);
            Assert.InRange(inside.Typical, band.Low - 1e-9, band.High + 1e-9);
        });

    [Fact]
    public void Time_brings_a_soak_nearer_to_even_and_a_thick_piece_is_behind()
    {
        double At(double minutes, double thickness) => Soak.EvennessAfter(1.5, SoakGeometry.Measured(thickness, false), Band.Exact(3e-10), minutes).Typical;

        Assert.Equal(0, At(0, 50));
        Assert.True(At(60, 50) < At(600, 50));
        Assert.True(At(600, 100) < At(600, 50));
        Assert.Equal(1, At(1e7, 20), 1e-6);
    }

    [Fact]
    public void Early_uptake_of_a_whole_piece_is_that_of_all_its_surface()
    {
        // At first salt taken up is 2 A C sqrt(D t / pi), whatever the shape (Crank 3.15): here in a liquid that hardly weakens.
        var piece = PieceGeometry.Of(Given.Cut("pork-shoulder").Shape!, 5000, null);
        var seconds = 3600.0;
        var expected = 2 * piece.SurfaceSquareCentimetres * 1e-4 * Math.Sqrt(3e-10 * seconds / Math.PI) / (piece.VolumeCubicCentimetres * 1e-6);

        var band = Soak.EvennessAfter(1e6, SoakGeometry.Of(piece), Band.Exact(3e-10), seconds / 60);
        Assert.Equal(expected, band.High, expected * 1e-3);
        Assert.True(band.Low < band.Typical && band.Typical < band.High);
    }

    [Fact]
    public void A_strength_solved_for_a_level_reaches_it_and_what_cannot_be_reached_is_told()
    {
        var share = SoakTarget.ShareFor(At, 0.26, 20, out var reachable);
        Assert.Equal(20, At(share!.Value).SaltGramsPerKilogram.Typical, 1e-9);
        Assert.Equal(0, reachable.Low);
        // Both ends can be reached.
        Assert.Equal(0, SoakTarget.ShareFor(At, 0.26, 0, out _)!.Value, 1e-12);
        Assert.Equal(0.26, SoakTarget.ShareFor(At, 0.26, reachable.High, out _)!.Value, 1e-12);

        Assert.Null(SoakTarget.ShareFor(At, 0.26, 500, out reachable));
        Assert.Equal(At(0.26).SaltGramsPerKilogram.Typical, reachable.High, 1e-12);

        static Soak At(double salt) => Even with { Liquid = Brine.Of([Given.Ingredient("sodium-chloride"), Given.Ingredient("water")], [salt, 1 - salt]) };
    }

    [Fact]
    public void What_covers_is_what_the_meat_leaves_of_the_vessel()
    {
        Assert.Equal(3000, Covering.LeastMillilitres(2000, 5000));
        var stacked = Covering.LeastMillilitres(3000, new Band(50, 60, 75));
        Assert.Equal((1000, 2000, 3000), (stacked.Low, stacked.Typical, stacked.High));
    }
}
