using System.Numerics;
using RubLab.Core.Solving;

namespace RubLab.Core.Diffusion;

/// <summary>
/// A long cylinder in a well-stirred bath all round. Concentrations are relative to the even one at the end; time is
/// <c>T = D t / radius^2</c>.
/// </summary>
/// <remarks>The water ratio as in <see cref="SlabBath"/>. Late times by the series of Crank 5.22 and 5.33 to 5.37, early ones by
/// the same solution's Laplace transform, integrated along a Talbot contour (Weideman 2006).</remarks>
internal readonly struct CylinderBath
{
    private const double ShortBelow = 0.015;
    private const double NegligibleExponent = 42;
    private const int HalfNodes = 14;

    // Where the transforms are taken, times the time asked for, and what each counts.
    private static readonly (Complex Point, Complex Share)[] Contour = [.. Enumerable.Range(0, HalfNodes).Select(Node)];

    private readonly double _waterRatio;
    private readonly double _inverse;
    private readonly (double Root, double Weight)[]? _terms;

    /// <param name="waterRatio">Zero or more, infinity included.</param>
    public CylinderBath(double waterRatio)
    {
        _inverse = 1 / waterRatio;
        _waterRatio = double.IsInfinity(_inverse) ? 0 : waterRatio;
    }

    private CylinderBath(CylinderBath bath, (double Root, double Weight)[] terms)
    {
        this = bath;
        _terms = terms;
    }

    private bool IsMoreBath => _waterRatio > 1;

    // The two parts of the bath's balance, scaled so that neither overflows.
    private double BathPart => IsMoreBath ? 1 : _waterRatio;

    private double MeatPart => IsMoreBath ? _inverse : 1;

    /// <summary>The same, for many questions: the roots are found once.</summary>
    public CylinderBath Prepared()
    {
        var terms = new (double Root, double Weight)[(int)(Math.Sqrt(NegligibleExponent / ShortBelow) / Math.PI) + 2];
        for (var n = 1; n <= terms.Length; n++)
        {
            terms[n - 1] = Term(n);
        }

        return new CylinderBath(this, terms);
    }

    /// <summary>The root of <c>ratio q J0(q) + 2 J1(q) = 0</c> next to <c>n pi</c>.</summary>
    /// <param name="n">From 1.</param>
    public double Root(int n)
    {
        // The zeros of J0 and J1 that are its limits lie inside this bracket, and both functions change sign in it, so the balance
        // does. Started where the functions' waves far out would have it.
        double low = (n - 0.25) * Math.PI, high = (n + 0.25) * Math.PI, sign = n % 2 == 0 ? 1 : -1;
        var q = high - Math.Atan2(BathPart * n * Math.PI, 2 * MeatPart);
        for (var i = 0; i < 60; i++)
        {
            var (j0, j1) = Bessel.J(q);
            var balance = (BathPart * q * j0) + (2 * MeatPart * j1);
            if (balance * sign > 0)
            {
                high = q;
            }
            else
            {
                low = q;
            }

            var slope = (BathPart * (j0 - (q * j1))) + (2 * MeatPart * (j0 - (j1 / q)));
            var next = q - (balance / slope);
            next = next >= low && next <= high ? next : (low + high) / 2;
            if (Math.Abs(next - q) <= q * 2e-16)
            {
                break;
            }

            q = next;
        }

        return q;
    }

    /// <summary>Salt taken up, as a share of what is taken up at the end.</summary>
    public double Uptake(double time)
    {
        if (_waterRatio == 0)
        {
            return 1;
        }

        if (time < ShortBelow)
        {
            return Inverted(time, null);
        }

        double left = 0;
        for (var n = 1; ; n++)
        {
            var q = n <= _terms?.Length ? _terms[n - 1].Root : Root(n);
            if (q * q * time > NegligibleExponent)
            {
                return 1 - left;
            }

            left += Weight(q) * BathPart * Math.Exp(-q * q * time);
        }
    }

    /// <summary>Concentration at a place, relative to the even one.</summary>
    /// <param name="position">0 on the axis, 1 at the surface.</param>
    /// <param name="time">Above zero.</param>
    public double At(double position, double time)
    {
        if (time < ShortBelow)
        {
            return Math.Max(Inverted(time, position), 0);
        }

        double sum = 1;
        for (var n = 1; ; n++)
        {
            var (q, weight) = n <= _terms?.Length ? _terms[n - 1] : Term(n);
            if (q * q * time > NegligibleExponent)
            {
                return Math.Max(sum, 0);
            }

            sum += weight * Bessel.J(q * position).J0 * Math.Exp(-q * q * time);
        }
    }

    private (double Root, double Weight) Term(int n)
    {
        var q = Root(n);
        return (q, Weight(q) / Surface(q));
    }

    // 4 (1 + ratio) / (4 + 4 ratio + (ratio q)^2), times the ratio where that is large.
    private double Weight(double q) =>
        4 * (BathPart + MeatPart) / ((4 * MeatPart * (MeatPart + BathPart)) + (BathPart * q * BathPart * q));

    // J0(q), divided by the inverse ratio where the bath is large: there J0 nearly vanishes and J1 does not.
    private double Surface(double q)
    {
        var (j0, j1) = Bessel.J(q);
        return IsMoreBath ? -2 * j1 / q : j0;
    }

    // The uptake, or the concentration at a place.
    private double Inverted(double time, double? position)
    {
        Complex sum = 0;
        foreach (var (point, share) in Contour)
        {
            var s = point / time;
            var p = Complex.Sqrt(s);
            var (i0, i1) = Bessel.ScaledI(p);
            var bath = (BathPart * s * i0) + (2 * MeatPart * p * i1);
            var transform = position is { } r
                ? Complex.Exp(p * (r - 1)) * Bessel.ScaledI(p * r).I0 / bath
                : 2 * i1 / (p * bath);
            sum += share * transform;
        }

        return (BathPart + MeatPart) * sum.Real / time;
    }

    private static (Complex Point, Complex Share) Node(int k)
    {
        const int nodes = 2 * HalfNodes;
        var angle = ((2 * k) + 1) * Math.PI / nodes;
        var turn = 0.6407 * angle;
        var cot = 1 / Math.Tan(turn);
        var point = nodes * new Complex((0.5017 * angle * cot) - 0.6122, 0.2645 * angle);
        var slope = nodes * new Complex((0.5017 * cot) - (0.5017 * turn / (Math.Sin(turn) * Math.Sin(turn))), 0.2645);
        // Both halves of the contour give conjugate values; (1 / 2 pi i) times the step leaves this.
        return (point, Complex.Exp(point) * slope * new Complex(0, -2.0 / nodes));
    }
}
