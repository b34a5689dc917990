using System.Globalization;
using RubLab.Core.Formulas;
using RubLab.Core.Ingredients;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Science;

/// <summary>The worked examples about surfaces, grinds, densities, scales and slices.</summary>
internal static class MeatAndMixExamples
{
    public static void SurfaceAndCoverage(SciencePage page)
    {
        var brisket = Given.Pieces("beef-brisket", page.InBase("piece"));
        var pile = Given.Pile(brisket);
        var surface = brisket.GeometryOf(0, page.InBase("piece"))!.SurfaceSquareCentimetres;
        page.Finds("surface", surface);
        page.Finds("surface ratio", brisket.GeometryOf(0, page.InBase("twice the piece"))!.SurfaceSquareCentimetres / surface);

        var request = new SheetRequest
        {
            Pile = pile,
            Treatments =
            [
                Given.Draft(Given.Line("salt", "table", page.Given("salt"), page.UnitOf("salt"))).Ratios().On(0),
                (Given.Draft(Given.Line("salt", "table", 1, "parts-by-mass")) with { Base = RatioBase.Area })
                    .Dosed(page.Given("dose by area"), page.UnitOf("dose by area")).Ratios().On(0),
            ],
            Scales = ScaleSet.Of(Given.Step(0.1, "g")),
            OveragePercent = 0,
        };
        var sheets = BatchSheet.Compute(request).Treatments;
        var coverage = Coverage.Of(sheets[0], request, 0)!;
        page.Finds("coverage", coverage.GramsPerHundredSquareCentimetres.Typical);
        page.Finds("layer", coverage.LayerMillimetres!.Value);
        page.Finds("on the piece", sheets[1].Pieces.Step.ValueOf(sheets[1].Pieces.TotalSteps));
        page.Finds("salt weighed", SaltLedger.Of(pile, 0, [request.Treatments[1]], isWeighed: true).SaltWeighedGramsPerKilogramGreen);
    }

    public static void GrindsBySize(SciencePage page)
    {
        var pepper = Given.Ingredient("black-pepper");
        var sieve = Seed.Catalogue.Sieves.Single(s => s.UsMesh == page.Given("mesh"));
        page.Finds("opening", sieve.OpeningMicrometres);
        page.Finds("density of that form", GrindSize.Choose(pepper, sieve.OpeningMicrometres)!.Density!.GramsPerMillilitre.Typical);

        var between = GrindSize.Choose(pepper, page.Given("size"))!.Density!.GramsPerMillilitre;
        page.Finds("end of the finer", Form("ground").SizeHighMicrometres!.Value);
        page.Finds("start of the coarser", Form("coarse").SizeLowMicrometres!.Value);
        page.Finds("density between", between.Typical);
        page.Finds("density low", between.Low);
        page.Finds("density high", between.High);

        IngredientForm Form(string id) => pepper.Forms.Single(f => f.Id == id);
    }

    public static void OwnDensities(SciencePage page)
    {
        double[] weights = [page.Given("first"), page.Given("second"), page.Given("third")];
        var own = OwnDensity.From(
            weights, Enumerable.Repeat(page.InBase("volume of each"), weights.Length).ToArray(), Seed.Catalogue.Constants.SpoonFillingSpreadPercent);
        page.Finds("density", own.MeanGramsPerMillilitre);
        page.Finds("spread", own.SpreadPercent!.Value);
        page.Finds("density low", own.GramsPerMillilitre.Low);
        page.Finds("density high", own.GramsPerMillilitre.High);
    }

    public static void BlendDensityPage(SciencePage page)
    {
        var mix = Given.Draft(
            Given.Line(Given.MadeUp("first", Band.Exact(page.Given("first")), default, 0), 1, "parts-by-mass"),
            Given.Line(Given.MadeUp("second", Band.Exact(page.Given("second")), default, 0), 1, "parts-by-mass")).Dosed(20).Ratios();
        page.Finds("density", mix.BulkDensityGramsPerMillilitre!.Value.Typical);

        double packing = page.Given("packing"), coarse = page.Given("coarse share");
        page.Finds(
            "packing of the mix",
            1 / LinearPacking.SpecificVolume([new(coarse, packing, 1), new(1 - coarse, packing, page.Given("size ratio"))]));
    }

