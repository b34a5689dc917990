using RubLab.Contracts.Reading;
using RubLab.Core.Diffusion;
using RubLab.Core.Faults;

namespace RubLab.Contracts.Timing;

/// <summary>How many of the two faces across each dimension get salt.</summary>
internal sealed record SaltingFaces(int Thickness, int Width, int Length)
{
    private const int FacesOfDimension = 2;
    private const int FacesOfPiece = 6;

    public static SaltingFaces? Read(SaltingTimesRequest request, SaltedShape? shape, Place at)
    {
        var before = at.Log.Count;
        if (request.FacesTreated is { } given && given is < 1 or > FacesOfDimension)
        {
            at.At("facesTreated").Fault(
                "out-of-range", $"{given} is out of range: 1 or 2 of the faces across the thickness.",
                ("value", (double)given), ("lowest", 1d), ("highest", (double)FacesOfDimension));
        }

        var blocked = ReadBlocked(request.BlockedFaces, shape, at.At("blockedFaces"));
        if (shape == SaltedShape.Cylinder && request.FacesTreated == 1)
        {
            at.At("facesTreated").Fault("not-for-shape", "A cylinder is salted all round: take a brick where one side is closed.", ("shape", "cylinder"));
        }

        if (at.Log.Count > before || blocked is null)
        {
            return null;
        }

        var open = FacesOfDimension - blocked[PieceDimension.Thickness];
        if (request.FacesTreated > open)
        {
            at.At("facesTreated").Fault(
                "too-many", $"{request.FacesTreated} faces get salt and {blocked[PieceDimension.Thickness]} are blocked, of two across the thickness.",
                ("most", (double)open));
            return null;
        }

        var faces = new SaltingFaces(
            request.FacesTreated ?? open, FacesOfDimension - blocked[PieceDimension.Width], FacesOfDimension - blocked[PieceDimension.Length]);
        if (faces.Thickness == 0 && (shape != SaltedShape.Brick || faces.Width + faces.Length == 0))
        {
            at.At("blockedFaces").Fault("no-face-treated", "Every face is blocked: no salt gets in.");
            return null;
        }

        return faces;
    }

    private static Dictionary<PieceDimension, int>? ReadBlocked(IReadOnlyList<string?>? faces, SaltedShape? shape, Place at)
    {
        var blocked = new Dictionary<PieceDimension, int>
        {
            [PieceDimension.Thickness] = 0,
            [PieceDimension.Width] = 0,
            [PieceDimension.Length] = 0,
        };
        if (faces is null or { Count: 0 })
        {
            return blocked;
        }

        if (faces.Count > FacesOfPiece)
        {
            at.Fault("too-many", $"{faces.Count} faces are too many: a piece has {FacesOfPiece}.", ("most", (double)FacesOfPiece));
            return null;
        }

        for (var i = 0; i < faces.Count; i++)
        {
            if (faces[i] is null)
            {
                Reader.Missing(at.At(i));
                continue;
            }

            if (Vocabulary.PieceDimensions.Read(faces[i], at.At(i)) is not { } face)
            {
                continue;
            }

            if (shape is { } known && (known == SaltedShape.Cylinder || (known == SaltedShape.Slab && face != PieceDimension.Thickness)))
            {
                var word = Vocabulary.SaltedShapes[known];
                at.At(i).Fault("not-for-shape", $"A {word} has no face across its {Vocabulary.PieceDimensions[face]} that could be blocked.", ("shape", word));
            }
            else if (++blocked[face] > FacesOfDimension)
            {
                at.At(i).Fault("too-many", $"{Vocabulary.PieceDimensions[face]} has two faces.", ("most", (double)FacesOfDimension));
            }
        }

        return blocked;
    }
}
