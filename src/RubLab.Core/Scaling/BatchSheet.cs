using System.Globalization;
using RubLab.Core.Catalogues;
using RubLab.Core.Remarks;

namespace RubLab.Core.Scaling;

/// <summary>A stack of treatments scaled to a pile: linear in the pieces, exact to the weighing step.</summary>
public sealed class BatchSheet
{
    private BatchSheet(SheetRequest request, IReadOnlyList<TreatmentSheet> treatments)
    {
        Request = request;
        Treatments = treatments;
    }

    public SheetRequest Request { get; }

    public IReadOnlyList<TreatmentSheet> Treatments { get; }

    /// <summary>Scales every treatment. The caller has made sure that each base is known (<see cref="BaseWeight"/>).</summary>
    public static BatchSheet Compute(SheetRequest request) =>
        new(request, request.Treatments.Select(t => Scale(request, t)).ToList());

    /// <summary>Notes where the scale is too coarse for an amount, with the step or the batch that would do.</summary>
    /// <param name="catalogue">The reference data.</param>
    /// <param name="findings">Takes what is noticed.</param>
    /// <param name="pointerOf">Where a treatment stands in the request.</param>
    public void NoticeCoarseSteps(Catalogue catalogue, FindingLog findings, Func<int, string> pointerOf)
    {
        for (var t = 0; t < Treatments.Count; t++)
        {
            var sheet = Treatments[t];
            if (sheet.LostSteps > 0)
            {
                Notice(sheet.LostSteps, pointerOf(t), catalogue, findings);
                continue;
            }

            var smallestPiece = SmallestAboveZero(sheet.PieceSteps);
            var smallestLine = SmallestAboveZero(sheet.LineSteps);
            Notice(smallestPiece, pointerOf(t), catalogue, findings);
            if (smallestLine != smallestPiece)
            {
                Notice(smallestLine, pointerOf(t), catalogue, findings);
            }
        }
    }

    private void Notice(double steps, string pointer, Catalogue catalogue, FindingLog findings)
    {
        var limit = catalogue.Constants.CoarseStepPercent;
        if (steps <= 0 || 100.0 / steps <= limit)
        {
            return;
        }

        var step = Request.Step;
        findings.Add(
            "scale-too-coarse", pointer, null,
            ("amount", InWords(steps)),
            ("step", InWords(1)),
            ("percent", Math.Round(100.0 / steps, 1)),
            ("suggestedStep", InWords(steps * limit / 100)),
            ("multiple", Math.Ceiling(100 / limit / steps)));

        string InWords(double amount)
        {
            var value = amount * step.Value;
            return value.ToString(value < 1 ? "G3" : "0.###", CultureInfo.InvariantCulture) + " " + step.Unit.Symbol;
        }
    }

    private static double LeastLost(ReadOnlySpan<double> exact, ReadOnlySpan<long> whole)
    {
        double least = 0;
        for (var i = 0; i < exact.Length; i++)
        {
            if (whole[i] == 0 && exact[i] > 0 && (least == 0 || exact[i] < least))
            {
                least = exact[i];
            }
        }

        return least;
    }

    private static long SmallestAboveZero(IReadOnlyList<long> steps)
    {
        long smallest = 0;
        foreach (var step in steps)
        {
            if (step > 0 && (smallest == 0 || step < smallest))
            {
                smallest = step;
            }
        }

        return smallest;
    }

    private static TreatmentSheet Scale(SheetRequest request, Treatment treatment)
    {
        var pile = request.Pile;
        var count = treatment.OnLines.Sum(line => pile.GreenGramsOf(line).Length);
        var indexes = new int[count];
        var exact = new double[count];
        var stepsPerGreenGram = treatment.DoseCounted / 1000 * treatment.Applications / request.Step.Grams;
        var at = 0;

        // Summed with the lost bits carried along (Kahan), so that pieces in another order do not tip a half step.
        double sum = 0, carried = 0;
        foreach (var line in treatment.OnLines)
        {
            var greens = pile.GreenGramsOf(line);
            var factors = pile.DoseFactorsOf(line);
            var perGreen = stepsPerGreenGram * BaseOf(treatment, pile, line);
            for (var piece = 0; piece < greens.Length; piece++, at++)
            {
                indexes[at] = pile.FirstPieceOf(line) + piece;
                exact[at] = perGreen * greens[piece] * factors[piece];
                var next = exact[at] - carried;
                var grown = sum + next;
                carried = grown - sum - next;
                sum = grown;
            }
        }

        var onMeat = NearestTotal(sum);
        var pieceSteps = new long[count];
        WholeSteps.Split(exact, onMeat, pieceSteps);

        var exactMix = sum * (1 + (request.OveragePercent / 100));
        var toMix = NearestTotal(exactMix);
        var lines = treatment.Ratios.Lines;
        var exactLines = new double[lines.Count];
        for (var i = 0; i < exactLines.Length; i++)
        {
            exactLines[i] = exactMix * (lines[i].RatioGramsPerKilogram.Typical / treatment.Ratios.DoseGramsPerKilogram);
        }

        var lineSteps = new long[lines.Count];
        WholeSteps.Split(exactLines, toMix, lineSteps);
        double lostPiece = LeastLost(exact, pieceSteps), lostLine = LeastLost(exactLines, lineSteps);
        var lost = lostPiece > 0 && lostLine > 0 ? Math.Min(lostPiece, lostLine) : Math.Max(lostPiece, lostLine);
        return new TreatmentSheet(treatment, indexes, pieceSteps, onMeat, lineSteps, toMix, lost);
    }

    // A total that is half a step but for the last bits of its factors is half a step, and goes up.
    private static long NearestTotal(double steps) => WholeSteps.Nearest(steps + Math.Min(steps * 1e-14, 1e-6));

    private static double BaseOf(Treatment treatment, Pile pile, int line)
    {
        double green = 0;
        foreach (var piece in pile.GreenGramsOf(line))
        {
            green += piece;
        }

        return BaseWeight.PerGreen(treatment.Ratios, pile.Lines[line], green)
            ?? throw new ArgumentException("A treatment's base is not known for a line of the pile.", nameof(treatment));
    }
}
