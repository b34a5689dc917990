using RubLab.Core.Quantities;

namespace RubLab.Core.Scaling;

/// <summary>What pieces weighed again after injection tell: it replaces the estimate.</summary>
public static class WeighedBack
{
    /// <summary>What stays of an injection in the pieces of a line, percent of what was planned to go in.</summary>
    /// <param name="treatment">The injection.</param>
    /// <param name="pile">The pile.</param>
    /// <param name="line">Index of a line of it that the injection is on.</param>
    /// <returns>None where no piece of the line was weighed back. Above 100 where more went in than was planned. A piece that was not
    /// weighed back counts as planned.</returns>
    public static Band? RetainedPercent(Treatment treatment, Pile pile, int line)
    {
        if (Gains(treatment, pile, line) is not (> 0, _, _) gains)
        {
            return null;
        }

        var retained = treatment.RetainedPercentOn(line);
        return pile.Lines[line].IsWeighedBackDrained
            ? retained.Times(gains.Unweighed / gains.Planned).Plus(Band.Exact(100 * gains.Gained / gains.Planned))
            : retained.Times((gains.Unweighed + gains.Gained) / gains.Planned);
    }

    /// <summary>What went in over what was planned: never below what drained pieces prove, and for a load with a limit never below
    /// the plan. 1 where no piece was weighed back.</summary>
    public static double PutInAtLeast(Treatment treatment, Pile pile, int line) =>
        Gains(treatment, pile, line) is (> 0, _, _) gains ? Math.Max(1, (gains.Unweighed + gains.Gained) / gains.Planned) : 1;

    private static (double Planned, double Gained, double Unweighed)? Gains(Treatment treatment, Pile pile, int line)
    {
        if (pile.Lines[line].WeighedBackGrams is not { } after || BaseWeight.OfPieces(treatment.Ratios, pile, line) is not { } bases)
        {
            return null;
        }

        var greens = pile.GreenGramsOf(line);
        var factors = pile.DoseFactorsOf(line);
        var perBase = treatment.DoseCounted * treatment.Applications;
        double all = 0, gained = 0, unweighed = 0;
        for (var piece = 0; piece < bases.Length; piece++)
        {
            var planned = perBase * bases[piece] * factors[piece];
            all += planned;
            if (after[piece] is { } grams)
            {
                gained += grams - greens[piece];
            }
            else
            {
                unweighed += planned;
            }
        }

        return (all, gained, unweighed);
    }
}
