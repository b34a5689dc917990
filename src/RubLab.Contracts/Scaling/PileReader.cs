using System.Globalization;
using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Scaling;

namespace RubLab.Contracts.Scaling;

/// <summary>Reads the lines of a pile, noting every fault.</summary>
internal sealed class PileReader(Catalogue catalogue, double? sheetPortionGrams, bool needsWeights)
{
    private readonly HashSet<string> _ids = new(StringComparer.Ordinal);

    /// <summary>The lines that could be read, in place; null where one could not.</summary>
    public IReadOnlyList<PileLine?> Read(IReadOnlyList<PileLineRequest?>? lines, Place at)
    {
        if (!Listed.Holds(lines, SheetRequest.MostPileLines, "line of the pile", "lines of the pile", at))
        {
            return lines is { Count: > 0 } ? [null] : [];
        }

        var count = lines.Sum(CountOf);
        if (count > SheetRequest.MostPieceTreatments)
        {
            at.Fault(
                "too-many", $"A pile has at most {SheetRequest.MostPieceTreatments} pieces; this has {count}. Split the pile.",
                ("most", (double)SheetRequest.MostPieceTreatments), ("count", (double)count));
        }

        var keepsWeights = count <= SheetRequest.MostPieceTreatments;
        var read = new List<PileLine?>(lines.Count);
        for (var i = 0; i < lines.Count; i++)
        {
            if (lines[i] is { } line)
            {
                read.Add(ReadLine(line, keepsWeights, at.At(i)));
            }
            else
            {
                Reader.Missing(at.At(i));
                read.Add(null);
            }
        }

        return read;
    }

    // Counted before any line is read: a short document can ask for a hundred lines of 300,000 pieces. A line beyond
    // the limit by itself has a fault of its own.
    private static long CountOf(PileLineRequest? line)
    {
        var count = line?.Pieces?.Count ?? line?.Count ?? 0;
        return count is > 0 and <= SheetRequest.MostPieceTreatments ? count : 0;
    }

    private PileLine? ReadLine(PileLineRequest line, bool keepsWeights, Place at)
    {
        var before = at.Log.Count;
        var cut = Lookup.Cut(line.Cut, catalogue, at.At("cut"));
        var id = line.Id is null ? cut?.Id : Names.Id(line.Id, at.At("id"));
        if (id is not null && !_ids.Add(id))
        {
            at.At("id").Fault("duplicate-id", $"'{id}' is already a line of this pile; give each line its own id.", ("value", id));
        }

        var weightIs = line.WeightIs is null ? WeightBasis.Green : Vocabulary.Weights.Read(line.WeightIs, at.At("weightIs"));
        if (line.TrimLoss is not null && weightIs == WeightBasis.Green)
        {
            at.At("trimLoss").Fault("trim-on-green", "Green weight is after trimming: there is no trim loss to take off it.");
        }

        var pieces = new PieceReader(needsWeights, keepsWeights);
        pieces.Read(line, at);
        var weighedBackIs = Vocabulary.WeighedBack.Read(line.WeighedBackIs, at.At("weighedBackIs"));
        if (line.WeighedBackIs is null != pieces.WeighedBackGrams is null)
        {
            at.At("weighedBackIs").Fault(
                "needs-other", "weighedBackIs and a weighedBack of at least one piece belong together: say whether the pieces had drained.");
        }

        var read = new PileLine
        {
            Id = id ?? "",
            Cut = cut!,
            WeightIs = weightIs.GetValueOrDefault(),
            WeighedGrams = pieces.Grams,
            Labels = pieces.Labels,
            DoseFactors = pieces.DoseFactors,
            ThicknessMillimetres = pieces.ThicknessMillimetres,
            WeighedBackGrams = pieces.WeighedBackGrams,
            IsWeighedBackDrained = weighedBackIs == WeighedBackState.Drained,
            PackSodiumMilligramsPer100Grams = Reader.Amount(
                line.SodiumPer100g, at.At("sodiumPer100g"), Bounds.PackSodiumMilligrams, isRequired: false, Dimension.Mass) * 1000,
            SliceMillimetres = Reader.Amount(
                line.SliceThickness, at.At("sliceThickness"), Bounds.ThicknessMillimetres, isRequired: false, Dimension.Length),
            TrimLossPercent = Reader.Percent(line.TrimLoss, at.At("trimLoss"), Bounds.PercentOfPart),
            BonePercent = Reader.Percent(line.Bone, at.At("bone"), Bounds.PercentOfPart),
            SkinPercent = Reader.Percent(line.Skin, at.At("skin"), Bounds.PercentOfPart),
            AddedSolutionPercent = Reader.Percent(line.AddedSolution, at.At("addedSolution"), Bounds.Percent),
            Product = Lookup.Product(line.Product, catalogue, at.At("product")),
            IsBladeTenderised = line.BladeTenderised ?? false,
            CookYieldPercent = Reader.PercentBand(line.CookYield, at.At("cookYield"), Bounds.YieldPercent) ?? cut?.OwnCookYield?.Percent,
            KeptInCookingPercent = Reader.PercentBand(line.KeptInCooking, at.At("keptInCooking"), Bounds.Percent),
            JuicesReturned = line.JuicesReturned ?? false,
            PortionGrams = Reader.Amount(line.Portion, at.At("portion"), Bounds.PortionGrams, isRequired: false, Dimension.Mass) ?? sheetPortionGrams,
        };
        if (read is { JuicesReturned: true, KeptInCookingPercent: not null })
        {
            at.At("keptInCooking").Fault("one-or-the-other", "With the juices returned all of the salt is kept: leave keptInCooking out, or juicesReturned.");
        }

        if (at.Log.Count == before)
        {
            CheckWeighedBack(read, at.At("pieces"));
            CheckSlice(read, at.At("sliceThickness"));
            CheckYield(read, at);
        }

        return at.Log.Count == before ? read : null;
    }

