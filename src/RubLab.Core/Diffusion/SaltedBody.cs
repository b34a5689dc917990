using RubLab.Core.Quantities;

namespace RubLab.Core.Diffusion;

/// <summary>The piece as salt sees it: a shape, its dimensions, the faces that are treated.</summary>
public sealed record SaltedBody
{
    private SaltedBody(SaltedShape shape, IReadOnlyList<SaltedDimension> dimensions)
    {
        Shape = shape;
        Dimensions = dimensions;
    }

    public SaltedShape Shape { get; }

    /// <summary>As given: one for a slab or a cylinder; thickness, width and length for a brick.</summary>
    public IReadOnlyList<SaltedDimension> Dimensions { get; }

    /// <summary>No dimension is uncertain.</summary>
    public bool IsExact => Dimensions.All(d => d.Millimetres.IsExact);

    /// <summary>The treated dimension salt crosses first.</summary>
    public SaltedDimension Nearest => Dimensions.Where(d => d.FacesTreated > 0).MinBy(d => d.ReachMillimetres.Typical)!;

    /// <summary>A plate.</summary>
    /// <param name="thicknessMillimetres">Above zero.</param>
    /// <param name="facesTreated">1 or 2.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those.</exception>
    public static SaltedBody Slab(Band thicknessMillimetres, int facesTreated)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(facesTreated, 1);
        return new(SaltedShape.Slab, [Guarded(new(thicknessMillimetres, facesTreated))]);
    }

    /// <summary>A long round piece, salted all round.</summary>
    /// <param name="diameterMillimetres">Above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">Zero or below.</exception>
    public static SaltedBody Cylinder(Band diameterMillimetres) => new(SaltedShape.Cylinder, [Guarded(new(diameterMillimetres, 2))]);

    /// <summary>A block. Its dimensions are taken to be low, typical and high together.</summary>
    /// <param name="thickness">The first dimension.</param>
    /// <param name="width">The second.</param>
    /// <param name="length">The third.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is zero or below, or no face is treated, or more than two of one.</exception>
    public static SaltedBody Brick(SaltedDimension thickness, SaltedDimension width, SaltedDimension length)
    {
        SaltedDimension[] dimensions = [Guarded(thickness), Guarded(width), Guarded(length)];
        ArgumentOutOfRangeException.ThrowIfZero(dimensions.Sum(d => d.FacesTreated), nameof(thickness));
        return new(SaltedShape.Brick, dimensions);
    }

    // From 0, the smallest, to 1, the largest.
    internal SaltField FieldAt(double size, double waterRatio) => SaltField.Of(waterRatio, Shape, Reaches(r => Between(r, size)));

    internal SaltField TypicalField(double waterRatio) => SaltField.Of(waterRatio, Shape, Reaches(r => r.Typical));

    private List<double> Reaches(Func<Band, double> of) => [.. Dimensions.Where(d => d.FacesTreated > 0).Select(d => of(d.ReachMillimetres))];

    private static double Between(Band band, double size) => size switch
    {
        0 => band.Low,
        1 => band.High,
        _ => band.Low * Math.Pow(band.High / band.Low, size),
    };

    private static SaltedDimension Guarded(SaltedDimension dimension)
    {
        ArgumentNullException.ThrowIfNull(dimension);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(dimension.Millimetres.Low, nameof(dimension));
        ArgumentOutOfRangeException.ThrowIfNegative(dimension.FacesTreated, nameof(dimension));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(dimension.FacesTreated, 2, nameof(dimension));
        return dimension;
    }
}
