using CsCheck;
using RubLab.Core.Diffusion;

namespace RubLab.Core.Tests.Diffusion;

/// <summary>The three answers for a brick against each other, against a slab, and against another method.</summary>
public sealed class BrickTests
{
    private static readonly Gen<double[]> Reaches = Gen.Select(Gen.Double[10, 30], Gen.Double[1, 4], Gen.Double[1, 3]).Select((a, b, c) => new[] { a, a * b, a * b * c });

    private static readonly Gen<double> Travels = Gen.Double[-4, 1].Select(Math.Exp).Select(t => t * 400);

    private static readonly Gen<double> Ratios = Gen.Double[-5, 7].Select(Math.Exp);

    [Fact]
    public void The_quick_form_of_a_bed_is_the_bath_without_end() => Law.Holds(Gen.Select(Gen.Double[-12, 3].Select(Math.Exp), Gen.Double[0, 1]), 5_000, x =>
    {
        var (time, position) = x;
        var bath = new SlabBath(double.PositiveInfinity);

        Assert.Equal(bath.Uptake(time), SlabInBed.Uptake(time), 1e-14);
        Assert.Equal(bath.At(position, time), SlabInBed.At(position, time), 1e-14);
        Assert.Equal((0, 0, 1), (SlabInBed.Uptake(0), SlabInBed.At(position / 2, 0), SlabInBed.At(1, 0)));
    });

    // The bath's own equation, asked about a body whose answer is known otherwise.
    [Fact]
    public void A_brick_with_one_dimension_treated_soaks_as_a_slab() => Law.Holds(Gen.Select(Ratios, Travels, Gen.Double[0, 1]), 300, x =>
    {
        var (ratio, travel, position) = x;
        var brick = new BrickInBath(ratio, new BrickInBed([20]));
        var slab = new SlabField(ratio, 20);

        Assert.Equal(slab.Uptake(travel), brick.Uptake(travel), 5e-9);
        Assert.Equal(slab.At(position, travel), brick.At(position, travel), 2e-6);
    });

    [Fact]
    public void In_a_pool_it_is_a_brick_in_a_bed() => Law.Holds(Gen.Select(Reaches, Travels, Gen.Double[0, 1]), 200, x =>
    {
        var (reaches, travel, position) = x;
        SaltField pool = new BrickInBath(1e7, new BrickInBed(reaches)), bed = new BrickInBed(reaches);

        Assert.Equal(bed.Uptake(travel), pool.Uptake(travel), 1e-6);
        Assert.Equal(bed.At(position, travel), pool.At(position, travel), 1e-6);
        Assert.Equal(bed.Layer(position, travel), pool.Layer(position, travel), 1e-6);
    });

    [Theory]
    [InlineData(0.1, 0.3)]
    [InlineData(0.5, 0.05)]
    [InlineData(0.5, 0.3)]
    [InlineData(2, 0.1)]
    [InlineData(8, 0.2)]
    public void A_coarse_grid_in_three_dimensions_agrees(double ratio, double time)
    {
        double[] reaches = [1, 1.3, 2];
        var field = new BrickInBath(ratio, new BrickInBed(reaches));
        var (coarseUptake, coarseCentre) = CoarseBlock.Solve(reaches, ratio, time, 8);
        var (uptake, centre) = CoarseBlock.Solve(reaches, ratio, time, 16);

        // Second order: the finer answer's error is a third of the change.
        Assert.Equal(uptake + ((uptake - coarseUptake) / 3), field.Uptake(time), 3e-3);
        Assert.Equal(centre + ((centre - coarseCentre) / 3), field.At(0, time), 3e-3 + (Math.Abs(centre - coarseCentre) / 2));
    }

    [Fact]
    public void Layers_average_what_was_taken_up() => Law.Holds(Gen.Select(Reaches, Ratios, Gen.Double[0.03, 1].Select(t => t * 400), Gen.Int[0, 2]), 60, x =>
    {
        var (reaches, ratio, travel, method) = x;
        var field = SaltField.Of(method == 0 ? 0 : method == 1 ? ratio : double.PositiveInfinity, SaltedShape.Brick, reaches);

        Assert.Equal(field.Uptake(travel), DiffusionCases.Integral(p => field.Layer(p, travel), 1, 200), 1e-5);
    });

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.3)]
    public void A_coarse_grid_agrees_that_the_sheets_of_a_dry_brine_add_up(double time)
    {
        double[] reaches = [1, 1.3, 2];
        var (_, coarse) = CoarseBlock.Solve(reaches, 0, time, 8);
        var (uptake, centre) = CoarseBlock.Solve(reaches, 0, time, 16);

        Assert.Equal(1, uptake, 1e-12);
        Assert.Equal(centre + ((centre - coarse) / 3), new BrickOfSheets(reaches).At(0, time), 3e-3 + (Math.Abs(centre - coarse) / 2));
    }
}
