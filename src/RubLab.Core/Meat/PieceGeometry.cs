namespace RubLab.Core.Meat;

/// <summary>The size and surface of one piece, from its weight and its cut's shape.</summary>
/// <param name="LengthCentimetres">Longest dimension.</param>
/// <param name="WidthCentimetres">Second dimension.</param>
/// <param name="ThicknessCentimetres">Shortest dimension.</param>
/// <param name="SurfaceSquareCentimetres">The whole surface.</param>
/// <param name="VolumeCubicCentimetres">Weight over density.</param>
public sealed record PieceGeometry(
    double LengthCentimetres, double WidthCentimetres, double ThicknessCentimetres,
    double SurfaceSquareCentimetres, double VolumeCubicCentimetres)
{
    // Exponent of Thomsen's approximation to the surface of an ellipsoid, good to about 1 %.
    private const double Thomsen = 1.6075;

    /// <summary>The piece of a weight: similar in shape to its cut, or of a thickness that was measured.</summary>
    /// <param name="shape">The cut's shape.</param>
    /// <param name="grams">Green weight, above zero.</param>
    /// <param name="measuredThicknessMillimetres">Where somebody measured it; length and width then keep their ratio.</param>
    public static PieceGeometry Of(CutShape shape, double grams, double? measuredThicknessMillimetres)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(grams);
        var volume = grams / (shape.DensityKilogramsPerCubicMetre / 1000);
        var box = volume / shape.Fullness;
        var fixedThickness = measuredThicknessMillimetres
            ?? (shape.Kind == ShapeKind.Slab ? shape.ThicknessMillimetres.Typical : null);
        var thickness = fixedThickness is { } millimetres
            ? millimetres / 10
            : Math.Cbrt(box / (shape.LengthToThickness * shape.WidthToThickness));
        var width = Math.Sqrt(box / thickness * (shape.WidthToThickness / shape.LengthToThickness));
        var length = box / thickness / width;
        return new PieceGeometry(length, width, thickness, SurfaceOf(shape.Kind, length, width, thickness), volume);
    }

    /// <summary>Length of the outline of a slice cut across the length.</summary>
    public static double SectionOutline(ShapeKind kind, double width, double thickness) => kind switch
    {
        ShapeKind.Cylinder => EllipseOutline(width / 2, thickness / 2),
        ShapeKind.Brick or ShapeKind.Slab => 2 * (width + thickness),
        _ => throw new ArgumentException("An ellipsoid has no one section.", nameof(kind)),
    };

    private static double SurfaceOf(ShapeKind kind, double length, double width, double thickness) => kind switch
    {
        ShapeKind.Cylinder => (EllipseOutline(width / 2, thickness / 2) * length) + (Math.PI * width * thickness / 2),
        ShapeKind.Ellipsoid => EllipsoidSurface(length / 2, width / 2, thickness / 2),
        _ => 2 * ((length * width) + (length * thickness) + (width * thickness)),
    };

    // Ramanujan's second approximation.
    private static double EllipseOutline(double a, double b)
    {
        var h = (a - b) / (a + b);
        h *= h;
        return Math.PI * (a + b) * (1 + (3 * h / (10 + Math.Sqrt(4 - (3 * h)))));
    }

    private static double EllipsoidSurface(double a, double b, double c)
    {
        var mean = (Math.Pow(a * b, Thomsen) + Math.Pow(a * c, Thomsen) + Math.Pow(b * c, Thomsen)) / 3;
        return 4 * Math.PI * Math.Pow(mean, 1 / Thomsen);
    }
}
