using System.Numerics;

namespace RubLab.Core.Solving;

/// <summary>The Bessel functions of orders 0 and 1 a cylinder needs.</summary>
/// <remarks>Real arguments: Miller's backward recurrence below <see cref="AsymptoticFrom"/>, Hankel's asymptotic series above.
/// Complex arguments, modified functions: power series, then the asymptotic series.</remarks>
internal static class Bessel
{
    private const double AsymptoticFrom = 25;
    private const double ModifiedAsymptoticFrom = 12;

    /// <summary>J0 and J1 of a number of zero or more.</summary>
    public static (double J0, double J1) J(double x) => x < AsymptoticFrom ? Recurred(x) : Hankel(x);

    /// <summary>I0 and I1, both times exp(-z), of a number in the right half plane.</summary>
    public static (Complex I0, Complex I1) ScaledI(Complex z)
    {
        if (z.Magnitude > ModifiedAsymptoticFrom)
        {
            var front = 1 / Complex.Sqrt(2 * Math.PI * z);
            return (front * Asymptotic(z, 0), front * Asymptotic(z, 4));
        }

        var quarter = z * z / 4;
        Complex term = 1, even = 1, odd = 1;
        for (var k = 1; k < 60 && term.Magnitude > 1e-18 * even.Magnitude; k++)
        {
            term *= quarter / (k * k);
            even += term;
            odd += term / (k + 1);
        }

        var scale = Complex.Exp(-z);
        return (scale * even, scale * odd * z / 2);
    }

    private static (double J0, double J1) Recurred(double x)
    {
        if (x < 1e-8)
        {
            return (1, x / 2);
        }

        var start = 2 * (((int)(x + (12 * Math.Cbrt(x))) + 20) / 2);
        double above = 0, here = 1e-250, sum = 0, twice = 2 / x;
        for (var n = start; n > 0; n--)
        {
            (above, here) = (here, (n * twice * here) - above);
            // Now the value of order n - 1.
            if (n % 2 == 1)
            {
                sum += n == 1 ? here : 2 * here;
            }

            if (Math.Abs(here) > 1e200)
            {
                (above, here, sum) = (above * 1e-200, here * 1e-200, sum * 1e-200);
            }
        }

        return (here / sum, above / sum);
    }

    private static (double J0, double J1) Hankel(double x)
    {
        var front = Math.Sqrt(2 / (Math.PI * x));
        var (sin, cos) = Math.SinCos(x);
        // Of x - pi/4, without the rounding of that difference.
        var (c, s) = ((cos + sin) * Math.Sqrt(0.5), (sin - cos) * Math.Sqrt(0.5));
        var (p0, q0) = Phases(x, 0);
        var (p1, q1) = Phases(x, 4);
        return (front * ((p0 * c) - (q0 * s)), front * ((p1 * s) + (q1 * c)));
    }

    private static (double P, double Q) Phases(double x, double fourOrdersSquared)
    {
        double p = 1, q = 0, term = 1;
        for (var k = 1; k < 40 && Math.Abs(term) > 1e-18; k++)
        {
            term *= (fourOrdersSquared - (((2 * k) - 1) * ((2 * k) - 1))) / (k * 8 * x);
            switch (k % 4)
            {
                case 1: q += term; break;
                case 2: p -= term; break;
                case 3: q -= term; break;
                default: p += term; break;
            }
        }

        return (p, q);
    }

    private static Complex Asymptotic(Complex z, double fourOrdersSquared)
    {
        Complex sum = 1, term = 1;
        for (var k = 1; k < 40; k++)
        {
            var next = term * -(fourOrdersSquared - (((2 * k) - 1) * ((2 * k) - 1))) / (k * 8 * z);
            if (next.Magnitude > term.Magnitude || next.Magnitude < 1e-18)
            {
                break;
            }

            term = next;
            sum += term;
        }

        return sum;
    }
}
