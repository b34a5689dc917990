using CsCheck;
using RubLab.Core.Diffusion;
using RubLab.Core.Quantities;
using RubLab.Core.Tests.Diffusion;
using RubLab.Core.Timing;

namespace RubLab.Core.Tests.Timing;

/// <summary>What holds for every method, body, time and band.</summary>
public sealed class SaltingLaws
{
    private static readonly Gen<(SaltingMethod Method, double? Ratio)> Methods = Gen.Select(Gen.Int[0, 2], Gen.Double[-3, 5].Select(Math.Exp))
        .Select((method, ratio) => ((SaltingMethod)method, method == (int)SaltingMethod.Soak ? ratio : (double?)null));

    private static readonly Gen<SaltedBody> Bodies = Gen.OneOf(
        Gen.Select(Gens.BandOf(10, 120), Gen.Int[1, 2], SaltedBody.Slab),
        Gens.BandOf(10, 120).Select(SaltedBody.Cylinder),
        Gen.Select(Dimension(1), Dimension(0), Dimension(0), SaltedBody.Brick));

    private static readonly Gen<SaltingRequest> Requests = Gen.Select(
        Methods, Bodies, Gens.BandOf(1e-10, 2e-9), Gen.Double[0.5, 500], Gen.Double[0, 60],
        (method, body, diffusivity, hours, celsius) => new SaltingRequest
        {
            Method = method.Method,
            WaterRatio = method.Ratio,
            Body = body,
            Stages = [new(4, hours / 2), new(celsius, hours / 2)],
            Diffusivity = AssumedDiffusivity.Given(diffusivity, 4),
        });

    [Fact]
    public void Every_piece_inside_the_bands_has_an_answer_inside_the_bands() => Law.Holds(
        Gen.Select(Requests, Gen.Double[0, 1], Gen.Double[0, 1]), 60, x =>
        {
            var (request, size, speed) = x;
            var wide = request.Answer();
            var exact = (request with
            {
                Body = Exactly(request.Body, size),
                Diffusivity = AssumedDiffusivity.Given(Band.Exact(Gens.Inside(request.Diffusivity.SquareMetresPerSecond, speed)), 4),
            }).Answer();

            Within(wide.UptakeFraction, exact.UptakeFraction);
            Within(wide.CentreToMean, exact.CentreToMean);
            Within(wide.DepthMillimetres, exact.DepthMillimetres);
            Within(wide.HoursToEven50, exact.HoursToEven50);
            Within(wide.HoursToEven95, exact.HoursToEven95);
            void Within(Band band, Band one) => Inside(request.Body.Shape, band, one);

            if (wide.HoursToHalfUptake is { } half)
            {
                Within(half, exact.HoursToHalfUptake!.Value);
            }

            for (var i = 0; i < SaltingTimes.ProfilePlaces; i++)
            {
                Within(wide.Profile[i].RelativeToMean, exact.Profile[i].RelativeToMean);
                Within(wide.Profile[i].LayerRelativeToMean, exact.Profile[i].LayerRelativeToMean);
            }
        });

    [Fact]
    public void More_time_takes_more_salt_deeper_and_more_evenly() => Law.Holds(Gen.Select(Requests, Gen.Double[1.01, 4]), 80, x =>
    {
        var (request, longer) = x;
        var exact = request with
        {
            Body = Exactly(request.Body, 0.5),
            Diffusivity = AssumedDiffusivity.Given(Band.Exact(request.Diffusivity.SquareMetresPerSecond.Typical), 4),
        };
        var now = exact.Answer();
        var then = (exact with { Stages = [.. exact.Stages.Select(s => s with { Hours = s.Hours * longer })] }).Answer();

        Assert.True(then.UptakeFraction.Typical >= now.UptakeFraction.Typical - 1e-9);
        Assert.True(then.CentreToMean.Typical >= now.CentreToMean.Typical - 1e-7);
        Assert.True(then.DepthMillimetres.Typical >= now.DepthMillimetres.Typical - 1e-6);
    });

    [Fact]
    public void At_the_time_to_evenness_it_is_even() => Law.Holds(Requests, 60, request =>
    {
        var exact = request with
        {
            Body = Exactly(request.Body, 0.5),
            Diffusivity = AssumedDiffusivity.Given(Band.Exact(request.Diffusivity.SquareMetresPerSecond.Typical)),
        };
        var answer = exact.Answer();
        if (answer.HoursToEven95.Typical <= Seed.Catalogue.Salting.Limits.HighestHours)
        {
            Assert.Equal(0.95, At(answer.HoursToEven95).CentreToMean.Typical, 1e-6);
            Assert.Equal(0.5, At(answer.HoursToEven50).CentreToMean.Typical, 1e-6);
        }

        if (answer.HoursToHalfUptake is { } half && half.Typical > Seed.Catalogue.Salting.Limits.LowestHours)
        {
            Assert.Equal(0.5, At(half).UptakeFraction.Typical, 1e-8);
        }

        SaltingTimes At(Band hours) => (exact with { Stages = [new(4, hours.Typical)] }).Answer();
    });

