using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Faults;
using RubLab.Core.Quantities;
using RubLab.Core.Scaling;

namespace RubLab.Contracts.Scaling;

/// <summary>Reads the weights of one pile line, however they were given.</summary>
/// <param name="needsWeights">Whether a line without any weight is at fault.</param>
/// <param name="keepsWeights">False where the pile is too large to be computed and only its faults are wanted.</param>
internal sealed class PieceReader(bool needsWeights, bool keepsWeights)
{
    public IReadOnlyList<double> Grams { get; private set; } = [];

    public IReadOnlyList<string?>? Labels { get; private set; }

    public IReadOnlyList<double>? DoseFactors { get; private set; }

    public IReadOnlyList<double?>? ThicknessMillimetres { get; private set; }

    public IReadOnlyList<double?>? WeighedBackGrams { get; private set; }

    public void Read(PileLineRequest line, Place at)
    {
        var ways = (line.Pieces is null ? 0 : 1) + (line.WeightEach is null ? 0 : 1) + (line.TotalWeight is null ? 0 : 1);
        if (ways == 0 && line.Count is null && !needsWeights)
        {
            return;
        }

        if (ways != 1)
        {
            at.Fault(
                "one-or-the-other",
                "Give the weights in exactly one way: pieces, count with weightEach, or count with totalWeight.");
            return;
        }

        if (line.Pieces is { } pieces)
        {
            if (line.Count is not null)
            {
                at.At("count").Fault("one-or-the-other", "A list of pieces counts itself: leave count out.");
            }

            ReadList(pieces, at.At("pieces"));
        }
        else
        {
            ReadCount(line, at);
        }
    }

    private void ReadCount(PileLineRequest line, Place at)
    {
        var each = Reader.Amount(line.WeightEach, at.At("weightEach"), Bounds.MeatGrams, isRequired: false, Dimension.Mass);
        var total = Reader.Amount(
            line.TotalWeight, at.At("totalWeight"), Bounds.MeatGrams with { Highest = Bounds.MeatGrams.Highest * 1000 }, isRequired: false, Dimension.Mass);
        if (line.Count is not { } count)
        {
            Reader.Missing(at.At("count"));
            return;
        }

        if (count is < 1 or > SheetRequest.MostPieceTreatments)
        {
            at.At("count").Fault(
                "out-of-range", $"{count} is out of range: from 1 to {SheetRequest.MostPieceTreatments} pieces.",
                ("value", (double)count), ("lowest", 1d), ("highest", (double)SheetRequest.MostPieceTreatments));
            return;
        }

        if (total / count > Bounds.MeatGrams.Highest)
        {
            at.At("totalWeight").Fault("out-of-range", "Each piece would weigh more than a tonne.");
            return;
        }

        if (keepsWeights && (each ?? total / count) is { } grams)
        {
            var all = new double[count];
            Array.Fill(all, grams);
            Grams = all;
        }
    }

    private void ReadList(IReadOnlyList<PieceRequest?> pieces, Place at)
    {
        if (pieces.Count == 0)
        {
            at.Fault("required", "The list has no piece in it.");
            return;
        }

        if (pieces.Count > SheetRequest.MostPieceTreatments)
        {
            at.Fault(
                "too-many", $"At most {SheetRequest.MostPieceTreatments} pieces; this has {pieces.Count}.",
                ("most", (double)SheetRequest.MostPieceTreatments), ("count", (double)pieces.Count));
            return;
        }

        var grams = new double[pieces.Count];
        string?[]? labels = null;
        double[]? factors = null;
        double?[]? thicknesses = null;
        double?[]? weighedBack = null;
        for (var i = 0; i < pieces.Count; i++)
        {
            if (pieces[i] is not { } piece)
            {
                Reader.Missing(at.At(i));
                continue;
            }

            grams[i] = FastGrams(piece.Weight)
                ?? Reader.Amount(piece.Weight, at.At(i).At("weight"), Bounds.MeatGrams, isRequired: true, Dimension.Mass)
                ?? 0;
            if (piece.Label is not null)
            {
                labels ??= new string?[pieces.Count];
                labels[i] = Names.Name(piece.Label, at.At(i).At("label"), isRequired: false);
            }

            if (piece.Thickness is not null)
            {
                thicknesses ??= new double?[pieces.Count];
                thicknesses[i] = Reader.Amount(
                    piece.Thickness, at.At(i).At("thickness"), Bounds.ThicknessMillimetres, isRequired: false, Dimension.Length);
            }

            if (piece.WeighedBack is not null)
            {
                weighedBack ??= new double?[pieces.Count];
                weighedBack[i] = Reader.Amount(
                    piece.WeighedBack, at.At(i).At("weighedBack"), Bounds.MeatGrams, isRequired: false, Dimension.Mass);
            }

            if (piece.DoseFactor is not null || piece.Skip is true)
            {
                factors ??= Ones(pieces.Count);
                factors[i] = ReadFactor(piece, at.At(i));
            }
        }

        Grams = grams;
        Labels = labels;
        DoseFactors = factors;
        ThicknessMillimetres = thicknesses;
        WeighedBackGrams = weighedBack;
    }

    // A sound weight is read without naming its place: a list may hold hundreds of thousands.
    private static double? FastGrams(QuantityRequest? weight)
    {
        if (weight is { Value: { } value, Unit: { } symbol } && UnitTable.TryFind(symbol, out var unit) && unit.Dimension == Dimension.Mass)
        {
            var grams = unit.ToBase(value);
            return Bounds.MeatGrams.Holds(grams) ? grams : null;
        }

        return null;
    }

    private static double[] Ones(int count)
    {
        var ones = new double[count];
        Array.Fill(ones, 1);
        return ones;
    }

    private static double ReadFactor(PieceRequest piece, Place at)
    {
        if (piece is { DoseFactor: not null, Skip: true })
        {
            at.Fault("one-or-the-other", "A skipped piece has no dose factor.");
            return 0;
        }

        return piece.DoseFactor is { } factor ? Reader.Within(factor, Bounds.DoseFactor, at.At("doseFactor")) ?? 0 : 0;
    }
}
