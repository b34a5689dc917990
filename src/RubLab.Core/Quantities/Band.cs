namespace RubLab.Core.Quantities;

/// <summary>
/// An uncertain non-negative figure: the lowest, the typical and the highest value it is taken to have.
/// The unit stands in the name of the member that holds the band.
/// </summary>
/// <remarks><c>default</c> is exactly zero. Combining two bands is right only where the two are independent
/// and the result is monotone in each; ratios whose parts recur go through <see cref="Blends"/>.</remarks>
public readonly record struct Band
{
    /// <exception cref="ArgumentException">The three are not finite, not in order, or negative.</exception>
    public Band(double low, double typical, double high)
    {
        if (!(low >= 0 && low <= typical && typical <= high && double.IsFinite(high)))
        {
            throw new ArgumentException($"Not a band: {low}, {typical}, {high}.");
        }

        Low = low;
        Typical = typical;
        High = high;
    }

    public double Low { get; }

    public double Typical { get; }

    public double High { get; }

    public bool IsExact => Low == High;

    /// <summary>A figure with no uncertainty.</summary>
    public static Band Exact(double value) => new(value, value, value);

    /// <summary>A typical value give or take a percentage of it.</summary>
    public static Band Around(double typical, double percent) =>
        new(typical * (1 - (percent / 100)), typical, typical * (1 + (percent / 100)));

    /// <summary>Multiplied by an exact, non-negative number.</summary>
    public Band Times(double factor) => new(Low * factor, Typical * factor, High * factor);

    /// <summary>Multiplied by an independent band.</summary>
    public Band Times(Band other) => new(Low * other.Low, Typical * other.Typical, High * other.High);

    /// <summary>Divided by an exact, positive number.</summary>
    public Band Over(double divisor) => new(Low / divisor, Typical / divisor, High / divisor);

    /// <summary>Divided by an independent band above zero: lowest over highest, highest over lowest.</summary>
    public Band Over(Band divisor) => new(Low / divisor.High, Typical / divisor.Typical, High / divisor.Low);

    /// <summary>Added to an independent band.</summary>
    public Band Plus(Band other) => new(Low + other.Low, Typical + other.Typical, High + other.High);

    /// <summary>The smallest band that holds both, with this one's typical value.</summary>
    public Band Spanning(Band other) => new(Math.Min(Low, other.Low), Typical, Math.Max(High, other.High));

    public bool Overlaps(Band other) => Low <= other.High && other.Low <= High;

    public bool Contains(double value) => value >= Low && value <= High;
}
