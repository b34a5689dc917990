using CsCheck;
using RubLab.Core.Formulas;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;

namespace RubLab.Core.Tests.Formulas;

public sealed class BlendDensityTests
{
    private static readonly Gen<(double Density, double Part, double Size)[]> Mixes =
        Gen.Select(Gen.Double[0.2, 1.4], Gen.Double[0.1, 10], Gen.Double[50, 5000], (d, p, s) => (d, p, s)).Array[1, 5];

    [Fact]
    public void Specific_volumes_add_up_and_densities_do_not()
    {
        // By hand: half of 1.20 and half of 0.45 g/mL by mass is 0.654545, not 0.825; 60 to 40 of 1.20 and 0.50 is 0.769231.
        Assert.Equal(0.654545, Of((1.20, 1, 400), (0.45, 1, 400))!.Value.Typical, 0.0000005);
        Assert.Equal(0.769231, Of((1.20, 60, 400), (0.50, 40, 400))!.Value.Typical, 0.0000005);
    }

    [Fact]
    public void The_band_runs_from_side_by_side_to_closest_packing() => Law.Holds(Mixes, 5_000, mix =>
    {
        var band = Of(mix)!.Value;
        var ideal = mix.Sum(m => m.Part) / mix.Sum(m => m.Part / m.Density);

        Assert.Equal(ideal, band.Low, 1e-9);
        Assert.Equal(ideal, band.Typical, 1e-9);

        // No powder packs closer than grains without voids: at the assumed packing of 0.6 that is 1 / 0.6 of side by side.
        Assert.InRange(band.High, ideal * (1 - 1e-9), ideal / 0.6);
    });

    [Fact]
    public void Grains_of_one_size_fill_no_voids() => Law.Holds(Mixes, 2_000, mix =>
    {
        var band = Of([.. mix.Select(m => (m.Density, m.Part, 400.0))])!.Value;

        Assert.Equal(band.Low, band.High, 1e-9);
    });

    [Fact]
    public void The_typical_grain_is_the_geometric_mean_by_mass() => Assert.Equal(
        0.4, Ratios((1, 1, 100), (1, 1, 1600)).GrainMillimetres!.Value, 1e-12);

    [Fact]
    public void A_line_without_a_density_leaves_the_mix_without_one_and_one_without_a_size_only_without_its_voids()
    {
        var bare = Given.MadeUp("bare", null, default, 0);
        var sizeless = Given.MadeUp("sizeless", Band.Exact(0.5), default, 0);

        Assert.Null(Given.Draft(Given.Line(Powder(0, 1, 300), 1, "g/kg"), Given.Line(bare, 1, "g/kg")).Ratios().BulkDensityGramsPerMillilitre);
        var mix = Given.Draft(Given.Line(Powder(0, 1, 300), 1, "g/kg"), Given.Line(sizeless, 1, "g/kg")).Ratios();
        Assert.Equal(mix.BulkDensityGramsPerMillilitre!.Value.Low, mix.BulkDensityGramsPerMillilitre.Value.High, 1e-12);
        Assert.Equal(0.3, mix.GrainMillimetres!.Value, 1e-12);
        Assert.Null(Given.Draft(Given.Line(sizeless, 1, "g/kg")).Ratios().GrainMillimetres);
    }

    private static Band? Of(params (double Density, double Part, double Size)[] mix) => Ratios(mix).BulkDensityGramsPerMillilitre;

    private static FormulaRatios Ratios(params (double Density, double Part, double Size)[] mix) => Given.Draft(
        [.. mix.Select((m, i) => Given.Line(Powder(i, m.Density, m.Size), m.Part, "parts-by-mass"))]).Dosed(20).Ratios();

    private static Ingredient Powder(int number, double density, double micrometres)
    {
        var powder = Given.MadeUp($"powder-{number}", Band.Exact(density), default, 0);
        return powder with { Forms = [powder.Forms[0] with { SizeLowMicrometres = micrometres, SizeHighMicrometres = micrometres }] };
    }
}
