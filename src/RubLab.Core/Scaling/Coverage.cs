using RubLab.Core.Quantities;

namespace RubLab.Core.Scaling;

/// <summary>How thick a treatment lies on the pieces it goes on.</summary>
/// <param name="GramsPerHundredSquareCentimetres">Least, by weight typical, and most over the pieces.</param>
/// <param name="LayerMillimetres">The loose layer at the typical coverage; none where the mix has no density.</param>
/// <param name="GrainMillimetres">The mix's typical grain by mass; none where no line has a size.</param>
public sealed record Coverage(Band GramsPerHundredSquareCentimetres, double? LayerMillimetres, double? GrainMillimetres)
{
    /// <summary>Layers of grains, where both are known.</summary>
    public double? Grains => LayerMillimetres / GrainMillimetres;

    /// <summary>The coverage of one treatment on one line; none where the cut has no shape.</summary>
    public static Coverage? Of(TreatmentSheet sheet, SheetRequest request, int line)
    {
        var pileLine = request.Pile.Lines[line];
        if (pileLine.Cut.Shape is null || pileLine.WeighedGrams.Count == 0)
        {
            return null;
        }

        var first = sheet.Treatment.OnLines.TakeWhile(l => l != line).Sum(l => request.Pile.Lines[l].WeighedGrams.Count);
        double least = double.MaxValue, most = 0, surface = 0, grams = 0;
        var greens = request.Pile.GreenGramsOf(line);
        for (var piece = 0; piece < greens.Length; piece++)
        {
            var own = sheet.Pieces.Step.GramsOf(sheet.Pieces.Steps[first + piece]);
            if (own <= 0)
            {
                continue;
            }

            var area = pileLine.GeometryOf(piece, greens[piece])!.SurfaceSquareCentimetres;
            var here = own / area * 100;
            least = Math.Min(least, here);
            most = Math.Max(most, here);
            surface += area;
            grams += own;
        }

        if (grams <= 0)
        {
            return null;
        }

        var perApplication = sheet.Treatment.Applications;
        var typical = grams / surface * 100;
        var band = new Band(Math.Min(least, typical), typical, Math.Max(most, typical)).Over(perApplication);
        var layer = sheet.Treatment.Ratios.BulkDensityGramsPerMillilitre is { } density
            ? band.Typical / density.Typical * 0.1
            : (double?)null;
        return new Coverage(band, layer, sheet.Treatment.Ratios.GrainMillimetres);
    }
}