    public static void ScalesAndBowls(SciencePage page)
    {
        var ratios = Given.Draft(
            Given.Line("salt", "table", page.Given("salt"), page.UnitOf("salt")),
            Given.Line("cayenne-red-pepper", null, page.Given("cayenne"), page.UnitOf("cayenne"))).Ratios();
        var kitchen = new ScaleSet([new(200, Given.Step(0.01, "g")), new(3000, Given.Step(0.1, "g"))]);
        var large = Sheet(page.InBase("meat"), kitchen, page.Given("bowl")).Treatments[0];
        page.Finds("bowls", large.BowlCount);
        page.Finds("salt to weigh", (double)large.Lines[0].Value);
        page.Finds("salt in a bowl", (double)large.Lines[0].ValueIn(0, large.BowlCount));
        page.Finds("cayenne to weigh", (double)large.Lines[1].Value);
        page.Finds("cayenne in a bowl", (double)large.Lines[1].ValueIn(1, large.BowlCount));
        Assert.All(large.Lines, line => page.Finds("step for both", line.Step.Value));

        var findings = new FindingLog(Seed.Catalogue);
        SheetFindings.Notice(
            Sheet(page.InBase("little meat"), ScaleSet.Of(Given.Step(page.Given("step"), page.UnitOf("step"))), null), Seed.Catalogue, findings, _ => "");
        var premix = findings.Findings.First(f => f.Code == "premix" && (string)f.Parameters["carrier"] == Given.Ingredient("salt").Name);
        page.Finds("premix cayenne", Grams("premixIngredient"));
        page.Finds("premix salt", Grams("premixCarrier"));
        page.Finds("premix to take", Grams("premixAmount"));
        page.Finds("cayenne off", (double)premix.Parameters["error"]);
        page.Finds("salt off", (double)premix.Parameters["carrierError"]);

        var piece = page.InBase("third meat") / 4;
        var covered = Given.Sheet(
            Given.Pile(Given.Pieces("beef-brisket", piece, piece, piece, piece)),
            new ScaleSet([new(500, Given.Step(0.01, "g")), new(5000, Given.Step(1, "g"))]), 0,
            Given.Draft(
                Given.Line("salt", "table", page.Given("first line"), page.UnitOf("first line")),
                Given.Line("paprika", null, page.Given("second line"), page.UnitOf("second line"))).Ratios().On(0)).Treatments[0];
        page.Finds("on the pieces", (double)covered.Pieces.Step.DecimalOf(covered.Pieces.TotalSteps));
        page.Finds("first line on whole grams", (double)covered.Lines[0].Value);
        page.Finds("second line on hundredths", (double)covered.Lines[1].Value);

        double Grams(string name) => double.Parse(((string)premix.Parameters[name]).Split(' ')[0], CultureInfo.InvariantCulture);

        BatchSheet Sheet(double grams, ScaleSet scales, double? bowl) => BatchSheet.Compute(new SheetRequest
        {
            Pile = Given.Pile(Given.Pieces("beef-brisket", grams)),
            Treatments = [ratios.On(0)],
            Scales = scales,
            OveragePercent = 0,
            BowlGrams = bowl,
        });
    }

    public static void Slices(SciencePage page)
    {
        double length = page.Given("length"), width = page.Given("width"), thickness = page.Given("thickness");
        var brick = new CutShape(ShapeKind.Brick, length / thickness, width / thickness, Band.Exact(60), 1050, Given.NoSource);
        var slices = SliceConcentration.Of(brick.Kind, PieceGeometry.Of(brick, length * width * thickness * 1.05, null), page.InBase("slice"))!;
        page.Finds("centre slice", slices.Centre);
        page.Finds("end slice", slices.End);
    }
}
