using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Scaling;

namespace RubLab.Contracts.Scaling;

/// <summary>Reads the lines of a pile, noting every fault.</summary>
internal sealed class PileReader(Catalogue catalogue, double? sheetPortionGrams, bool needsWeights)
{
    private readonly HashSet<string> _ids = new(StringComparer.Ordinal);

    /// <summary>The lines that could be read, in place; null where one could not.</summary>
    public IReadOnlyList<PileLine?> Read(IReadOnlyList<PileLineRequest?>? lines, Place at)
    {
        if (lines is null || lines.Count == 0)
        {
            at.Fault("required", "The pile is empty: give at least one line.");
            return [];
        }

        if (lines.Count > SheetRequest.MostPileLines)
        {
            at.Fault(
                "too-many", $"A pile has at most {SheetRequest.MostPileLines} lines; this has {lines.Count}.",
                ("most", (double)SheetRequest.MostPileLines), ("count", (double)lines.Count));
            return [null];
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
        var read = new PileLine
        {
            Id = id ?? "",
            Cut = cut!,
            WeightIs = weightIs.GetValueOrDefault(),
            WeighedGrams = pieces.Grams,
            Labels = pieces.Labels,
            DoseFactors = pieces.DoseFactors,
            ThicknessMillimetres = pieces.ThicknessMillimetres,
            PackSodiumMilligramsPer100Grams = Reader.Amount(
                line.SodiumPer100g, at.At("sodiumPer100g"), Bounds.PackSodiumMilligrams, isRequired: false, Dimension.Mass) * 1000,
            SliceMillimetres = Reader.Amount(
                line.SliceThickness, at.At("sliceThickness"), Bounds.ThicknessMillimetres, isRequired: false, Dimension.Length),
            TrimLossPercent = Reader.Percent(line.TrimLoss, at.At("trimLoss"), Bounds.PercentOfPart),
            BonePercent = Reader.Percent(line.Bone, at.At("bone"), Bounds.PercentOfPart),
            AddedSolutionPercent = Reader.Percent(line.AddedSolution, at.At("addedSolution"), Bounds.Percent),
            CookYieldPercent = Reader.PercentBand(line.CookYield, at.At("cookYield"), Bounds.YieldPercent),
            KeptInCookingPercent = Reader.PercentBand(line.KeptInCooking, at.At("keptInCooking"), Bounds.Percent),
            JuicesReturned = line.JuicesReturned ?? false,
            PortionGrams = Reader.Amount(line.Portion, at.At("portion"), Bounds.PortionGrams, isRequired: false, Dimension.Mass) ?? sheetPortionGrams,
        };
        if (read is { JuicesReturned: true, KeptInCookingPercent: not null })
        {
            at.At("keptInCooking").Fault("one-or-the-other", "With the juices returned all of the salt is kept: leave keptInCooking out, or juicesReturned.");
        }

        return at.Log.Count == before ? read : null;
    }
}
