using RubLab.Core.Diffusion;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Tests.Diffusion;
using RubLab.Core.Timing;

namespace RubLab.Core.Tests.Timing;

/// <summary>Bands of an answer, held against the exact answers of the pieces inside them.</summary>
public sealed class SaltingBandsTests
{
    private static readonly Band Diffusivity = new(2e-10, 3e-10, 4e-10);
    private static readonly Band Thickness = new(40, 50, 65);

    private static readonly SaltingRequest Slab = new()
    {
        Method = SaltingMethod.DryBrine,
        Body = SaltedBody.Slab(Thickness, 2),
        Stages = [new(5, 48)],
        Diffusivity = AssumedDiffusivity.Given(Diffusivity),
    };

    [Theory]
    [InlineData(SaltingMethod.DryBrine)]
    [InlineData(SaltingMethod.SaltBed)]
    public void A_slab_s_profile_spans_those_of_the_pieces_inside_it_and_no_more(SaltingMethod method)
    {
        var wide = (Slab with { Method = method }).Answer().Profile;
        var inside = (from mm in Steps(Thickness) from d in Steps(Diffusivity) select Exact(SaltedBody.Slab(Band.Exact(mm), 2), d, method).Profile).ToList();

        for (var i = 0; i < wide.Count; i++)
        {
            Assert.Equal(i / 20.0, wide[i].Position, 1e-12);
            AssertSpans(wide[i].RelativeToMean, inside.Select(p => p[i].RelativeToMean.Typical), 0.02);
            Assert.Equal(wide[i].RelativeToMean, wide[i].LayerRelativeToMean);
        }
    }

    [Fact]
    public void The_first_place_of_a_profile_is_the_middle()
    {
        SaltedBody[] bodies = [SaltedBody.Slab(Thickness, 2), SaltedBody.Cylinder(Thickness), Brick(Thickness)];
        Assert.All(bodies, body =>
        {
            var answer = (Slab with { Body = body }).Answer();
            var place = answer.Profile[0].RelativeToMean;

            Assert.True(place.Low < place.Typical && place.Typical < place.High);
            Assert.Equal(answer.CentreToMean.Low, place.Low, 1e-9);
            Assert.Equal(answer.CentreToMean.Typical, place.Typical, 1e-9);
            Assert.Equal(answer.CentreToMean.High, place.High, 1e-9);
        });
    }

    [Fact]
    public void A_brick_s_profile_holds_those_of_its_smallest_and_its_largest()
    {
        var wide = (Slab with { Body = Brick(Thickness) }).Answer();
        double[] sizes = [Thickness.Low, Thickness.High];
        double[] diffusivities = [Diffusivity.Low, Diffusivity.High];
        var corners = (from mm in sizes from d in diffusivities select Exact(Brick(Band.Exact(mm)), d)).ToList();

        Assert.Equal(corners.Min(c => c.DepthMillimetres.Typical), wide.DepthMillimetres.Low, 1e-6);
        for (var i = 0; i < wide.Profile.Count; i++)
        {
            Assert.All(corners, c => Assert.InRange(c.Profile[i].RelativeToMean.Typical, wide.Profile[i].RelativeToMean.Low - 1e-9, wide.Profile[i].RelativeToMean.High + 1e-9));
            Assert.All(corners, c => Assert.InRange(c.Profile[i].LayerRelativeToMean.Typical, wide.Profile[i].LayerRelativeToMean.Low - 1e-9, wide.Profile[i].LayerRelativeToMean.High + 1e-9));
        }
    }

    // What the meat has, at a bath of twice its water a third of all, the liquid has not.
    [Fact]
    public void The_liquid_is_weakest_where_the_meat_takes_most()
    {
        var soak = (Slab with { Method = SaltingMethod.Soak, WaterRatio = 2 }).Answer();

        Assert.Equal(1, soak.LiquidFraction!.Value.Low + (soak.UptakeFraction.High / 3), 1e-12);
        Assert.Equal(1, soak.LiquidFraction.Value.High + (soak.UptakeFraction.Low / 3), 1e-12);
    }

    [Fact]
    public void A_body_is_exact_where_all_of_it_is_and_is_entered_by_treated_faces_alone()
    {
        Band exact = Band.Exact(50);
        Assert.True(SaltedBody.Brick(new(exact, 2), new(exact, 2), new(exact, 0)).IsExact);
        Assert.False(SaltedBody.Brick(new(exact, 2), new(Thickness, 2), new(exact, 0)).IsExact);
        // The thin way is closed; the next is 80 mm from both sides.
        Assert.Equal(40, SaltedBody.Brick(new(exact, 0), new(Band.Exact(80), 2), new(Band.Exact(120), 2)).Nearest.ReachMillimetres.Typical);
    }

    // A brick as long, wide and thick as estimated weighs what it weighs.
    [Fact]
    public void An_estimated_thickness_is_that_of_a_piece_of_its_weight()
    {
        var shape = Given.Cut("beef-brisket").Shape!;
        var centimetres = ThicknessEstimate.Millimetres(shape, 6000).Typical / 10;

        Assert.Equal(ShapeKind.Brick, shape.Kind);
        Assert.Equal(
            6, Math.Pow(centimetres, 3) * shape.LengthToThickness * shape.WidthToThickness * 1e-6 * shape.DensityKilogramsPerCubicMetre, 1e-9);
    }

    private static SaltedBody Brick(Band thickness) => SaltedBody.Brick(new(thickness, 2), new(thickness.Times(2), 2), new(thickness.Times(3), 1));

    private static SaltingTimes Exact(SaltedBody body, double diffusivity, SaltingMethod method = SaltingMethod.DryBrine) =>
        (Slab with { Method = method, Body = body, Diffusivity = AssumedDiffusivity.Given(Band.Exact(diffusivity)) }).Answer();

    private static IEnumerable<double> Steps(Band band) => Enumerable.Range(0, 9).Select(i => band.Low + ((band.High - band.Low) * i / 8));

    private static void AssertSpans(Band band, IEnumerable<double> inside, double slack)
    {
        var values = inside.ToList();
        Assert.True(values.Min() >= band.Low * (1 - 1e-6) && values.Max() <= band.High * (1 + 1e-6), $"{values.Min()} to {values.Max()} in {band}");
        Assert.True(band.Low >= values.Min() * (1 - slack) && band.High <= values.Max() * (1 + slack), $"{band} for {values.Min()} to {values.Max()}");
    }
}
