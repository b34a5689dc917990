namespace RubLab.Contracts.Outputs;

/// <summary>A straight scale from values to places on the picture, with ticks at round numbers.</summary>
internal sealed class PlotScale
{
    private readonly double _first;
    private readonly double _perUnit;

    private PlotScale(double highest, double first, double last, IReadOnlyList<double> ticks)
    {
        (Highest, Ticks, _first) = (highest, ticks, first);
        _perUnit = (last - first) / highest;
    }

    /// <summary>The value at its far end; its near end is zero.</summary>
    public double Highest { get; }

    public IReadOnlyList<double> Ticks { get; }

    /// <summary>A scale that ends where the values do.</summary>
    public static PlotScale To(double highest, double first, double last, int most) => new(highest, first, last, Round(highest, Step(highest, most)));

    /// <summary>A scale that ends at the first tick at or above the values.</summary>
    public static PlotScale Over(double highest, double first, double last, int most)
    {
        var step = Step(highest, most);
        var end = Math.Ceiling((highest / step) - 1e-9) * step;
        return new(end, first, last, Round(end, step));
    }

    /// <summary>The place of a value; those beyond the end are put at the end.</summary>
    public double At(double value) => _first + (Math.Clamp(value, 0, Highest) * _perUnit);

    // 1, 2 or 5 times a power of ten, so that no more ticks than that are needed.
    private static double Step(double highest, int most)
    {
        var rough = highest / most;
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        return (rough / power) switch { <= 1 => 1, <= 2 => 2, <= 5 => 5, _ => 10 } * power;
    }

    private static List<double> Round(double highest, double step)
    {
        var ticks = new List<double>();
        for (var i = 0; i * step <= highest * (1 + 1e-9); i++)
        {
            // A tenth has no exact double: 3 x 0.1 is not 0.3.
            ticks.Add(Quantities.Rounded.Exact(i * step));
        }

        return ticks;
    }
}
