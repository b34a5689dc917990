namespace RubLab.Core.Solving;

/// <summary>Searches inside a bracket: where a function crosses zero, and where it is greatest.</summary>
internal static class Bracket
{
    private const int MostSteps = 200;
    private static readonly double Golden = (Math.Sqrt(5) - 1) / 2;

    /// <summary>Where a continuous function whose ends differ in sign crosses zero (Brent's method).</summary>
    /// <param name="function">The function.</param>
    /// <param name="low">One end.</param>
    /// <param name="high">The other end.</param>
    /// <param name="relative">Tolerance, as a share of the answer; never less than the last bit.</param>
    /// <exception cref="ArgumentException">The ends do not differ in sign.</exception>
    public static double Crossing<T>(T function, double low, double high, double relative = 0)
        where T : struct, IFunction
    {
        double a = low, b = high, atA = function.At(a), atB = function.At(b);
        if (atA == 0)
        {
            return a;
        }

        if (!(Math.Sign(atA) * Math.Sign(atB) <= 0))
        {
            throw new ArgumentException($"No crossing between {low} and {high}: {atA}, {atB}.", nameof(function));
        }

        double c = a, atC = atA, step = b - a, before = step;
        for (var i = 0; i < MostSteps && atB != 0; i++)
        {
            if (Math.Sign(atB) == Math.Sign(atC))
            {
                (c, atC, step) = (a, atA, b - a);
                before = step;
            }

            if (Math.Abs(atC) < Math.Abs(atB))
            {
                (a, b, c) = (b, c, b);
                (atA, atB, atC) = (atB, atC, atB);
            }

            var tolerance = Math.Abs(b) * Math.Max(relative, 2.3e-16);
            var half = (c - b) / 2;
            if (Math.Abs(half) <= tolerance)
            {
                break;
            }

            var tried = Interpolated(a, b, c, atA, atB, atC);
            if (Math.Abs(before) >= tolerance && Math.Abs(atA) > Math.Abs(atB)
                && tried / half > 0 && Math.Abs(tried) < Math.Min(1.5 * Math.Abs(half), Math.Abs(before / 2)))
            {
                (before, step) = (step, tried);
            }
            else
            {
                (before, step) = (half, half);
            }

            (a, atA) = (b, atB);
            b += Math.Abs(step) > tolerance ? step : Math.CopySign(tolerance, half);
            atB = function.At(b);
        }

        return b;
    }

    /// <summary>The greatest value of a function with one hump, by golden section; its ends are looked at too.</summary>
    public static double Greatest<T>(T function, double low, double high, int steps)
        where T : struct, IFunction
    {
        var most = Math.Max(function.At(low), function.At(high));
        double a = high - (Golden * (high - low)), b = low + (Golden * (high - low));
        double atA = function.At(a), atB = function.At(b);
        for (var i = 0; i < steps; i++)
        {
            most = Math.Max(most, Math.Max(atA, atB));
            if (atA > atB)
            {
                (high, b, atB) = (b, a, atA);
                a = high - (Golden * (high - low));
                atA = function.At(a);
            }
            else
            {
                (low, a, atA) = (a, b, atB);
                b = low + (Golden * (high - low));
                atB = function.At(b);
            }
        }

        return Math.Max(most, Math.Max(atA, atB));
    }

    // The step from b: inverse quadratic through three points, a secant where two coincide.
    private static double Interpolated(double a, double b, double c, double atA, double atB, double atC)
    {
        var s = atB / atA;
        if (a == c)
        {
            return -(c - b) * s / (1 - s);
        }

        double q = atA / atC, r = atB / atC;
        return -s * (((c - b) * q * (q - r)) - ((b - a) * (r - 1))) / ((q - 1) * (r - 1) * (s - 1));
    }
}
