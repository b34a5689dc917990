using RubLab.Core.Diffusion;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Tests.Diffusion;
using RubLab.Core.Timing;

namespace RubLab.Core.Tests.Timing;

public sealed class SaltingRefusalTests
{
    private static readonly SaltingRequest Sound = new()
    {
        Method = SaltingMethod.DryBrine,
        Body = SaltedBody.Slab(Band.Exact(50), 2),
        Stages = [new(4, 24)],
        Diffusivity = AssumedDiffusivity.Given(Band.Exact(3e-10)),
    };

    public static TheoryData<string, SaltingRequest> Unsound => new()
    {
        { "no stage", Sound with { Stages = [] } },
        { "a negative time", Sound with { Stages = [new(4, 24), new(4, -1)] } },
        { "no time at all", Sound with { Stages = [new(4, 0)] } },
        { "more than a year", Sound with { Stages = [new(4, 5000), new(4, 5000)] } },
        { "a time that is no number", Sound with { Stages = [new(4, double.NaN)] } },
        { "frozen meat", Sound with { Stages = [new(-1, 24)] } },
        { "boiling meat", Sound with { Stages = [new(100.1, 24)] } },
        { "a temperature that is no number", Sound with { Stages = [new(double.NaN, 24)] } },
        { "a diffusivity a thousand times too small", Sound with { Diffusivity = AssumedDiffusivity.Given(Band.Exact(3e-13)) } },
        { "a diffusivity in square centimetres", Sound with { Diffusivity = AssumedDiffusivity.Given(Band.Exact(3e-6)) } },
        { "a diffusivity band that ends too high", Sound with { Diffusivity = AssumedDiffusivity.Given(new Band(3e-10, 3e-9, 3e-8)) } },
        { "a diffusivity of frozen meat", Sound with { Diffusivity = AssumedDiffusivity.Given(Band.Exact(3e-10), -5) } },
        { "a leaf", Sound with { Body = SaltedBody.Slab(Band.Exact(0.5), 2) } },
        { "a whale", Sound with { Body = SaltedBody.Slab(new Band(500, 900, 1100), 2) } },
        { "a drop of liquid", Sound with { Method = SaltingMethod.Soak, WaterRatio = 0.001 } },
        { "a lake", Sound with { Method = SaltingMethod.Soak, WaterRatio = 1e6 } },
    };

    [Fact]
    public void What_the_refusals_start_from_is_sound() => Assert.NotEmpty(Sound.Answer().Profile);

    [Theory]
    [MemberData(nameof(Unsound))]
    public void Is_refused(string what, SaltingRequest request)
    {
        Assert.NotEmpty(what);
        Assert.Throws<ArgumentOutOfRangeException>(() => request.Answer());
    }

    [Fact]
    public void A_soak_has_a_water_ratio_and_nothing_else_has()
    {
        Assert.Throws<InvalidOperationException>(() => (Sound with { Method = SaltingMethod.Soak }).Answer());
        Assert.Throws<InvalidOperationException>(() => (Sound with { WaterRatio = 2 }).Answer());
    }

    [Fact]
    public void The_ends_of_the_limits_are_inside_them()
    {
        var limits = Seed.Catalogue.Salting.Limits;
        double[] diffusivities = [1e-12, 1e-8];
        Assert.All(diffusivities, d => Assert.NotEmpty((Sound with { Diffusivity = AssumedDiffusivity.Given(Band.Exact(d)) }).Answer().Profile));
        Assert.NotEmpty((Sound with { Stages = [new(0, limits.LowestHours / 2), new(100, limits.LowestHours / 2)] }).Answer().Profile);
        Assert.Equal((1e-12, 1e-8), (limits.LowestDiffusivitySquareMetresPerSecond, limits.HighestDiffusivitySquareMetresPerSecond));
    }

    [Fact]
    public void A_body_has_size_and_treated_faces()
    {
        var thick = Band.Exact(50);
        Assert.Throws<ArgumentOutOfRangeException>(() => SaltedBody.Slab(Band.Exact(0), 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => SaltedBody.Slab(thick, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => SaltedBody.Slab(thick, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => SaltedBody.Cylinder(new Band(0, 10, 20)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SaltedBody.Brick(new(thick, 0), new(thick, 0), new(thick, 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SaltedBody.Brick(new(thick, 2), new(thick, -1), new(thick, 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => AssumedDiffusivity.Given(Band.Exact(0)));
    }

    [Fact]
    public void A_piece_s_thickness_goes_with_the_cube_root_of_its_weight_and_a_slab_s_does_not()
    {
        var shoulder = Given.Cut("pork-boston-butt").Shape!;
        Band small = ThicknessEstimate.Millimetres(shoulder, 2000), large = ThicknessEstimate.Millimetres(shoulder, 16000);
        var ribs = Given.Cut("pork-spareribs").Shape!;

        Assert.Equal(2, large.Typical / small.Typical, 1e-12);
        Assert.Equal(90.0 / 120, small.Low / small.Typical, 1e-12);
        Assert.Equal(150.0 / 120, small.High / small.Typical, 1e-12);
        Assert.Equal(ShapeKind.Slab, ribs.Kind);
        Assert.Equal(ThicknessEstimate.Millimetres(ribs, 500), ThicknessEstimate.Millimetres(ribs, 5000));
        Assert.All([0, -1, double.NaN, double.PositiveInfinity], grams => Assert.Throws<ArgumentOutOfRangeException>(() => ThicknessEstimate.Millimetres(shoulder, grams)));
    }
}
