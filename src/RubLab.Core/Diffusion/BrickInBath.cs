namespace RubLab.Core.Diffusion;

/// <summary>A brick in a stirred bath that weakens.</summary>
/// <remarks>
/// The product rule needs faces of one strength in time, so it does not hold here. But the meat answers to the liquid's strength as
/// to a row of small changes, each with the product rule's own answer (Duhamel). With the salt's balance that makes one integral
/// equation for the liquid, solved by collocation: a polynomial in the root of the travel, in which it is smooth, drawn out
/// at its start, where a small bath weakens all at once.
/// </remarks>
internal sealed class BrickInBath(double waterRatio, BrickInBed bed) : SaltField
{
    private const int FewestTerms = 40;
    private const int MostTerms = 100;
    private const double Converged = 1e-9;

    // In squares of the reach; most questions lie before it.
    private const double FirstHorizon = 4;

    private static readonly (double Point, double Weight)[] Rule = GaussLegendre(40);

    // The root of the travel in which most of the weakening is done.
    private readonly double _scale = waterRatio * bed.ReachOfAllMillimetres;

    // Replaced as a whole: two threads that ask at once may solve twice, and each reads one solution.
    private Solution _solution = new([], 0);

    public override double ReachMillimetres => bed.ReachMillimetres;

    public override double Uptake(double travel)
    {
        if (waterRatio > 1)
        {
            // A large bath hardly weakens, so what it lost says little.
            return Answer(travel, bed.Uptake);
        }

        return (1 - Liquid(SolvedTo(travel), Math.Sqrt(travel))) * (1 + waterRatio);
    }

    public override double At(double position, double travel) => Answer(travel, at => bed.At(position, at));

    public override double Layer(double position, double travel) => Answer(travel, at => bed.Layer(position, at));

    public override (double Uptake, double CentreToMean) Middle(double travel)
    {
        double uptake = 0, centre = 0;
        foreach (var (weight, at) in Changes(travel))
        {
            uptake += weight * bed.Uptake(at);
            centre += weight * bed.At(0, at);
        }

        // As in Uptake.
        var mean = waterRatio > 1 ? Math.Max(uptake, 0) : (1 - Liquid(SolvedTo(travel), Math.Sqrt(travel))) * (1 + waterRatio);
        return (mean, Math.Max(centre, 0) / mean);
    }

    public override (double[] Line, double[] Layers) Profile(double travel, int places)
    {
        var mean = Uptake(travel);
        double[] line = new double[places], layers = new double[places];
        foreach (var (weight, at) in Changes(travel))
        {
            bed.AddTo(line, layers, weight, at);
        }

        return (Array.ConvertAll(line, c => Math.Max(c, 0) / mean), Array.ConvertAll(layers, c => Math.Max(c, 0) / mean));
    }

    private double Answer(double travel, Func<double, double> toConstantStrength)
    {
        double sum = 0;
        foreach (var (weight, at) in Changes(travel))
        {
            sum += weight * toConstantStrength(at);
        }

        return Math.Max(sum, 0);
    }

    // The liquid's strength as changes, each with the travel since it; relative to the even strength.
    private List<(double Weight, double Travel)> Changes(double travel)
    {
        var solution = SolvedTo(travel);
        double root = Math.Sqrt(travel), last = Math.Sqrt(solution.Horizon), toEven = 1 + (1 / waterRatio);
        Stretch arc = new(1, root / _scale), line = new(last, last / _scale);
        List<(double Weight, double Travel)> changes = [(toEven, travel)];
        foreach (var (point, weight) in Rule)
        {
            var (sine, cosine, share) = Turned(arc, point);
            changes.Add((toEven * weight * share * root * Change(solution, line, root * sine), travel * cosine * cosine));
        }

        return changes;
    }

    // A point of the quarter turn whose sine is the root of an earlier travel over that of the one asked for.
    private static (double Sine, double Cosine, double Share) Turned(Stretch arc, double point)
    {
        var (sine, cosine) = Math.SinCos(Math.PI / 2 * arc.At(point));
        return (sine, cosine, Math.PI / 2 * arc.Slope(point) * cosine);
    }

    private Solution SolvedTo(double travel)
    {
        var solution = _solution;
        if (travel <= solution.Horizon)
        {
            return solution;
        }

        var horizon = Math.Max(FirstHorizon * ReachMillimetres * ReachMillimetres, 4 * travel);
        for (var terms = FewestTerms; ; terms += FewestTerms / 2)
        {
            var coefficients = Collocated(Math.Min(terms, MostTerms), horizon);
            if (terms >= MostTerms || Math.Abs(coefficients[^1]) + Math.Abs(coefficients[^2]) < Converged)
            {
                return _solution = new Solution(coefficients, horizon);
            }
        }
    }

    // Strength of the liquid, 1 at the start, by the root of the travel.
    private double Liquid(Solution solution, double root)
    {
        var (coefficients, last) = (solution.Coefficients, Math.Sqrt(solution.Horizon));
        var y = (2 * new Stretch(last, last / _scale).PointOf(root)) - 1;
        double before = 1, here = y, sum = coefficients[0] + (coefficients[1] * y);
        for (var k = 2; k < coefficients.Length; k++)
        {
            (before, here) = (here, (2 * y * here) - before);
            sum += coefficients[k] * here;
        }

        return sum;
    }

