namespace RubLab.Core.Scaling;

/// <summary>
/// Raises the lines of a mix that come to less than its pieces take. The finest line that was cut down and covers what is
/// missing gets one more step; while no line does alone, the coarsest that was cut down gets one.
/// </summary>
internal static class LineCover
{
    // A line is cut down where it is more than the last bits short of what it should be.
    private const double LastBits = 1e-9;

    /// <summary>The lines, raised until they come to what is needed.</summary>
    /// <param name="lines">In whole steps, each of its own scale.</param>
    /// <param name="exactGrams">What each should be.</param>
    /// <param name="needed">What the pieces take, in the scales' unit.</param>
    public static LineAmount[] Raise(LineAmount[] lines, ReadOnlySpan<double> exactGrams, decimal needed)
    {
        var raised = lines.ToArray();
        for (var missing = needed - raised.Sum(l => l.Value); missing > 0; missing = needed - raised.Sum(l => l.Value))
        {
            if (Next(raised, exactGrams, missing) is { } next)
            {
                raised[next] = With(raised[next], 1);
                continue;
            }

            var most = Most(exactGrams);
            raised[most] = With(raised[most], (long)Math.Ceiling(missing / raised[most].Step.DecimalOf(1)));
        }

        return raised;
    }

    private static int? Next(LineAmount[] lines, ReadOnlySpan<double> exactGrams, decimal missing)
    {
        int? best = null;
        for (var i = 0; i < lines.Length; i++)
        {
            if (Remainder(i, exactGrams) > LastBits && (best is null || IsBetter(i, best.Value, exactGrams)))
            {
                best = i;
            }
        }

        return best;

        double Remainder(int i, ReadOnlySpan<double> exact) => (exact[i] / lines[i].Step.Grams) - lines[i].Steps;

        bool IsBetter(int i, int other, ReadOnlySpan<double> exact)
        {
            decimal own = lines[i].Step.DecimalOf(1), others = lines[other].Step.DecimalOf(1);
            var (covers, othersCovers) = (own >= missing, others >= missing);
            return covers != othersCovers ? covers
                : own != others ? own < others == covers
                : Remainder(i, exact) > Remainder(other, exact);
        }
    }

    private static int Most(ReadOnlySpan<double> exactGrams)
    {
        var most = 0;
        for (var i = 1; i < exactGrams.Length; i++)
        {
            most = exactGrams[i] > exactGrams[most] ? i : most;
        }

        return most;
    }

    private static LineAmount With(LineAmount line, long more) => line with { Steps = line.Steps + more, LostSteps = 0 };
}
