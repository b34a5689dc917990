using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Diffusion;
using RubLab.Core.Faults;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;

namespace RubLab.Contracts.Timing;

/// <summary>The piece of a question on salting as read.</summary>
internal sealed record SaltingPieceReader
{
    public required SaltedBody Body { get; init; }

    public required double? Grams { get; init; }

    public required bool IsThicknessFromWeight { get; init; }

    public static SaltingPieceReader? Read(SaltingTimesRequest request, Cut? cut, Catalogue catalogue, Place at)
    {
        var before = at.Log.Count;
        var shape = Vocabulary.SaltedShapes.Read(request.Shape, at.At("shape"));
        if (request.Shape is null)
        {
            shape = cut?.Shape is { } own ? ShapeOf(own.Kind) : null;
            if (request.Cut is null || cut is { Shape: null })
            {
                Reader.Missing(at.At("shape"));
            }
        }

        var bounds = SaltingBounds.Millimetres(catalogue.Salting.Limits);
        var grams = Reader.Amount(request.Weight, at.At("weight"), Bounds.MeatGrams, isRequired: false, Dimension.Mass);
        var thickness = Side(request.Thickness, "thickness");
        var width = Side(request.Width, "width");
        var length = Side(request.Length, "length");
        RefuseOthers(request, shape, at);
        var canGuess = request.Weight is not null && (cut?.Shape is not null || (request.Cut is not null && cut is null));
        if (request.Thickness is null && !canGuess)
        {
            at.At("thickness").Fault("required", "Give the thickness, or a cut that has a shape and the weight.");
        }

        if (shape == SaltedShape.Brick && !canGuess)
        {
            Needed(request.Width, "width");
            Needed(request.Length, "length");
        }

        var faces = SaltingFaces.Read(request, shape, at);
        if (at.Log.Count > before || shape is not { } body || faces is null)
        {
            return null;
        }

        // Of a cut that is not known nothing can be guessed; that it is not has been told.
        var isMissing = thickness is null || (body == SaltedShape.Brick && (width is null || length is null));
        if (isMissing && (cut?.Shape is null || grams is null))
        {
            return null;
        }

        var sides = SaltingSides.Of(thickness, width, length, cut?.Shape, grams);
        RefuseThicker(sides, body, grams, width is not null && length is not null, cut, catalogue, request.Thickness is not null, at);
        foreach (var (side, name) in ((Band, string)[])[(sides.Thickness, "thickness"), (sides.Width, "width"), (sides.Length, "length")])
        {
            // Measured ones have been looked at. A guess has a place of its own: the weight it comes from.
            if (at.Log.Count == before && (body == SaltedShape.Brick || name == "thickness") && !(bounds.Holds(side.Low) && bounds.Holds(side.High)))
            {
                at.At("weight").Fault(
                    "out-of-range", $"A piece of that weight would have a {name} beyond what is computed, {bounds.Lowest} to {bounds.Highest} mm.",
                    ("lowest", bounds.Lowest), ("highest", bounds.Highest), ("unit", "mm"));
            }
        }

        return at.Log.Count > before
            ? null
            : new SaltingPieceReader { Body = sides.Body(body, faces), Grams = grams, IsThicknessFromWeight = thickness is null };

        double? Side(QuantityRequest? side, string name) => Reader.Amount(side, at.At(name), bounds, isRequired: false, Dimension.Length);

        void Needed(QuantityRequest? side, string name)
        {
            if (side is null)
            {
                at.At(name).Fault("required", "A brick needs it, or a cut that has a shape and the weight.");
            }
        }
    }

    private static SaltedShape ShapeOf(ShapeKind kind) => kind switch
    {
        ShapeKind.Slab => SaltedShape.Slab,
        ShapeKind.Cylinder => SaltedShape.Cylinder,
        // A block and the ellipsoid inside it have about the same surface for their volume, which is what counts at first; later the
        // block is the slower.
        _ => SaltedShape.Brick,
    };

    private static void RefuseOthers(SaltingTimesRequest request, SaltedShape? shape, Place at)
    {
        if (shape is not { } known || known == SaltedShape.Brick)
        {
            return;
        }

        var word = Vocabulary.SaltedShapes[known];
        foreach (var (name, value) in ((string, object?)[])[("width", request.Width), ("length", request.Length)])
        {
            if (value is not null)
            {
                at.At(name).Fault("not-for-shape", $"{name} means nothing for a {word}.", ("shape", word));
            }
        }
    }

    // Thickness is the shortest way through. A block may have more volume than the meat in it, up to that of an ellipsoid in its box.
    private static void RefuseThicker(
        SaltingSides sides, SaltedShape shape, double? grams, bool isMeasured, Cut? cut, Catalogue catalogue, bool hasThickness, Place at)
    {
        if (grams is not { } weight || !hasThickness)
        {
            return;
        }

        var density = cut?.Shape?.DensityKilogramsPerCubicMetre ?? catalogue.Constants.RawMeatDensityKilogramsPerCubicMetre;
        var cubicMillimetres = weight / density * 1e6;
        var highest = shape switch
        {
            SaltedShape.Cylinder => Math.Cbrt(cubicMillimetres / (Math.PI / 4)),
            SaltedShape.Brick when isMeasured => cubicMillimetres / (Math.PI / 6) / (sides.Width.Typical * sides.Length.Typical),
            _ => Math.Cbrt(cubicMillimetres),
        };
        if (sides.Thickness.Typical > highest)
        {
            var (shown, most) = (Rounded.Estimate(sides.Thickness.Typical), Rounded.Estimate(highest));
            at.At("thickness").Fault(
                "thicker-than-piece", $"A {Vocabulary.SaltedShapes[shape]} of that weight is {most} mm thick at most, and {shown} mm was given.",
                ("value", shown), ("highest", most), ("unit", "mm"));
        }
    }
}
