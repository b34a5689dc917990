using RubLab.Core.Solving;

namespace RubLab.Core.Diffusion;

/// <summary>The bath without end of <see cref="SlabBath"/> by itself, with every exponential got from the one before: a brick asks for it
/// thousands of times.</summary>
internal static class SlabInBed
{
    private const double ShortBelow = 0.025;
    private const double Negligible = 1e-18;

    /// <summary>Salt taken up, as a share of what is taken up at the end.</summary>
    public static double Uptake(double time)
    {
        if (time < ShortBelow)
        {
            return 2 * Math.Sqrt(time / Math.PI);
        }

        // exp(-(2n + 1)^2 a) = exp(-(2n - 1)^2 a) exp(-8 n a).
        double term = Math.Exp(-Math.PI * Math.PI / 4 * time), ratio = Math.Pow(term, 8), step = ratio, left = term;
        for (var odd = 3.0; ; odd += 2)
        {
            term *= step;
            if (term < Negligible)
            {
                return 1 - (8 / (Math.PI * Math.PI) * left);
            }

            step *= ratio;
            left += term / (odd * odd);
        }
    }

    /// <summary>Strength at a place.</summary>
    /// <param name="position">0 at the face without flux, 1 at the treated face.</param>
    /// <param name="time">Zero or more.</param>
    public static double At(double position, double time)
    {
        if (time < ShortBelow)
        {
            var reach = 2 * Math.Sqrt(time);
            return time == 0 ? position >= 1 ? 1 : 0 : ErrorFunction.Erfc((1 - position) / reach) + ErrorFunction.Erfc((1 + position) / reach);
        }

        double term = Math.Exp(-Math.PI * Math.PI / 4 * time), ratio = Math.Pow(term, 8), step = ratio;
        double here = Math.Cos(Math.PI / 2 * position), before = here, turn = 2 * Math.Cos(Math.PI * position), left = term * here;
        for (double odd = 3, sign = -1; ; odd += 2, sign = -sign)
        {
            term *= step;
            if (term < Negligible)
            {
                return Math.Max(1 - (4 / Math.PI * left), 0);
            }

            step *= ratio;
            (before, here) = (here, (turn * here) - before);
            left += sign * term * here / odd;
        }
    }
}
