using CsCheck;
using MathNet.Numerics;
using RubLab.Core.Diffusion;

namespace RubLab.Core.Tests.Diffusion;

public sealed class LimitedBathTests
{
    // From a wet coat to a pool.
    private static readonly Gen<double> AnyRatio = Gen.Double[-18, 18].Select(Math.Exp);

    private static readonly Gen<double> AnyTime = Gen.Double[-10, 1.5].Select(Math.Exp);

    private static readonly Gen<(double Ratio, double Time)> Cases = Gen.Select(AnyRatio, AnyTime);

    private static readonly Func<double, LimitedBath>[] Shapes = [LimitedBath.Slab, LimitedBath.Cylinder];

    [Fact]
    public void A_slab_s_roots_are_right_to_a_ten_thousand_millionth() => Law.Holds(Gen.Select(AnyRatio, Gen.Int[1, 200]), 10_000, x =>
    {
        var (ratio, n) = x;
        var q = LimitedBath.Slab(ratio).Root(n);

        Assert.InRange(q, (n - 0.5) * Math.PI, n * Math.PI);
        Assert.True(Balance(q - 1e-10) * Balance(q + 1e-10) <= 0, $"{q:R}");

        // tan q + ratio q with its poles taken out.
        double Balance(double x) => Math.Sin(x) + (ratio * x * Math.Cos(x));
    });

    [Fact]
    public void A_cylinder_s_roots_are_right_to_a_ten_thousand_millionth() => Law.Holds(Gen.Select(AnyRatio, Gen.Int[1, 60]), 3_000, x =>
    {
        var (ratio, n) = x;
        var q = LimitedBath.Cylinder(ratio).Root(n);

        Assert.InRange(q, (n - 0.25) * Math.PI, (n + 0.25) * Math.PI);
        Assert.True(Balance(q - 1e-10) * Balance(q + 1e-10) <= 0, $"{q:R}");

        double Balance(double x) => (ratio * x * SpecialFunctions.BesselJ(0, x)) + (2 * SpecialFunctions.BesselJ(1, x));
    });

    // Zeros of J0 and J1: Abramowitz and Stegun table 9.5.
    [Theory]
    [InlineData(1, 2.4048255577, 3.83170597)]
    [InlineData(2, 5.5200781103, 7.01558667)]
    [InlineData(3, 8.6537279129, 10.17346814)]
    [InlineData(10, 30.6346064684, 32.18967991)]
    [InlineData(20, 62.0484691902, 63.61135670)]
    public void A_cylinder_s_roots_end_at_the_zeros_of_Bessel_s_functions(int n, double ofJ0, double ofJ1)
    {
        Assert.Equal(ofJ0, LimitedBath.Cylinder(double.PositiveInfinity).Root(n), 6e-11);
        Assert.Equal(ofJ1, LimitedBath.Cylinder(1e-300).Root(n), 6e-9);
    }

    [Fact]
    public void Series_and_finite_volumes_agree() => Law.Holds(
        Gen.Select(Gen.Double[-4, 5].Select(Math.Exp), Gen.Double[-8, 1].Select(Math.Exp), Gen.Int[0, 1], Gen.Double[0, 1]), 150, x =>
        {
            var (ratio, time, shape, position) = x;
            var volumes = DiffusionCases.InBath(ratio, time, shape + 1);
            var end = ratio / (1 + ratio);

            Assert.Equal(volumes.Mean / end, Shapes[shape](ratio).UptakeAt(time), 1e-4);
            Assert.Equal(volumes.Liquid, Shapes[shape](ratio).LiquidAt(time), 1e-4);
            // Beside a small bath the face is many times the even strength, so the strength is held to the largest there is.
            var at = shape == 0 ? new SlabBath(ratio).At(position, time) : new CylinderBath(ratio).At(position, time);
            Assert.Equal(volumes.At(position), at * end, 1e-4);
        });

    [Fact]
    public void A_profile_averages_what_was_taken_up() => Law.Holds(
        Gen.Select(Gen.OneOf(AnyRatio, Gen.Const(0.0), Gen.Const(double.PositiveInfinity)), Gen.Double[-6, 1.5].Select(Math.Exp)), 400, x =>
        {
            var (ratio, time) = x;
            var slab = new SlabBath(ratio).Prepared();
            var cylinder = new CylinderBath(ratio).Prepared();

            Assert.Equal(slab.Uptake(time), DiffusionCases.Integral(p => slab.At(p, time), 1), 1e-8);
            Assert.Equal(cylinder.Uptake(time), DiffusionCases.Integral(p => 2 * p * cylinder.At(p, time), 1), 1e-8);
        });