    // Injected meat is heavier than it was, and no meat takes its own weight of liquid.
    private static void CheckWeighedBack(PileLine line, Place at)
    {
        for (var i = 0; i < (line.WeighedBackGrams?.Count ?? 0); i++)
        {
            var green = line.WeighedGrams[i] * line.GreenPerWeighed;
            if (line.WeighedBackGrams![i] is { } after && (after < green || after > 2 * green))
            {
                at.At(i).At("weighedBack").At("value").Fault(
                    "weighed-back-unlikely",
                    $"A piece of {Figures.Read(green)} g green weighs between that and twice that after injection, not {Figures.Read(after, after < green ? green : 2 * green)} g.",
                    ("value", after), ("lowest", green), ("highest", 2 * green), ("unit", "g"));
            }
        }
    }

    private static void CheckYield(PileLine line, Place at)
    {
        if (line.YieldCountedPercent is { } yield && line.EdiblePerGreen(yield.Low) <= 0)
        {
            at.At(line.CookYieldPercent is null ? "bone" : "cookYield").Fault(
                "bone-over-yield",
                $"Of the green weight {Figures.Read(yield.Low)} % would be left after cooking and {Figures.Read(line.BoneFraction * 100)} % is bone: that leaves no meat.",
                ("yield", yield.Low), ("bone", line.BoneFraction * 100), ("unit", "%"));
        }
    }

    // The piece of mean weight and thickness stands for the line, as it does where slices are worked out.
    private static void CheckSlice(PileLine line, Place at)
    {
        if (line is not { SliceMillimetres: { } slice, Cut.Shape: { } shape, WeighedGrams.Count: > 0 })
        {
            return;
        }

        var piece = PieceGeometry.Of(shape, line.WeighedGrams.Average() * line.GreenPerWeighed, line.ThicknessMillimetres?.Average());
        var length = piece.LengthCentimetres * 10;
        if (slice >= length)
        {
            at.Fault(
                "slice-too-thick",
                string.Create(CultureInfo.InvariantCulture, $"A slice is thinner than the piece is long, and this piece is about {length:0} mm long."),
                ("value", slice), ("length", Math.Round(length, 1)), ("unit", "mm"));
        }
    }
}
