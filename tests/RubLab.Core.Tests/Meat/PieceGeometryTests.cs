using CsCheck;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Tests.Published;

namespace RubLab.Core.Tests.Meat;

public sealed class PieceGeometryTests
{
    private const double LastBits = 1e-12;

    private static readonly List<PublishedCase> Cases = PublishedCase.Read("geometry.csv");

    private static readonly Gen<CutShape> Shapes = Gen.Select(
        Gen.Int[0, 2], Gen.Double[1, 20], Gen.Double[1, 8], Gen.Double[900, 1100],
        (kind, length, width, density) => Shape((ShapeKind)kind, Math.Max(length, width), Math.Min(length, width), density));

    public static TheoryData<string> Ids => new(Cases.Select(c => c.Id));

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_published_surface_comes_out_as_printed(string id)
    {
        var published = Cases.Single(c => c.Id == id);
        double length = published.Input("length_cm"), width = published.Input("width_cm"), thickness = published.Input("thickness_cm");
        var shape = Shape(Kind(published.InputText("shape")), length / thickness, width / thickness, 1050);

        var piece = PieceGeometry.Of(shape, length * width * thickness * shape.Fullness * 1.05, null);

        Assert.Equal(length, piece.LengthCentimetres, length * LastBits);
        Assert.Equal(width, piece.WidthCentimetres, width * LastBits);
        Assert.Equal(thickness, piece.ThicknessCentimetres, thickness * LastBits);
        published.AssertIs(piece.SurfaceSquareCentimetres);
    }

    [Theory]
    [InlineData("brick", 40, 25, 6, 6.3, 441.27)]
    [InlineData("brick", 30, 20, 3.5, 2.205, 702.95)]
    [InlineData("brick", 25, 18, 12, 5.67, 340.74)]
    [InlineData("cylinder", 30, 18, 10, 4.4532, 365.87)]
    [InlineData("ellipsoid", 24, 18, 15, 3.5626, 315.5)]
    [InlineData("ellipsoid", 40, 30, 7, 4.6181, 451.31)]
    [InlineData("ellipsoid", 16, 16, 16, 2.2519, 357.14)]
    public void A_worked_shape_has_its_mass_and_its_surface_per_mass(
        string kind, double length, double width, double thickness, double kilograms, double squareCentimetresPerKilogram)
    {
        var shape = Shape(Kind(kind), length / thickness, width / thickness, 1050);
        var grams = length * width * thickness * shape.Fullness * 1.05;

        // Half the last printed digit of each.
        Assert.Equal(kilograms, grams / 1000, 0.00005);
        Assert.Equal(squareCentimetresPerKilogram, PieceGeometry.Of(shape, grams, null).SurfaceSquareCentimetres / grams * 1000, 0.005);
    }

    [Fact]
    public void At_a_fixed_shape_the_surface_grows_as_the_two_thirds_power_of_mass() =>
        Law.Holds(Gen.Select(Shapes, Gen.Double[50, 20_000], Gen.Double[0.1, 10]), 5_000, c =>
        {
            var (shape, grams, factor) = c;
            var one = PieceGeometry.Of(shape, grams, null).SurfaceSquareCentimetres;

            Assert.Equal(Math.Pow(factor, 2.0 / 3), PieceGeometry.Of(shape, grams * factor, null).SurfaceSquareCentimetres / one, 1e-9);
            Assert.Equal(1.587401, PieceGeometry.Of(shape, grams * 2, null).SurfaceSquareCentimetres / one, 0.0000005);
        });

    [Fact]
    public void A_slab_of_twice_the_mass_has_exactly_twice_the_faces_and_the_same_thickness() =>
        Law.Holds(Gen.Select(Gen.Double[1, 20], Gen.Double[5, 80], Gen.Double[50, 20_000]), 5_000, c =>
        {
            var (ratio, millimetres, grams) = c;
            var shape = Shape(ShapeKind.Slab, ratio * 2, ratio, 1030) with { ThicknessMillimetres = Band.Exact(millimetres) };
            var one = PieceGeometry.Of(shape, grams, null);
            var two = PieceGeometry.Of(shape, grams * 2, null);

            Assert.Equal(millimetres / 10, one.ThicknessCentimetres);
            Assert.Equal(one.ThicknessCentimetres, two.ThicknessCentimetres);
            Assert.Equal(2, Face(two) / Face(one), LastBits);
        });

    [Fact]
    public void The_volume_is_the_weight_over_the_density_and_that_of_the_body() =>
        Law.Holds(Gen.Select(Shapes, Gen.Double[50, 20_000], Gen.OneOf(Gen.Const(0.0), Gen.Double[5, 200])), 5_000, c =>
        {
            var (shape, grams, measured) = c;
            var piece = PieceGeometry.Of(shape, grams, measured > 0 ? measured : null);

            Assert.Equal(grams / shape.DensityKilogramsPerCubicMetre * 1000, piece.VolumeCubicCentimetres, grams * LastBits);
            Assert.Equal(
                piece.VolumeCubicCentimetres,
                piece.LengthCentimetres * piece.WidthCentimetres * piece.ThicknessCentimetres * shape.Fullness, grams * LastBits);
            Assert.Equal(shape.LengthToThickness / shape.WidthToThickness, piece.LengthCentimetres / piece.WidthCentimetres, 1e-9);
            if (measured > 0)
            {
                Assert.Equal(measured / 10, piece.ThicknessCentimetres);
            }
        });

    [Fact]
    public void No_body_has_less_surface_than_a_ball_of_its_volume() => Law.Holds(Gen.Select(Shapes, Gen.Double[50, 20_000]), 5_000, c =>
    {
        var piece = PieceGeometry.Of(c.Item1, c.Item2, null);
        var ball = Math.Cbrt(36 * Math.PI) * Math.Pow(piece.VolumeCubicCentimetres, 2.0 / 3);

        Assert.True(piece.SurfaceSquareCentimetres >= ball * (1 - 1e-9));
    });

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void A_piece_without_weight_has_no_size(double grams) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PieceGeometry.Of(Shape(ShapeKind.Brick, 2, 1, 1050), grams, null));

    private static double Face(PieceGeometry piece) => piece.LengthCentimetres * piece.WidthCentimetres;

    private static ShapeKind Kind(string word) => Enum.Parse<ShapeKind>(word, ignoreCase: true);

    private static CutShape Shape(ShapeKind kind, double length, double width, double density) =>
        new(kind, length, width, Band.Exact(50), density, Given.NoSource);
}
