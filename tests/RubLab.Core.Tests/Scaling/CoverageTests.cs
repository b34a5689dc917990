using CsCheck;
using RubLab.Core.Formulas;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Scaling;

public sealed class CoverageTests
{
    private static readonly string[] Cuts = ["beef-brisket", "pork-loin", "pork-leg", "pork-belly"];

    [Fact]
    public void A_dose_by_area_puts_on_dose_times_surface_within_a_step_and_the_ledger_counts_it() =>
        Law.Holds(
            Gen.Select(Gen.Int[0, 3], Gen.Double[200, 9000].Array[1, 12], Gen.Double[0.5, 20], Gen.Double[0, 2].Array[12]), 5_000, c =>
            {
                var (cut, weights, dose, factors) = c;
                var line = Given.Pieces(Cuts[cut], weights) with { DoseFactors = factors[..weights.Length] };
                var pile = Given.Pile(line);
                var treatment = ByArea(dose).On(0);
                var sheet = Given.Sheet(pile, Given.Step(0.01, "g"), 0, treatment).Treatments[0];
                double on = 0;
                for (var i = 0; i < weights.Length; i++)
                {
                    var exact = dose * line.GeometryOf(i, weights[i])!.SurfaceSquareCentimetres / 100 * factors[i];
                    Assert.InRange(sheet.Pieces.Step.GramsOf(sheet.Pieces.Steps[i]), exact - 0.010001, exact + 0.010001);
                    on += exact;
                }

                // Eight parts in ten of it are pure sodium chloride.
                Assert.Equal(
                    on * 0.8 / weights.Sum() * 1000,
                    SaltLedger.Of(pile, 0, [treatment], isWeighed: true).SaltGramsPerKilogramGreen.Typical, 1e-9);
            });

    [Fact]
    public void A_dose_by_area_covers_every_piece_alike_and_one_by_weight_the_small_ones_less()
    {
        var pile = Given.Pile(Given.Pieces("beef-brisket", 1000, 8000));

        var byArea = CoverageOf(Request(pile, ByArea(2).On(0)))!.GramsPerHundredSquareCentimetres;
        var byWeight = CoverageOf(Request(pile, Given.Draft(Given.Line("salt", "table", 10, "g/kg")).Ratios().On(0)))!.GramsPerHundredSquareCentimetres;

        Assert.Equal(2, byArea.Low, 0.001);
        Assert.Equal(2, byArea.High, 0.001);

        // At one shape and one dose per kilogram, coverage goes with the cube root of mass.
        Assert.Equal(2, byWeight.High / byWeight.Low, 0.001);
    }

    [Fact]
    public void The_layer_is_the_dose_over_the_surface_and_the_density_for_one_application()
    {
        var pile = Given.Pile(Given.Pieces("beef-brisket", 6000));
        var treatment = Given.Draft(Given.Line("salt", "table", 10, "g/kg")).Ratios().On(0) with { Applications = 3 };
        var area = pile.Lines[0].GeometryOf(0, 6000)!.SurfaceSquareCentimetres;

        var coverage = CoverageOf(Request(pile, treatment))!;

        Assert.Equal(60 / area * 100, coverage.GramsPerHundredSquareCentimetres.Typical, 0.001);
        Assert.Equal(60 / area / Given.Ingredient("salt").DefaultForm.Density!.GramsPerMillilitre.Typical * 10, coverage.LayerMillimetres!.Value, 0.0001);
        Assert.Equal(coverage.LayerMillimetres / coverage.GrainMillimetres, coverage.Grains);
    }

    [Fact]
    public void A_thickness_that_was_measured_counts_before_the_usual_shape()
    {
        var thin = Given.Pieces("beef-brisket", 6000) with { ThicknessMillimetres = [30] };

        Assert.Equal(3, thin.GeometryOf(0, 6000)!.ThicknessCentimetres);
        Assert.True(thin.GeometryOf(0, 6000)!.SurfaceSquareCentimetres > Given.Pieces("beef-brisket", 6000).GeometryOf(0, 6000)!.SurfaceSquareCentimetres);
    }

    [Fact]
    public void Skipped_pieces_and_cuts_without_a_shape_have_no_coverage()
    {
        var skipped = Given.Pieces("beef-brisket", 6000, 1000) with { DoseFactors = [1, 0] };
        var shapeless = Given.Pieces("beef-brisket", 6000) with { Cut = Given.Cut("beef-brisket") with { Shape = null } };
        var salt = Given.Draft(Given.Line("salt", "table", 10, "g/kg")).Ratios().On(0);

        var band = CoverageOf(Request(Given.Pile(skipped), salt))!.GramsPerHundredSquareCentimetres;
        Assert.Equal(band.Low, band.High, 1e-12);
        Assert.Null(CoverageOf(Request(Given.Pile(shapeless), salt)));
        Assert.Null(CoverageOf(Request(Given.Pile(skipped with { DoseFactors = [0, 0] }), salt)));
    }

    private static FormulaRatios ByArea(double dose) => (Given.Draft(
        Given.Line("sodium-chloride", null, 8, "parts-by-mass"), Given.Line("paprika", null, 2, "parts-by-mass")) with { Base = RatioBase.Area })
        .Dosed(dose, "g/100cm2").Ratios();

    private static SheetRequest Request(Pile pile, Treatment treatment) =>
        new() { Pile = pile, Treatments = [treatment], Scales = ScaleSet.Of(Given.Step(0.001, "g")), OveragePercent = 0 };

    private static Coverage? CoverageOf(SheetRequest request) => Coverage.Of(BatchSheet.Compute(request).Treatments[0], request, 0);
}