    // Just below and just above where one formula hands over to the other.
    [Theory]
    [InlineData(0, 0.025, 0)]
    [InlineData(1, 0.015, 0)]
    [InlineData(0, 0.025, 1)]
    [InlineData(1, 0.015, 1)]
    public void Early_and_late_formulas_meet(int shape, double time, int of) => Law.Holds(Gen.Select(AnyRatio, Gen.Double[0, 1]), 500, x =>
    {
        var (ratio, position) = x;
        double early = At(time * (1 - 1e-12)), late = At(time);
        Assert.True(Math.Abs(early - late) <= 2e-10 * Math.Max(1, Math.Abs(late)), $"{early:R} {late:R}");

        double At(double t) => (shape, of) switch
        {
            (0, 0) => new SlabBath(ratio).Uptake(t),
            (0, _) => new SlabBath(ratio).At(position, t),
            (_, 0) => new CylinderBath(ratio).Uptake(t),
            _ => new CylinderBath(ratio).At(position, t),
        };
    });

    // Crank 5.24: 4 sqrt(T / pi) - T - T^1.5 / (3 sqrt pi) - ...
    [Fact]
    public void A_cylinder_in_a_bed_begins_as_its_expansion_says() => Law.Holds(Gen.Double[-20, -8].Select(Math.Exp), 500, time => Assert.Equal(
        (4 * Math.Sqrt(time / Math.PI)) - time - (Math.Pow(time, 1.5) / (3 * Math.Sqrt(Math.PI))),
        LimitedBath.Cylinder(double.PositiveInfinity).UptakeAt(time),
        (time * time) + 1e-12));

    [Fact]
    public void Uptake_rises_with_time_and_stays_below_one() => Law.Holds(Gen.Select(Cases, Gen.Double[1.001, 3], Gen.Int[0, 1]), 5_000, x =>
    {
        var ((ratio, time), later, shape) = x;
        var bath = Shapes[shape](ratio);
        double now = bath.UptakeAt(time), then = bath.UptakeAt(time * later);

        Assert.InRange(now, 0, 1);
        Assert.True(then >= now - 1e-13 && (then > now || now > 1 - 1e-9), $"{now:R} {then:R}");
    });

    [Fact]
    public void Salt_in_liquid_and_meat_together_is_what_went_in() => Law.Holds(Gen.Select(Cases, Gen.Int[0, 1]), 5_000, x =>
    {
        var ((ratio, time), shape) = x;
        var bath = Shapes[shape](ratio);
        // Per volume of meat water, of a liquid of strength 1: the liquid brought `ratio`, and the meat ends at ratio / (1 + ratio).
        var inMeat = bath.UptakeAt(time) * ratio * bath.TakenUpAtTheEnd;

        Assert.Equal(ratio, inMeat + (ratio * bath.LiquidAt(time)), ratio * 1e-14);
    });

    [Fact]
    public void The_time_for_an_uptake_gives_that_uptake() => Law.Holds(Gen.Select(AnyRatio, Gen.Double[0.001, 0.999], Gen.Int[0, 1]), 1_000, x =>
    {
        var (ratio, uptake, shape) = x;
        var bath = Shapes[shape](ratio);

        Assert.Equal(uptake, bath.UptakeAt(bath.TimeFor(uptake)), 1e-10);
    });

    [Fact]
    public void Half_of_a_slab_in_a_bed_is_taken_up_at_the_known_time() =>
        Assert.Equal(0.19673074, LimitedBath.Slab(double.PositiveInfinity).TimeFor(0.5), 5e-9);

    [Theory]
    [InlineData(1e-200)]
    [InlineData(1e-12)]
    [InlineData(1e12)]
    [InlineData(1e200)]
    public void The_smallest_and_the_largest_bath_are_computed(double ratio) => Assert.All(Shapes, shape =>
    {
        var bath = shape(ratio);
        var end = ratio < 1 ? 1 : shape(double.PositiveInfinity).UptakeAt(0.1);

        Assert.Equal(end, bath.UptakeAt(0.1), 1e-9);
        Assert.Equal(0, bath.UptakeAt(0));
        Assert.Equal(1, bath.LiquidAt(0));
    });

    [Fact]
    public void Nothing_is_allocated() => Assert.All(Shapes, shape =>
    {
        var bath = shape(2);
        _ = bath.TimeFor(0.3) + bath.UptakeAt(0.001) + bath.UptakeAt(0.1);
        var before = GC.GetAllocatedBytesForCurrentThread();
        _ = bath.TimeFor(0.3) + bath.UptakeAt(0.001) + bath.UptakeAt(0.1);

        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    });

    [Fact]
    public void Wrong_arguments_throw()
    {
        Assert.All([0, -1, double.NaN], ratio => Assert.All(Shapes, shape => Assert.Throws<ArgumentOutOfRangeException>(() => shape(ratio))));
        var bath = LimitedBath.Slab(1);
        Assert.All([-1, double.NaN, double.PositiveInfinity], time => Assert.Throws<ArgumentOutOfRangeException>(() => bath.UptakeAt(time)));
        Assert.All([-0.1, 1, double.NaN], uptake => Assert.Throws<ArgumentOutOfRangeException>(() => bath.TimeFor(uptake)));
        Assert.Throws<ArgumentOutOfRangeException>(() => bath.Root(0));
        Assert.Throws<InvalidOperationException>(() => default(LimitedBath).UptakeAt(1));
        Assert.Throws<InvalidOperationException>(() => default(LimitedBath).TimeFor(0.5));
        Assert.Throws<InvalidOperationException>(() => default(LimitedBath).Root(1));
    }
}
