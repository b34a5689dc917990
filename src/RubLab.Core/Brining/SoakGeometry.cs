using RubLab.Core.Meat;
using RubLab.Core.Quantities;

namespace RubLab.Core.Brining;

/// <summary>How far salt has to go into a piece, for a soak.</summary>
/// <param name="HalfThicknessMillimetres">Low, typical and high half thickness of the slab, or radius of the cylinder, that stands for the piece.</param>
/// <param name="IsCylinder">A long cylinder; otherwise a slab open on both faces.</param>
public sealed record SoakGeometry(Band HalfThicknessMillimetres, bool IsCylinder)
{
    /// <summary>A thickness somebody measured: a slab's, or a cylinder's diameter.</summary>
    public static SoakGeometry Measured(double thicknessMillimetres, bool isCylinder) => new(Band.Exact(thicknessMillimetres / 2), isCylinder);

    /// <summary>
    /// A whole piece. Early on salt comes in through all of its surface, as into a slab of half thickness volume over surface; a slab
    /// of the piece's own thickness, open on two faces only, is the slowest it can be. The geometric mean of the two is typical.
    /// </summary>
    public static SoakGeometry Of(PieceGeometry piece)
    {
        var quick = piece.VolumeCubicCentimetres / piece.SurfaceSquareCentimetres * 10;
        var slow = piece.ThicknessCentimetres * 10 / 2;
        return new(new Band(Math.Min(quick, slow), Math.Sqrt(quick * slow), Math.Max(quick, slow)), IsCylinder: false);
    }
}