    // From a leaf to a carcass, from half a minute to a year.
    [Fact]
    public void Everything_inside_the_limits_has_an_answer() => Law.Holds(
        Gen.Select(Gen.Int[0, 2], Gen.Double[-2, 3], Gen.Int[0, 2], Sizes, Gen.Double[-12, -8], Gen.Double[-2, 3.9]), 300, x =>
        {
            var (method, ratio, shape, sizes, diffusivity, hours) = x;
            var body = shape switch
            {
                0 => SaltedBody.Slab(sizes[0].Millimetres, Math.Max(1, sizes[0].FacesTreated)),
                1 => SaltedBody.Cylinder(sizes[0].Millimetres),
                _ => SaltedBody.Brick(sizes[0] with { FacesTreated = Math.Max(1, sizes[0].FacesTreated) }, sizes[1], sizes[2]),
            };
            var answer = new SaltingRequest
            {
                Method = (SaltingMethod)method,
                WaterRatio = method == (int)SaltingMethod.Soak ? Math.Pow(10, ratio) : null,
                Body = body,
                Stages = [new(4, Math.Pow(10, hours))],
                Diffusivity = AssumedDiffusivity.Given(Band.Exact(Math.Pow(10, diffusivity))),
            }.Answer();

            Assert.InRange(answer.UptakeFraction.Typical, 0, 1 + 1e-9);
            Assert.InRange(answer.CentreToMean.Typical, 0, 1 + 1e-6);
            Assert.InRange(answer.DepthMillimetres.Low, 0, body.Nearest.ReachMillimetres.High);
            Assert.True(answer.HoursToEven95.Typical >= answer.HoursToEven50.Typical);
            Assert.All(answer.Profile, p => Assert.True(double.IsFinite(p.RelativeToMean.High) && double.IsFinite(p.LayerRelativeToMean.High)));
        });

    [Fact]
    public void A_profile_falls_inward_and_its_layers_average_one() => Law.Holds(
        Gen.Select(Methods, Gen.OneOf(Gen.Const(SaltedShape.Slab), Gen.Const(SaltedShape.Cylinder)), Gen.Double[0.05, 2]), 200, x =>
        {
            var ((method, ratio), shape, time) = x;
            var body = shape == SaltedShape.Slab ? SaltedBody.Slab(Band.Exact(200), 2) : SaltedBody.Cylinder(Band.Exact(200));
            var profile = DiffusionCases.Of(body, method, time * 100 * 100, ratio).Answer().Profile;
            double sum = 0;
            for (var i = 0; i < profile.Count; i++)
            {
                var area = shape == SaltedShape.Slab ? 1 : 2 * profile[i].Position;
                sum += area * profile[i].LayerRelativeToMean.Typical * (i == 0 || i == profile.Count - 1 ? 1 : i % 2 == 1 ? 4 : 2);
                Assert.True(i == 0 || profile[i].RelativeToMean.Typical >= profile[i - 1].RelativeToMean.Typical - 1e-9);
            }

            // Simpson's rule on the places there are.
            Assert.Equal(1, sum / 20 / 3, 2e-3);
            Assert.Equal((0.0, 1.0), (profile[0].Position, profile[^1].Position));
        });

    private static Gen<SaltedDimension[]> Sizes => Gen.Select(
        Gen.Select(Gen.Double[0, 3], Gen.Double[0, 3]), Gen.Int[0, 2], (ends, faces) => new SaltedDimension(
            new Band(Math.Pow(10, Math.Min(ends.Item1, ends.Item2)), Math.Pow(10, (ends.Item1 + ends.Item2) / 2), Math.Pow(10, Math.Max(ends.Item1, ends.Item2))), faces)).Array[3];

    private static Gen<SaltedDimension> Dimension(int fewestFaces) =>
        Gen.Select(Gens.BandOf(20, 150), Gen.Int[fewestFaces, 2]).Select((band, faces) => new SaltedDimension(band, faces));

    private static SaltedBody Exactly(SaltedBody body, double fraction)
    {
        var exact = body.Dimensions.Select(d => d with { Millimetres = Band.Exact(Gens.Inside(d.Millimetres, fraction)) }).ToList();
        return body.Shape switch
        {
            SaltedShape.Slab => SaltedBody.Slab(exact[0].Millimetres, exact[0].FacesTreated),
            SaltedShape.Cylinder => SaltedBody.Cylinder(exact[0].Millimetres),
            _ => SaltedBody.Brick(exact[0], exact[1], exact[2]),
        };
    }

    // The hump of a band is searched for, to a millionth or so; a brick's in a few sizes and travels alone.
    private static void Inside(SaltedShape shape, Band wide, Band exact)
    {
        var slack = shape == SaltedShape.Brick ? 1e-2 : 1e-5;
        Assert.InRange(exact.Typical, (wide.Low * (1 - slack)) - 1e-6, (wide.High * (1 + slack)) + 1e-5);
    }
}
