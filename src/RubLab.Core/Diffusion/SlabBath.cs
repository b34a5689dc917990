using RubLab.Core.Solving;

namespace RubLab.Core.Diffusion;

/// <summary>
/// A plane sheet in a well-stirred bath on one face, no flux through the other (the middle, where both faces are treated).
/// Concentrations are relative to the even one at the end; time is <c>T = D t / l^2</c>.
/// </summary>
/// <remarks>
/// The water ratio is that of the bath to the meat. Zero is salt put on the face at time 0 with none to follow; infinity is a
/// face held at one concentration. Both are limits of the same formulas (Crank, The Mathematics of Diffusion, 4.16 to 4.45).
/// </remarks>
internal readonly struct SlabBath
{
    // Below, one reflection leaves out less than exp(-1 / T); above, so many terms leave out less than that.
    private const double ShortBelow = 0.025;
    private const double NegligibleExponent = 42;

    private readonly double _waterRatio;

    // The bath seen from the meat; the smaller of the two ratios is the one computed with.
    private readonly double _inverse;

    private readonly double[]? _roots;

    /// <param name="waterRatio">Zero or more, infinity included.</param>
    public SlabBath(double waterRatio)
    {
        _inverse = 1 / waterRatio;
        _waterRatio = double.IsInfinity(_inverse) ? 0 : waterRatio;
    }

    private SlabBath(SlabBath bath, double[] roots)
    {
        this = bath;
        _roots = roots;
    }

    private bool IsMoreBath => _waterRatio > 1;

    /// <summary>The same, for many questions: the roots are found once.</summary>
    public SlabBath Prepared()
    {
        var roots = new double[(int)(Math.Sqrt(NegligibleExponent / ShortBelow) / Math.PI) + 2];
        for (var n = 1; n <= roots.Length; n++)
        {
            roots[n - 1] = Root(n);
        }

        return new SlabBath(this, roots);
    }

    /// <summary>The root of <c>tan q = -ratio q</c> between <c>(n - 1/2) pi</c> and <c>n pi</c>.</summary>
    /// <param name="n">From 1.</param>
    public double Root(int n)
    {
        if (n <= _roots?.Length)
        {
            return _roots[n - 1];
        }

        var start = (n - 0.5) * Math.PI;
        // With q = start + d, d = arctan(1 / (ratio q)): one crossing, rising, between 0 and pi/2.
        double low = 0, high = Math.PI / 2, d = Math.Min(Slant(start), high);
        for (var i = 0; i < 60; i++)
        {
            var q = start + d;
            var excess = d - Slant(q);
            if (excess > 0)
            {
                high = d;
            }
            else
            {
                low = d;
            }

            var slope = 1 + (IsMoreBath ? _inverse / ((q * q) + (_inverse * _inverse)) : _waterRatio / (1 + (_waterRatio * q * _waterRatio * q)));
            var next = d - (excess / slope);
            next = next >= low && next <= high ? next : (low + high) / 2;
            if (Math.Abs(next - d) <= q * 1e-16)
            {
                break;
            }

            d = next;
        }

        return start + d;
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
            return double.IsPositiveInfinity(_waterRatio)
                ? 2 * Math.Sqrt(time / Math.PI)
                : (1 + _waterRatio) * ErrorFunction.ScaledComplement(Math.Sqrt(time) / _waterRatio);
        }

        double left = 0;
        for (var n = 1; ; n++)
        {
            var q = Root(n);
            if (q * q * time > NegligibleExponent)
            {
                return 1 - left;
            }

            left += Weight(q) * (IsMoreBath ? 1 : _waterRatio) * Math.Exp(-q * q * time);
        }
    }

    /// <summary>Concentration at a place, relative to the even one.</summary>
    /// <param name="position">0 at the face without flux, 1 at the treated face.</param>
    /// <param name="time">Above zero.</param>
    public double At(double position, double time)
    {
        if (time < ShortBelow)
        {
            return FromFace(1 - position, time) + FromFace(1 + position, time);
        }

        double sum = 1;
        for (var n = 1; ; n++)
        {
            var q = Root(n);
            if (q * q * time > NegligibleExponent)
            {
                return Math.Max(sum, 0);
            }

            // 1 / cos q = (-1)^n sqrt(1 + (ratio q)^2), which is exact where cos q nearly vanishes.
            var slant = IsMoreBath ? Math.Sqrt((_inverse * _inverse) + (q * q)) : Math.Sqrt(1 + (_waterRatio * q * _waterRatio * q));
            var term = Weight(q) * slant * Math.Cos(q * position) * Math.Exp(-q * q * time);
            sum += n % 2 == 0 ? term : -term;
        }
    }

    private double Slant(double q) => IsMoreBath ? Math.Atan(_inverse / q) : Math.Atan2(1, _waterRatio * q);

    // 2 (1 + ratio) / (1 + ratio + (ratio q)^2), times the ratio where that is large.
    private double Weight(double q) => IsMoreBath
        ? 2 * (1 + _inverse) / ((_inverse * _inverse) + _inverse + (q * q))
        : 2 * (1 + _waterRatio) / (1 + _waterRatio + (_waterRatio * q * _waterRatio * q));

    // A deep piece of meat, at a depth below its face.
    private double FromFace(double depth, double time)
    {
        var reach = 2 * Math.Sqrt(time);
        var steep = depth / reach;
        if (_waterRatio == 0)
        {
            return 2 / (reach * Math.Sqrt(Math.PI)) * Math.Exp(-steep * steep);
        }

        return (1 + _inverse) * Math.Exp(-steep * steep) * ErrorFunction.Scaled(steep + (reach / 2 * _inverse));
    }
}
