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

    private static TreatmentSheet Scale(SheetRequest request, Treatment treatment)
    {
        var grams = GramsOnPieces(request.Pile, treatment, out var sum, out var largest);
        var step = request.Scales.For(largest).Step;
        var mix = sum * (1 + (request.OveragePercent / 100)) / (treatment.Ratios.Formula.PercentLeft / 100);
        var bowls = request.BowlGrams is { } bowl ? Bowls.Count(mix, bowl) : 1;
        var exact = LineGrams(treatment, mix);
        if (LimitedSteps.AreWantedFor(treatment))
        {
            var limited = LimitedSteps.Lines(request.Scales, treatment, exact, bowls);
            return new TreatmentSheet(treatment, LimitedSteps.Pieces(grams, step, LimitedSteps.FactorOnPieces(limited, exact)), limited, exact, bowls);
        }

        var pieces = InSteps(grams, sum, step);
        var lines = CoveringLines(request.Scales, treatment, pieces, mix, bowls);
        return new TreatmentSheet(treatment, pieces, lines, exact, bowls);
    }

    private static double[] GramsOnPieces(Pile pile, Treatment treatment, out double sum, out double largest)
    {
        var grams = new double[treatment.OnLines.Sum(line => pile.GreenGramsOf(line).Length)];
        var at = 0;
        largest = 0;

        // Summed with the lost bits carried along (Kahan), so that pieces in another order do not tip a half step.
        double carried = 0;
        sum = 0;
        foreach (var line in treatment.OnLines)
        {
            foreach (var due in DueOnPieces(pile, treatment, line))
            {
                var next = due - carried;
                var grown = sum + next;
                carried = grown - sum - next;
                sum = grown;
                largest = Math.Max(largest, due);
                grams[at++] = due;
            }
        }

        return grams;
    }

    /// <summary>What the pieces of a pile line are due of a treatment, grams.</summary>
    internal static double[] DueOnPieces(Pile pile, Treatment treatment, int line)
    {
        var due = BaseWeight.OfPieces(treatment.Ratios, pile, line)
            ?? throw new ArgumentException("A treatment's base is not known for a line of the pile.", nameof(treatment));
        var perBase = treatment.DoseCounted * treatment.Applications;
        var factors = pile.DoseFactorsOf(line);
        for (var piece = 0; piece < due.Length; piece++)
        {
            due[piece] = perBase * due[piece] * factors[piece];
        }

        return due;
    }

    private static PieceAmounts InSteps(double[] grams, double sum, WeighingStep step)
    {
        for (var i = 0; i < grams.Length; i++)
        {
            grams[i] /= step.Grams;
        }

        var total = NearestTotal(sum / step.Grams);
        var whole = new long[grams.Length];
        WholeSteps.Split(grams, total, whole);
        return new PieceAmounts(step, whole, total, LeastLost(grams, whole));
    }

    // Lines and pieces may be rounded on unlike scales. Where the lines come to less than the pieces take, the mix is made
    // for what they take, and lines are rounded up until it is there.
    private static LineAmount[] CoveringLines(ScaleSet scales, Treatment treatment, PieceAmounts pieces, double mixGrams, int bowls)
    {
        var lines = Lines(scales, treatment, mixGrams, bowls);
        var needed = pieces.Step.DecimalOf(pieces.TotalSteps);
        if (lines.Sum(l => l.Value) >= needed)
        {
            return lines;
        }

        var grams = Math.Max(mixGrams, pieces.Step.GramsOf(pieces.TotalSteps));
        return LineCover.Raise(
            Lines(scales, treatment, grams, bowls), LineGrams(treatment, grams), needed);
    }

    private static double[] LineGrams(Treatment treatment, double mixGrams)
    {
        var ratios = treatment.Ratios.Lines;
        var grams = new double[ratios.Count];
        for (var i = 0; i < grams.Length; i++)
        {
            grams[i] = mixGrams * (ratios[i].RatioGramsPerKilogram.Typical / treatment.Ratios.PotGramsPerKilogram);
        }

        return grams;
    }

    // On one scale the lines sum to the nearest whole mix. On several, every line is the nearest step of its own
    // scale and the mix is what they come to.
    private static LineAmount[] Lines(ScaleSet scales, Treatment treatment, double mixGrams, int bowls)
    {
        var grams = LineGrams(treatment, mixGrams);
        var chosen = Array.ConvertAll(grams, g => scales.For(g / bowls));
        var steps = new long[grams.Length];
        if (Array.TrueForAll(chosen, s => s == chosen[0]))
        {
            var step = chosen[0].Step.Grams;
            var exact = Array.ConvertAll(grams, g => g / step);
            WholeSteps.Split(exact, NearestTotal(mixGrams / step), steps);
        }
        else
        {
            for (var i = 0; i < steps.Length; i++)
            {
                steps[i] = WholeSteps.Nearest(grams[i] / chosen[i].Step.Grams);
            }
        }

        var lines = new LineAmount[grams.Length];
        for (var i = 0; i < lines.Length; i++)
        {
            var lost = steps[i] == 0 ? grams[i] / chosen[i].Step.Grams : 0;
            lines[i] = new LineAmount(chosen[i].Step, steps[i], lost, scales.WeighingsFor(grams[i] / bowls));
        }

        return lines;
    }

    // A total that is half a step but for the last bits of its factors is half a step, and goes up.
    private static long NearestTotal(double steps) => WholeSteps.Nearest(steps + Math.Min(steps * 1e-14, 1e-6));

    private static double LeastLost(double[] exact, long[] whole)
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
}