    // How the liquid's strength changes with the root of the travel.
    private static double Change(Solution solution, Stretch line, double root)
    {
        var coefficients = solution.Coefficients;
        var point = line.PointOf(root);
        var y = (2 * point) - 1;
        double before = 0, here = 1, sum = 0;
        for (var k = 1; k < coefficients.Length; k++)
        {
            sum += k * coefficients[k] * here;
            (before, here) = (here, (2 * y * here) - before);
        }

        return sum * 2 / line.Slope(point);
    }

    // ratio (1 - liquid) = what the meat holds, at each node; divided by 1 + ratio.
    private double[] Collocated(int terms, double horizon)
    {
        double last = Math.Sqrt(horizon), ofLiquid = waterRatio / (1 + waterRatio), ofMeat = 1 / (1 + waterRatio);
        var line = new Stretch(last, last / _scale);
        double[][] rows = new double[terms][];
        double[] values = new double[terms], slopes = new double[terms];
        for (var n = 0; n < terms; n++)
        {
            var y = -Math.Cos(n * Math.PI / (terms - 1));
            var root = line.At((y + 1) / 2);
            var row = new double[terms + 1];
            Polynomials(y, values, slopes);
            for (var k = 0; k < terms; k++)
            {
                row[k] = n == 0 ? values[k] : ofLiquid * values[k];
            }

            row[terms] = n == 0 ? 1 : ofLiquid - (ofMeat * bed.Uptake(root * root));
            if (n > 0)
            {
                var arc = new Stretch(1, root / _scale);
                foreach (var (point, weight) in Rule)
                {
                    var (sine, cosine, share) = Turned(arc, point);
                    var at = line.PointOf(root * sine);
                    var part = ofMeat * weight * share * root * 2 / line.Slope(at) * bed.Uptake(root * root * cosine * cosine);
                    Polynomials((2 * at) - 1, values, slopes);
                    for (var k = 0; k < terms; k++)
                    {
                        row[k] += part * slopes[k];
                    }
                }
            }

            rows[n] = row;
        }

        return Eliminated(rows);
    }

    // Chebyshev's polynomials and their slopes.
    private static void Polynomials(double y, double[] values, double[] slopes)
    {
        (values[0], values[1], slopes[0], slopes[1]) = (1, y, 0, 1);
        for (var k = 2; k < values.Length; k++)
        {
            values[k] = (2 * y * values[k - 1]) - values[k - 2];
            slopes[k] = (2 * values[k - 1]) + (2 * y * slopes[k - 1]) - slopes[k - 2];
        }
    }

    private static double[] Eliminated(double[][] rows)
    {
        var n = rows.Length;
        for (var i = 0; i < n; i++)
        {
            var best = i;
            for (var j = i + 1; j < n; j++)
            {
                best = Math.Abs(rows[j][i]) > Math.Abs(rows[best][i]) ? j : best;
            }

            (rows[i], rows[best]) = (rows[best], rows[i]);
            for (var j = i + 1; j < n; j++)
            {
                var share = rows[j][i] / rows[i][i];
                for (var k = i; k <= n; k++)
                {
                    rows[j][k] -= share * rows[i][k];
                }
            }
        }

        var answer = new double[n];
        for (var i = n - 1; i >= 0; i--)
        {
            var sum = rows[i][n];
            for (var k = i + 1; k < n; k++)
            {
                sum -= rows[i][k] * answer[k];
            }

            answer[i] = sum / rows[i][i];
        }

        return answer;
    }

    // On 0 to 1.
    private static (double Point, double Weight)[] GaussLegendre(int points)
    {
        var rule = new (double, double)[points];
        for (var i = 0; i < points; i++)
        {
            double x = Math.Cos(Math.PI * (i + 0.75) / (points + 0.5)), slope = 0;
            for (var turn = 0; turn < 8; turn++)
            {
                double before = 1, here = x;
                for (var k = 2; k <= points; k++)
                {
                    (before, here) = (here, ((((2 * k) - 1) * x * here) - ((k - 1) * before)) / k);
                }

                slope = points * ((x * here) - before) / ((x * x) - 1);
                x -= here / slope;
            }

            rule[i] = ((x + 1) / 2, 1 / ((1 - (x * x)) * slope * slope));
        }

        return rule;
    }

    // The liquid up to a travel.
    private sealed record Solution(double[] Coefficients, double Horizon);

    // 0 to 1 laid on 0 to an end, drawn out near 0 where the end is many scales long.
    private readonly struct Stretch(double end, double scales)
    {
        private readonly double _bend = Math.Asinh(Math.Max(1, scales));
        private readonly double _sine = Math.Max(1, scales);

        public double At(double point) => end * Math.Sinh(_bend * point) / _sine;

        public double PointOf(double place) => Math.Asinh(place / end * _sine) / _bend;

        public double Slope(double point) => end * _bend * Math.Cosh(_bend * point) / _sine;
    }
}
