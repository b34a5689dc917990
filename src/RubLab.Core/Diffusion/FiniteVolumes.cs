namespace RubLab.Core.Diffusion;

/// <summary>
/// Diffusion by finite volumes and implicit steps: what leaves one cell enters its neighbour, so no salt is lost. It shares nothing
/// with the series and checks them; it also starts from any distribution.
/// </summary>
/// <remarks>Cells grow away from the face as the square; each step is a trapezoidal one and a backward difference one (TR-BDF2),
/// second order and without ringing.</remarks>
public sealed class FiniteVolumes
{
    // Makes both halves of a step share one matrix.
    private static readonly double Gamma = 2 - Math.Sqrt(2);

    private readonly FiniteVolumeProblem _problem;
    private readonly double[] _centres;
    private readonly double[] _volumes;
    private readonly double[] _conductances;
    private readonly double[] _strengths;

    private FiniteVolumes(FiniteVolumeProblem problem)
    {
        _problem = problem;
        var n = problem.Cells;
        var faces = new double[n + 1];
        for (var i = 0; i <= n; i++)
        {
            var fromFace = (double)(n - i) / n;
            faces[i] = 1 - (fromFace * fromFace);
        }

        _centres = new double[n];
        _volumes = new double[n + 1];
        _strengths = new double[n + 1];
        for (var i = 0; i < n; i++)
        {
            _centres[i] = (faces[i] + faces[i + 1]) / 2;
            _volumes[i] = Math.Pow(faces[i + 1], problem.Dimensions) - Math.Pow(faces[i], problem.Dimensions);
            _strengths[i] = problem.StrengthBetween?.Invoke(faces[i], faces[i + 1]) ?? 0;
        }

        // The last cell is the liquid; one that never weakens is one without end.
        _volumes[n] = problem.WaterRatio;
        _strengths[n] = problem.Liquid;
        _conductances = new double[n];
        for (var i = 0; i < n - 1; i++)
        {
            _conductances[i] = problem.Dimensions * Math.Pow(faces[i + 1], problem.Dimensions - 1) / (_centres[i + 1] - _centres[i]);
        }

        _conductances[n - 1] = problem.WaterRatio == 0 ? 0 : problem.Dimensions / (1 - _centres[n - 1] + (1 / problem.FaceConductance));
    }

    /// <summary>Salt in the meat over its volume.</summary>
    public double Mean
    {
        get
        {
            double sum = 0;
            for (var i = 0; i < _centres.Length; i++)
            {
                sum += _volumes[i] * _strengths[i];
            }

            return sum;
        }
    }

    /// <summary>Strength of the liquid.</summary>
    public double Liquid => _strengths[^1];

    /// <summary>Carries a problem to a time.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="time">Dimensionless, <c>D t / l^2</c>; zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure of the problem, or the time, is outside its range.</exception>
    public static FiniteVolumes Solve(FiniteVolumeProblem problem, double time)
    {
        ArgumentNullException.ThrowIfNull(problem);
        if (problem.Dimensions is < 1 or > 3 || problem.Cells < 3 || problem.Steps < 1
            || !(problem.WaterRatio >= 0) || !(problem.FaceConductance > 0) || !(problem.Liquid >= 0 && double.IsFinite(problem.Liquid)))
        {
            throw new ArgumentOutOfRangeException(nameof(problem), problem, "Outside the range its members document.");
        }

        if (!(time >= 0 && double.IsFinite(time)))
        {
            throw new ArgumentOutOfRangeException(nameof(time), time, "Finite, zero or more.");
        }

        var state = new FiniteVolumes(problem);
        state.Carry(time);
        return state;
    }

    /// <summary>Strength at a place, from the parabola through the three nearest cells.</summary>
    /// <param name="position">0 to 1, the face.</param>
    public double At(double position)
    {
        var i = Math.Clamp(Array.BinarySearch(_centres, position) is var found && found < 0 ? ~found : found, 1, _centres.Length - 2);
        if (i < _centres.Length - 2 && i > 1 && position - _centres[i - 1] < _centres[i] - position)
        {
            i--;
        }

        double a = _centres[i - 1], b = _centres[i], c = _centres[i + 1];
        return (_strengths[i - 1] * (position - b) * (position - c) / ((a - b) * (a - c)))
            + (_strengths[i] * (position - a) * (position - c) / ((b - a) * (b - c)))
            + (_strengths[i + 1] * (position - a) * (position - b) / ((c - a) * (c - b)));
    }

    private void Carry(double time)
    {
        var n = _strengths.Length;
        double[] start = new double[n], half = new double[n], flow = new double[n], pivots = new double[n];
        for (var step = 1; step <= _problem.Steps; step++)
        {
            double from = (double)(step - 1) / _problem.Steps, to = (double)step / _problem.Steps;
            var length = time * ((to * to) - (from * from));
            var part = Gamma / 2 * length;
            Array.Copy(_strengths, start, n);
            Flow(start, flow);
            for (var i = 0; i < n; i++)
            {
                half[i] = (Volume(i) * start[i]) + (part * flow[i]);
            }

            Solve(half, part, pivots);
            double ofHalf = 1 / (Gamma * (2 - Gamma)), ofStart = (1 - Gamma) * (1 - Gamma) / (Gamma * (2 - Gamma));
            for (var i = 0; i < n; i++)
            {
                _strengths[i] = Volume(i) * ((ofHalf * half[i]) - (ofStart * start[i]));
            }

            Solve(_strengths, (1 - Gamma) / (2 - Gamma) * length, pivots);
        }
    }

    // A liquid that never weakens stands as a cell of one that takes no salt in.
    private double Volume(int i) => double.IsPositiveInfinity(_volumes[i]) || _volumes[i] == 0 ? 1 : _volumes[i];

    private double IntoLiquid => double.IsPositiveInfinity(_problem.WaterRatio) ? 0 : 1;

    private void Flow(double[] strengths, double[] flow)
    {
        Array.Clear(flow);
        for (var i = 0; i < _conductances.Length; i++)
        {
            var passed = _conductances[i] * (strengths[i + 1] - strengths[i]);
            flow[i] += passed;
            flow[i + 1] -= i + 1 == _conductances.Length ? passed * IntoLiquid : passed;
        }
    }

    // (V + part K) x = b by elimination down and back up.
    private void Solve(double[] b, double part, double[] pivots)
    {
        var last = b.Length - 1;
        for (var i = 0; i <= last; i++)
        {
            var below = i == 0 ? 0 : part * _conductances[i - 1] * (i == last ? IntoLiquid : 1);
            var above = i == last ? 0 : part * _conductances[i];
            var pivot = Volume(i) + below + above;
            if (i > 0)
            {
                var share = below / pivots[i - 1];
                pivot -= share * part * _conductances[i - 1];
                b[i] += share * b[i - 1];
            }

            pivots[i] = pivot;
        }

        b[last] /= pivots[last];
        for (var i = last - 1; i >= 0; i--)
        {
            b[i] = (b[i] + (part * _conductances[i] * b[i + 1])) / pivots[i];
        }
    }
}
