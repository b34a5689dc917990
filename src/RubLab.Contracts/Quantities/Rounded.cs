using System.Globalization;

namespace RubLab.Contracts.Quantities;

/// <summary>How figures are printed. An exact figure loses only binary noise; an uncertain one loses the digits it has not got.</summary>
public static class Rounded
{
    /// <summary>Twelve significant digits: 13.200000000000001 is written 13.2.</summary>
    public static double Exact(double value) => ToSignificant(value, 12);

    /// <summary>Three significant digits, for what hangs on a bulk density.</summary>
    public static double Estimate(double value) => ToSignificant(value, 3);

    /// <summary>Four significant digits, for weights of meat that hang on yields.</summary>
    public static double Weight(double value) => ToSignificant(value, 4);

    /// <summary>Hundredths, and three significant digits below a tenth, for the salt ledger: entries still add up to a pinch.</summary>
    public static double Ledger(double value) =>
        Math.Abs(value) >= 0.1 ? Math.Round(value, 2, MidpointRounding.AwayFromZero) : ToSignificant(value, 3);

    /// <summary>Whole numbers, for milligrams in a portion.</summary>
    public static double Whole(double value) => Math.Round(value, MidpointRounding.AwayFromZero);

    private static double ToSignificant(double value, int digits)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value;
        }

        var decimals = digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        if (decimals is >= 0 and <= 15)
        {
            return Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        }

        // Beyond the decimals Math.Round reaches: above, through a power of ten; below, by writing the digits out.
        var scale = Math.Pow(10, -decimals);
        var rounded = decimals < 0
            ? Math.Round(value / scale, MidpointRounding.AwayFromZero) * scale
            : double.Parse(value.ToString($"E{digits - 1}", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return double.IsFinite(rounded) ? rounded : value;
    }
}
