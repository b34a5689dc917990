namespace RubLab.Core.Solving;

/// <summary>The error function's relatives that diffusion needs, to a few units of the last bit.</summary>
/// <remarks>
/// Near zero the series of all-positive terms; from one half on the trapezoidal rule for
/// <c>erfc x = (x / pi) exp(-x^2) * integral of exp(-t^2) / (t^2 + x^2)</c>, which at this step errs by less than
/// <c>exp(-39)</c> once the pole's share is taken off (Chiarella and Reichel 1968, recollected; checked in tests).
/// </remarks>
public static class ErrorFunction
{
    private const double SeriesBelow = 0.5;
    private const double Step = 0.5;
    private const int Terms = 13;

    // Beyond this the pole lies under the contour no more.
    private const double PoleBelow = Math.PI / Step;

    private static readonly double[] Gaussians = [.. Enumerable.Range(1, Terms).Select(k => Math.Exp(-(k * Step * k * Step)))];

    /// <summary>2 / sqrt(pi) times the integral of exp(-t^2) from 0 to x.</summary>
    /// <param name="x">Any number.</param>
    public static double Erf(double x) => Math.Abs(x) < SeriesBelow ? Series(x) * Gaussian(x) : 1 - Erfc(x);

    /// <summary>1 - erf(x), without loss where that is small.</summary>
    /// <param name="x">Any number.</param>
    public static double Erfc(double x) => x switch
    {
        <= -SeriesBelow => 2 - Erfc(-x),
        < SeriesBelow => 1 - Erf(x),
        _ => Gaussian(x) * Scaled(x),
    };

    /// <summary>exp(x^2) * erfc(x), which neither overflows nor vanishes.</summary>
    /// <param name="x">Zero or more; infinity gives zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">Below zero or not a number.</exception>
    public static double Scaled(double x)
    {
        if (!(x >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(x), x, "Zero or more.");
        }

        if (x < SeriesBelow)
        {
            return Math.Exp(x * x) - Series(x);
        }

        if (double.IsPositiveInfinity(x))
        {
            return 0;
        }

        // Divided by x first, so that the largest x does not overflow on the way.
        var step = Step / x;
        double sum = 0;
        for (var k = Terms; k >= 1; k--)
        {
            sum += Gaussians[k - 1] / ((k * step * k * step) + 1);
        }

        var trapezoid = step / Math.PI * (1 + (2 * sum));
        return x < PoleBelow ? trapezoid - (2 * Math.Exp(x * x) / (Math.Exp(2 * Math.PI * x / Step) - 1)) : trapezoid;
    }

    /// <summary>1 - exp(x^2) * erfc(x), without loss where x is small.</summary>
    /// <param name="x">Zero or more; infinity gives one.</param>
    public static double ScaledComplement(double x) => x < SeriesBelow ? Series(x) - LessOne(x * x) : 1 - Scaled(x);

    // exp(x^2) * erf(x).
    private static double Series(double x)
    {
        var term = 2 / Math.Sqrt(Math.PI) * x;
        var sum = term;
        for (var n = 1; Math.Abs(term) > Math.Abs(sum) * 1e-17; n++)
        {
            term *= 2 * x * x / ((2 * n) + 1);
            sum += term;
        }

        return sum;
    }

    // The square's own rounding would be magnified by the square, so it is carried along.
    private static double Gaussian(double x)
    {
        var square = x * x;
        return double.IsInfinity(square) ? 0 : Math.Exp(-square) * (1 - Math.FusedMultiplyAdd(x, x, -square));
    }

    private static double LessOne(double x) => x < 1e-5 ? x + (x * x / 2) + (x * x * x / 6) : Math.Exp(x) - 1;
}
