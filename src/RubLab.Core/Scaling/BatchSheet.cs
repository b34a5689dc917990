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
            var smallestPiece = SmallestAboveZero(sheet.PieceSteps);
            var smallestLine = SmallestAboveZero(sheet.LineSteps);
            Notice(smallestPiece, pointerOf(t), catalogue, findings);
            if (smallestLine != smallestPiece)
            {
                Notice(smallestLine, pointerOf(t), catalogue, findings);
            }
        }
    }

    private void Notice(long steps, string pointer, Catalogue catalogue, FindingLog findings)
    {
        var limit = catalogue.Constants.CoarseStepPercent;
        if (steps <= 0 || 100.0 / steps <= limit)
        {
            return;
        }

        var step = Request.Step;
        var unit = step.Unit.Symbol;
        findings.Add(
            "scale-too-coarse", pointer, null,
            ("amount", $"{step.ValueOf(steps):0.###} {unit}"),
            ("step", $"{step.Value:0.###} {unit}"),
            ("percent", Math.Round(100.0 / steps, 1)),
            ("suggestedStep", $"{step.ValueOf(steps) * limit / 100:0.###} {unit}"),
            ("multiple", Math.Ceiling(100 / limit / steps)));
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
        double sum = 0;
        foreach (var line in treatment.OnLines)
        {
            var greens = pile.GreenGramsOf(line);
            var factors = pile.DoseFactorsOf(line);
            var perGreen = stepsPerGreenGram * BaseOf(treatment, pile, line);
            for (var piece = 0; piece < greens.Length; piece++, at++)
            {
                indexes[at] = pile.FirstPieceOf(line) + piece;
                exact[at] = perGreen * greens[piece] * factors[piece];
                sum += exact[at];
            }
        }

        var onMeat = WholeSteps.Nearest(sum);
        var pieceSteps = new long[count];
        WholeSteps.Split(exact, onMeat, pieceSteps);

        var exactMix = sum * (1 + (request.OveragePercent / 100));
        var toMix = WholeSteps.Nearest(exactMix);
        var lines = treatment.Ratios.Lines;
        var exactLines = new double[lines.Count];
        for (var i = 0; i < exactLines.Length; i++)
        {
            exactLines[i] = exactMix * (lines[i].RatioGramsPerKilogram.Typical / treatment.Ratios.DoseGramsPerKilogram);
        }

        var lineSteps = new long[lines.Count];
        WholeSteps.Split(exactLines, toMix, lineSteps);
        return new TreatmentSheet(treatment, indexes, pieceSteps, onMeat, lineSteps, toMix);
    }

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
