using RubLab.Core.Meat;

namespace RubLab.Core.Salt;

/// <summary>
/// Salt of a uniform coat in slices cut across the length, over the mean of the piece, before any of it has travelled.
/// An end slice carries a whole end face besides its rim.
/// </summary>
/// <param name="Centre">A centre slice over the mean.</param>
/// <param name="End">An end slice over the mean.</param>
public sealed record SliceConcentration(double Centre, double End)
{
    /// <summary>For a brick, slab or cylinder; none for an ellipsoid, whose slices all differ.</summary>
    public static SliceConcentration? Of(ShapeKind kind, PieceGeometry piece, double sliceMillimetres)
    {
        if (kind == ShapeKind.Ellipsoid)
        {
            return null;
        }

        var slice = sliceMillimetres / 10;
        var section = piece.VolumeCubicCentimetres / piece.LengthCentimetres;
        var rim = PieceGeometry.SectionOutline(kind, piece.WidthCentimetres, piece.ThicknessCentimetres) * slice;
        var mean = piece.SurfaceSquareCentimetres / piece.VolumeCubicCentimetres;
        var volume = section * slice;
        return new SliceConcentration(rim / volume / mean, (rim + section) / volume / mean);
    }
}
