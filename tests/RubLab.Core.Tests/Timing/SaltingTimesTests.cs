using RubLab.Core.Diffusion;
using RubLab.Core.Quantities;
using RubLab.Core.Tests.Diffusion;
using RubLab.Core.Timing;

namespace RubLab.Core.Tests.Timing;

public sealed class SaltingTimesTests
{
    private static readonly SaltingRequest Slab = new()
    {
        Method = SaltingMethod.DryBrine,
        Body = SaltedBody.Slab(Band.Exact(50), 2),
        Stages = [new(4, 24)],
        Diffusivity = AssumedDiffusivity.Given(Band.Exact(3e-10)),
    };

    [Fact]
    public void A_day_does_not_salt_fifty_millimetres_to_the_middle()
    {
        var day = Slab.Answer();

        Assert.Equal(0.013, day.CentreToMean.Typical, 5e-4);
        Assert.Equal(216, day.HoursToEven95.Typical, 0.5);
        Assert.True(day.HoursToEven95.IsExact && day.DepthMillimetres.IsExact && day.CentreToMean.IsExact);
        Assert.Equal(1, day.UptakeFraction.Typical);
        Assert.Null(day.HoursToHalfUptake);
        Assert.Null(day.LiquidFraction);
    }

    // M / sqrt(pi D t) exp(-x^2 / 4 D t) = M / 2 l, with the far face out of reach.
    [Fact]
    public void The_depth_of_a_dry_brine_is_where_it_falls_to_half_of_even()
    {
        var travel = 3e-10 * 86400 * 1e6;
        var depth = Math.Sqrt(4 * travel * Math.Log(2 * 25 / Math.Sqrt(Math.PI * travel)));

        Assert.Equal(depth, Slab.Answer().DepthMillimetres.Typical, 1e-3);
    }

    // erfc x = 1/2 at x = 0.4769362762: Abramowitz and Stegun table 7.1, inverted.
    [Fact]
    public void The_depth_in_a_bed_is_where_it_falls_to_half_of_the_face() => Assert.Equal(
        2 * 0.4769362762 * Math.Sqrt(3e-10 * 86400 * 1e6),
        (Slab with { Method = SaltingMethod.SaltBed }).Answer().DepthMillimetres.Typical,
        1e-3);

    [Fact]
    public void Meat_salted_through_is_salted_to_its_middle_and_no_deeper() =>
        Assert.Equal(25, (Slab with { Stages = [new(4, 500)] }).Answer().DepthMillimetres.Typical);

    [Fact]
    public void One_face_of_a_slab_is_as_far_as_both_of_one_twice_as_thick()
    {
        var one = (Slab with { Body = SaltedBody.Slab(Band.Exact(25), 1) }).Answer();
        var two = Slab.Answer();

        Assert.Equal(two.CentreToMean, one.CentreToMean);
        Assert.Equal(two.HoursToEven95, one.HoursToEven95);
        Assert.Equal(two.Profile, one.Profile);
    }

    [Fact]
    public void A_blocked_face_takes_four_times_as_long()
    {
        var capped = (Slab with { Body = SaltedBody.Slab(Band.Exact(50), 1) }).Answer();

        Assert.Equal(4, capped.HoursToEven95.Typical / Slab.Answer().HoursToEven95.Typical, 1e-9);
    }

    [Fact]
    public void A_brick_with_its_ends_closed_is_a_slab()
    {
        var closed = new SaltedDimension(Band.Exact(200), 0);
        SaltingMethod[] methods = [SaltingMethod.DryBrine, SaltingMethod.SaltBed, SaltingMethod.Soak];
        Assert.All(methods, method =>
        {
            var slab = Slab with { Method = method, WaterRatio = method == SaltingMethod.Soak ? 2 : null };
            var brick = slab with { Body = SaltedBody.Brick(new(Band.Exact(50), 2), closed, closed) };

            Assert.Equal(slab.Answer() with { Request = brick, Profile = [] }, brick.Answer() with { Profile = [] });
            Assert.Equal(slab.Answer().Profile, brick.Answer().Profile);
        });
    }

    // Three equal pairs of faces: each sheet is a third of the salt.
    [Fact]
    public void A_cube_dry_brined_all_over_has_the_middle_of_its_slab()
    {
        SaltedDimension side = new(Band.Exact(50), 2);
        var cube = (Slab with { Body = SaltedBody.Brick(side, side, side), Stages = [new(4, 48)] }).Answer();
        var slab = (Slab with { Stages = [new(4, 48)] }).Answer();

        Assert.Equal(slab.CentreToMean.Typical, cube.CentreToMean.Typical, 1e-12);
        Assert.Equal((slab.Profile[^1].RelativeToMean.Typical + 2) / 3, cube.Profile[^1].LayerRelativeToMean.Typical, 1e-12);
    }

    [Fact]
    public void Stages_add_up_as_diffusivity_times_time()
    {
        var once = (Slab with { Stages = [new(4, 24)] }).Answer();
        var thrice = (Slab with { Stages = [new(4, 7), new(60, 12), new(4, 5)] }).Answer();

        Assert.Equal(once.CentreToMean.Typical, thrice.CentreToMean.Typical, 1e-12);
        Assert.Equal(once.HoursToEven95.Typical, thrice.HoursToEven95.Typical, 1e-9);
    }

