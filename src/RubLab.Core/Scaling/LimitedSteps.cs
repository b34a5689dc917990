using RubLab.Core.Quantities;

namespace RubLab.Core.Scaling;

/// <summary>
/// Whole steps for a mix that carries an additive with a limit: what carries it is cut down, the rest rounded up until the mix is no
/// less than the exact one, and what goes on a piece is cut down. So neither the share of a line with a limit nor its amount on any
/// piece is ever above the formula's.
/// </summary>
internal static class LimitedSteps
{
    /// <summary>Whether a treatment's mix carries any.</summary>
    public static bool AreWantedFor(Treatment treatment) =>
        treatment.Ratios.Lines.Any(l => l.Share.Typical > 0 && l.Line.CarriesLimited);

    /// <summary>What goes on each piece, cut down.</summary>
    /// <param name="grams">What each piece is due.</param>
    /// <param name="step">The scale's step.</param>
    /// <param name="factor">How much of that may go on: see <see cref="FactorOnPieces"/>.</param>
    public static PieceAmounts Pieces(double[] grams, WeighingStep step, double factor)
    {
        var whole = new long[grams.Length];
        double lost = 0;
        for (var i = 0; i < grams.Length; i++)
        {
            var exact = grams[i] * factor / step.Grams;
            whole[i] = Whole.Down(exact);
            if (whole[i] == 0 && exact > 0 && (lost == 0 || exact < lost))
            {
                lost = exact;
            }
        }

        return new PieceAmounts(step, whole, whole.Sum(), lost);
    }

    /// <summary>What to weigh of each line; equal in every bowl, and together no less than the exact mix where anything without a limit
    /// can make it up.</summary>
    public static LineAmount[] Lines(ScaleSet scales, Treatment treatment, ReadOnlySpan<double> grams, int bowls)
    {
        var lines = new LineAmount[grams.Length];
        for (var i = 0; i < lines.Length; i++)
        {
            var scale = scales.For(grams[i] / bowls);
            var exact = grams[i] / bowls / scale.Step.Grams;
            var carries = treatment.Ratios.Lines[i].Line.CarriesLimited;
            var steps = (carries ? Whole.Down(exact) : Whole.Up(exact)) * bowls;
            lines[i] = new LineAmount(scale.Step, steps, steps == 0 ? exact * bowls : 0, scales.WeighingsFor(grams[i] / bowls));
        }

        Cover(lines, treatment, Sum(grams), bowls);
        return lines;
    }

    /// <summary>How much of their due the pieces may get of a mix: less than 1 only where every line has a limit, so that nothing can make
    /// up what was cut off.</summary>
    public static double FactorOnPieces(IReadOnlyList<LineAmount> lines, ReadOnlySpan<double> grams)
    {
        var exact = Sum(grams);
        var weighed = lines.Sum(l => l.Grams);
        if (weighed >= exact * (1 - Whole.LastBits))
        {
            return 1;
        }

        var factor = weighed / exact;
        for (var i = 0; i < lines.Count; i++)
        {
            if (lines[i].Grams > 0)
            {
                factor = Math.Min(factor, grams[i] / exact / (lines[i].Grams / weighed));
            }
        }

        return factor;
    }

    private static void Cover(LineAmount[] lines, Treatment treatment, double mixGrams, int bowls)
    {
        var most = -1;
        for (var i = 0; i < lines.Length; i++)
        {
            var isFree = treatment.Ratios.Lines[i] is { Line.CarriesLimited: false, Share.Typical: > 0 };
            most = isFree && (most < 0 || lines[i].Grams > lines[most].Grams) ? i : most;
        }

        var missing = mixGrams - lines.Sum(l => l.Grams);
        if (most >= 0 && missing > mixGrams * Whole.LastBits)
        {
            var perBowl = Whole.Up(missing / lines[most].Step.Grams / bowls);
            lines[most] = lines[most] with { Steps = lines[most].Steps + (perBowl * bowls), LostSteps = 0 };
        }
    }

    private static double Sum(ReadOnlySpan<double> grams)
    {
        double sum = 0;
        foreach (var line in grams)
        {
            sum += line;
        }

        return sum;
    }
}
