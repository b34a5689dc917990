using RubLab.Core.Formulas;
using RubLab.Core.Quantities;

namespace RubLab.Core.Scaling;

/// <summary>How thick a treatment lies on the pieces it goes on.</summary>
/// <param name="GramsPerHundredSquareCentimetres">Least, by weight typical, and most over the pieces.</param>
/// <param name="LayerMillimetres">The loose layer at the typical coverage; none where the mix has no density.</param>
/// <param name="GrainMillimetres">The mix's typical grain by mass; none where no line has a size.</param>
public sealed record Coverage(Band GramsPerHundredSquareCentimetres, double? LayerMillimetres, double? GrainMillimetres)
{
    /// <summary>What the pieces would have at the full dose: their own dose factors taken out.</summary>
    public required Band AtFullDoseGramsPerHundredSquareCentimetres { get; init; }

    /// <summary>Layers of grains, where both are known.</summary>
    public double? Grains => LayerMillimetres / GrainMillimetres;

    /// <summary>The coverage of one treatment on one line; none where the cut has no shape, or the liquid goes into the meat or around it.</summary>
    public static Coverage? Of(TreatmentSheet sheet, SheetRequest request, int line)
    {
        var pileLine = request.Pile.Lines[line];
        var isInside = sheet.Treatment.Ratios.Formula.Kind is FormulaKind.Injection or FormulaKind.Soak;
        if (isInside || pileLine.Cut.Shape is null || pileLine.WeighedGrams.Count == 0)
        {
            return null;
        }

        var first = sheet.Treatment.OnLines.TakeWhile(l => l != line).Sum(l => request.Pile.Lines[l].WeighedGrams.Count);
        double least = double.MaxValue, most = 0, surface = 0, grams = 0;
        double leastFull = double.MaxValue, mostFull = 0, gramsFull = 0;
        var factors = request.Pile.DoseFactorsOf(line);
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
            leastFull = Math.Min(leastFull, here / factors[piece]);
            mostFull = Math.Max(mostFull, here / factors[piece]);
            surface += area;
            grams += own;
            gramsFull += own / factors[piece];
        }

        if (grams <= 0)
        {
            return null;
        }

        var band = Over(least, grams / surface * 100, most);
        var layer = sheet.Treatment.Ratios.BulkDensityGramsPerMillilitre is { } density
            ? band.Typical / density.Typical * 0.1
            : (double?)null;
        return new Coverage(band, layer, sheet.Treatment.Ratios.GrainMillimetres)
        {
            AtFullDoseGramsPerHundredSquareCentimetres = Over(leastFull, gramsFull / surface * 100, mostFull),
        };

        Band Over(double low, double typical, double high) =>
            new Band(Math.Min(low, typical), typical, Math.Max(high, typical)).Over(sheet.Treatment.Applications);
    }
}