    [Fact]
    public void An_hour_in_the_cooker_counts_as_several_in_the_cold()
    {
        var known = AssumedDiffusivity.Given(Band.Exact(3e-10), temperatureCelsius: 5);
        var warm = (Slab with { Diffusivity = known, Stages = [new(5, 12), new(90, 6)] }).Answer();
        var speed = 363.15 / 278.15 * 1.519 / 0.314;
        var cold = (Slab with { Diffusivity = known, Stages = [new(5, 12 + (6 * speed))] }).Answer();

        Assert.Equal(cold.CentreToMean.Typical, warm.CentreToMean.Typical, 1e-12);
        Assert.Equal(6 * speed / (12 + (6 * speed)), warm.WarmShare, 1e-12);
        // Twelve hours in the cold, then as long in the warm as is left.
        Assert.Equal(12 + ((cold.HoursToEven95.Typical - 12) / speed), warm.HoursToEven95.Typical, 1e-9);
    }

    [Fact]
    public void A_time_inside_an_early_stage_is_counted_there()
    {
        var known = AssumedDiffusivity.Given(Band.Exact(3e-10), temperatureCelsius: 5);
        var late = (Slab with { Diffusivity = known, Stages = [new(5, 1000), new(90, 6)] }).Answer();

        Assert.Equal(216.3, late.HoursToEven95.Typical, 0.1);

        // The same travel, warm from the start: one hour counts for the ratio of the speeds.
        var warm = (Slab with { Diffusivity = known, Stages = [new(90, 1000), new(5, 6)] }).Answer();
        Assert.Equal(late.HoursToEven95.Typical / Seed.Catalogue.Salting.Speeding(90, 5), warm.HoursToEven95.Typical, 1e-9);
    }

    // As thin as the depth, a piece is salted through; thinner it is only as deep as it is, thicker the far face helps less.
    [Fact]
    public void The_deepest_a_piece_may_be_salted_is_at_a_size_between_its_ends()
    {
        var wide = (Slab with { Method = SaltingMethod.SaltBed, Body = SaltedBody.Slab(new Band(5, 50, 100), 2) }).Answer().DepthMillimetres;
        double[] thicknesses = [.. Enumerable.Range(5, 96)];
        var depths = Array.ConvertAll(thicknesses, mm => (Slab with { Method = SaltingMethod.SaltBed, Body = SaltedBody.Slab(Band.Exact(mm), 2) }).Answer().DepthMillimetres.Typical);

        Assert.InRange(depths.Max(), Math.Max(depths[0], depths[^1]) * 1.2, wide.High);
        Assert.Equal(depths.Max(), wide.High, 0.5);
        Assert.Equal(depths.Min(), wide.Low, 1e-9);
    }

    [Fact]
    public void The_liquid_of_a_soak_weakens_by_what_the_meat_takes()
    {
        var soak = (Slab with { Method = SaltingMethod.Soak, WaterRatio = 2, Diffusivity = AssumedDiffusivity.Given(new Band(2e-10, 3e-10, 1e-9)) }).Answer();

        Assert.Equal(1, soak.LiquidFraction!.Value.Typical + (soak.UptakeFraction.Typical / 3), 1e-14);
        Assert.True(soak.LiquidFraction.Value.Low < soak.LiquidFraction.Value.Typical && soak.LiquidFraction.Value.Typical < soak.LiquidFraction.Value.High);
        Assert.Equal(LimitedBath.Slab(2).UptakeAt(3e-10 * 86400 / (0.025 * 0.025)), soak.UptakeFraction.Typical, 1e-12);
    }

    [Fact]
    public void A_cylinder_is_even_sooner_than_a_slab_as_thick()
    {
        var slab = Slab.Answer();
        var cylinder = (Slab with { Body = SaltedBody.Cylinder(Band.Exact(50)) }).Answer();

        // The slowest mode goes with 3.8317^2 in place of pi^2, and its part in the middle is 1 / |J0(3.8317)| in place of 2.
        Assert.Equal(Math.Log(1 / 0.4027593957 / 0.05) / 14.68197064 * 625 / 3e-10 / 3.6e9, cylinder.HoursToEven95.Typical, 0.05);
        Assert.True(cylinder.HoursToEven95.Typical < slab.HoursToEven95.Typical);
    }

    [Fact]
    public void Overnight_salts_the_outer_millimetres_of_pork()
    {
        Assert.True(Seed.Catalogue.Salting.TryFindDiffusivity("pork", out var pork));
        var night = (Slab with { Stages = [new(4, 12)], Diffusivity = AssumedDiffusivity.Of(pork) }).Answer();

        Assert.InRange(night.DepthMillimetres.Low, 6, 9);
        Assert.InRange(night.DepthMillimetres.Typical, 9, 12);
        Assert.InRange(night.DepthMillimetres.High, 14, 18);
        Assert.True(night.CentreToMean.High < 0.5);
    }

    [Fact]
    public void The_course_ends_where_the_answer_is_and_goes_through_its_times()
    {
        var reference = Seed.Catalogue.Salting;
        Assert.True(reference.TryFindDiffusivity("pork", out var pork));
        var request = Slab with
        {
            Method = SaltingMethod.SaltBed,
            Body = SaltedBody.Slab(new Band(40, 50, 65), 2),
            Stages = [new(4, 12), new(70, 3), new(5, 9)],
            Diffusivity = AssumedDiffusivity.Of(pork),
        };
        var answer = request.Answer();
        var course = answer.Course([request.Hours, answer.HoursToHalfUptake!.Value.Typical, answer.HoursToEven95.Typical, answer.HoursToEven95.High]);

        Assert.Equal((answer.UptakeFraction, answer.CentreToMean), (course[0].UptakeFraction, course[0].CentreToMean));
        Assert.Equal(0.5, course[1].UptakeFraction.Typical, 1e-9);
        Assert.Equal(0.95, course[2].CentreToMean.Typical, 1e-9);
        Assert.Equal(0.95, course[3].CentreToMean.Low, 1e-9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(9e-7)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_course_has_no_hour_before_the_figures_mean_something(double hour) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Slab.Answer().Course([hour]));
}
