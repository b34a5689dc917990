using RubLab.Core.Meat;
using RubLab.Core.Quantities;

namespace RubLab.Core.Timing;

/// <summary>How thick a piece is when only its cut and weight are known.</summary>
public static class ThicknessEstimate
{
    /// <summary>
    /// The thickness of a piece similar to its cut, give or take what pieces of the cut differ by. A slab has the cut's own thickness
    /// whatever it weighs.
    /// </summary>
    /// <param name="shape">The cut's shape.</param>
    /// <param name="grams">Green weight, above zero.</param>
    /// <returns>mm.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The weight is zero, below, or not finite.</exception>
    public static Band Millimetres(CutShape shape, double grams)
    {
        ArgumentNullException.ThrowIfNull(shape);
        if (!(grams > 0 && double.IsFinite(grams)))
        {
            throw new ArgumentOutOfRangeException(nameof(grams), grams, "Finite, above zero.");
        }

        var typical = PieceGeometry.Of(shape, grams, measuredThicknessMillimetres: null).ThicknessCentimetres * 10;
        return shape.ThicknessMillimetres.Times(typical / shape.ThicknessMillimetres.Typical);
    }
}
