using System.Globalization;

namespace RubLab.Core.Remarks;

/// <summary>How a figure is written in a sentence. Thousands are grouped from ten thousand on, so that no year is.</summary>
public static class Figures
{
    // What is left of an exact figure once binary noise is off.
    private const int ExactDigits = 12;
    private const int ReadDigits = 3;
    private const double GroupedFrom = 10_000;

    /// <summary>As a cook reads it: three significant digits, and whole from a hundred on.</summary>
    public static string Read(double value) => Written(value, Math.Max(ReadDigits, WholeDigits(value)));

    /// <summary>The same with as many more digits as keep it on its side of a bound.</summary>
    public static string Read(double value, double bound)
    {
        for (var digits = Math.Max(ReadDigits, WholeDigits(value)); digits < ExactDigits; digits++)
        {
            if (Math.Sign(ToSignificant(value, digits) - bound) == Math.Sign(value - bound))
            {
                return Written(value, digits);
            }
        }

        return Exact(value);
    }

    /// <summary>What must be made up for, or left out: never less than it takes.</summary>
    public static string AtLeast(double value)
    {
        var digits = Math.Max(ReadDigits, WholeDigits(value));
        var nearest = ToSignificant(value, digits);
        var step = value > 0 ? Math.Pow(10, Magnitude(value) - digits + 1) : 0;
        return Written(nearest < ToSignificant(value, ExactDigits) ? nearest + step : nearest, digits + 1);
    }

    /// <summary>An estimate: three significant digits, however large it is.</summary>
    public static string Estimated(double value) => Written(value, ReadDigits);

    /// <summary>Every digit it has: a bound, or what is to be weighed.</summary>
    public static string Exact(double value) => Written(value, ExactDigits);

    private static string Written(double value, int digits)
    {
        var rounded = ToSignificant(value, digits);
        return rounded.ToString(Math.Abs(rounded) < GroupedFrom ? "0.####################" : "#,0.############", CultureInfo.InvariantCulture);
    }

    private static double ToSignificant(double value, int digits) =>
        double.Parse(value.ToString($"E{digits - 1}", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static int WholeDigits(double value) => Math.Min(Magnitude(value) + 1, ExactDigits);

    private static int Magnitude(double value) => value == 0 ? 0 : (int)Math.Floor(Math.Log10(Math.Abs(value)));
}
