using RubLab.Core.Diffusion;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Timing;

namespace RubLab.Contracts.Timing;

/// <summary>The three dimensions of a piece, measured or guessed from its weight, mm. Only a brick's width and length mean something.</summary>
internal sealed record SaltingSides(Band Thickness, Band Width, Band Length)
{
    public static SaltingSides Of(double? thickness, double? width, double? length, CutShape? shape, double? grams)
    {
        var guessed = shape is not null && grams is not null ? Guessed(shape, grams.Value, thickness) : null;
        return new(
            thickness is { } t ? Band.Exact(t) : guessed!.Thickness,
            width is { } w ? Band.Exact(w) : guessed?.Width ?? default,
            length is { } l ? Band.Exact(l) : guessed?.Length ?? default);
    }

    public SaltedBody Body(SaltedShape shape, SaltingFaces faces) => shape switch
    {
        SaltedShape.Slab => SaltedBody.Slab(Thickness, faces.Thickness),
        SaltedShape.Cylinder => SaltedBody.Cylinder(Thickness),
        _ => SaltedBody.Brick(new(Thickness, faces.Thickness), new(Width, faces.Width), new(Length, faces.Length)),
    };

    // Of one weight a thicker piece is narrower and shorter.
    private static SaltingSides Guessed(CutShape shape, double grams, double? measured)
    {
        var thickness = measured is { } millimetres ? Band.Exact(millimetres) : ThicknessEstimate.Millimetres(shape, grams);
        PieceGeometry thin = At(thickness.Low), typical = At(thickness.Typical), thick = At(thickness.High);
        return new(
            thickness,
            Between(thick.WidthCentimetres, typical.WidthCentimetres, thin.WidthCentimetres),
            Between(thick.LengthCentimetres, typical.LengthCentimetres, thin.LengthCentimetres));

        PieceGeometry At(double millimetres) => PieceGeometry.Of(shape, grams, millimetres);

        static Band Between(double low, double typical, double high) => new(Math.Min(low, typical) * 10, typical * 10, Math.Max(high, typical) * 10);
    }
}
