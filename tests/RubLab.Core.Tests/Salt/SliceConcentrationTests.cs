using CsCheck;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Salt;
using RubLab.Core.Tests.Published;

namespace RubLab.Core.Tests.Salt;

public sealed class SliceConcentrationTests
{
    [Theory]
    [InlineData("E09-centre")]
    [InlineData("E09-end")]
    public void A_coat_on_a_brick_gathers_in_its_end_slices(string id)
    {
        var published = PublishedCase.Read("slices.csv").Single(c => c.Id == id);
        double length = published.Input("length_cm"), width = published.Input("width_cm"), thickness = published.Input("thickness_cm");
        var brick = new CutShape(ShapeKind.Brick, length / thickness, width / thickness, Band.Exact(60), 1050, Given.NoSource);
        var slices = SliceConcentration.Of(
            ShapeKind.Brick, PieceGeometry.Of(brick, length * width * thickness * 1.05, null), published.Input("slice_mm"))!;

        published.AssertIs(id == "E09-end" ? slices.End : slices.Centre);
    }

    [Fact]
    public void All_slices_together_carry_the_mean() =>
        Law.Holds(Gen.Select(Gen.Bool, Gen.Double[1, 10], Gen.Double[1, 5], Gen.Int[3, 100], Gen.Double[100, 9000]), 5_000, c =>
        {
            var (isBrick, length, width, count, grams) = c;
            var kind = isBrick ? ShapeKind.Brick : ShapeKind.Cylinder;
            var piece = PieceGeometry.Of(new CutShape(kind, Math.Max(length, width), width, Band.Exact(60), 1050, Given.NoSource), grams, null);
            var slices = SliceConcentration.Of(kind, piece, piece.LengthCentimetres * 10 / count)!;

            Assert.Equal(1, ((2 * slices.End) + ((count - 2) * slices.Centre)) / count, 1e-9);
            Assert.True(slices.Centre < 1 && slices.End > 1);
        });

    [Fact]
    public void Slices_of_an_egg_all_differ_and_have_no_answer()
    {
        var egg = Given.Cut("pork-leg").Shape!;

        Assert.Equal(ShapeKind.Ellipsoid, egg.Kind);
        Assert.Null(SliceConcentration.Of(egg.Kind, PieceGeometry.Of(egg, 5000, null), 6));
    }

    [Fact]
    public void The_ledger_has_slices_where_a_slice_a_weight_and_a_shape_are_known()
    {
        var brisket = Given.Pieces("beef-brisket", 5000, 7420) with { SliceMillimetres = 6 };

        // 6.21 kg of the mean piece at 1035 kg/m3 are the brick of 40 x 25 x 6 cm, to the printed digits of its proportions.
        var slices = LedgerOf(brisket).Slices!;
        Assert.Equal(0.892, slices.Centre, 0.0005);
        Assert.Equal(4.489, slices.End, 0.001);
        Assert.Null(LedgerOf(brisket with { SliceMillimetres = null }).Slices);

        // Half as thick, the same brick is longer and wider by the root of two, and less of its coat lies at its ends.
        var flat = LedgerOf(brisket with { ThicknessMillimetres = [25, 35] }).Slices!;
        var piece = PieceGeometry.Of(brisket.Cut.Shape!, 6210, 30);
        Assert.Equal(SliceConcentration.Of(ShapeKind.Brick, piece, 6), flat);
        Assert.InRange(flat.End, 1, slices.End - 0.5);
        Assert.Null(LedgerOf(brisket with { WeighedGrams = [] }).Slices);
        Assert.Null(LedgerOf(brisket with { Cut = brisket.Cut with { Shape = null } }).Slices);
    }

    private static SaltLedger LedgerOf(Core.Scaling.PileLine line) => SaltLedger.Of(
        Given.Pile(line), 0, [Given.Draft(Given.Line("salt", "table", 8, "g/kg")).Ratios().On(0)], isWeighed: true);
}
