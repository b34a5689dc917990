using System.Globalization;

namespace RubLab.Contracts.Outputs;

/// <summary>Numbers as a person writes them: no exponent, no separators, and the very number of the JSON.</summary>
internal static class PlainNumber
{
    // Within these a decimal holds every digit of what an answer carries.
    private const double Least = 1e-12;
    private const double Most = 1e15;

    public static string Of(double value) => value == 0 || Math.Abs(value) is >= Least and <= Most
        ? ((decimal)value).ToString(CultureInfo.InvariantCulture)
        : value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A ratio for people: four significant digits.</summary>
    public static string Readable(double value) =>
        Of(double.Parse(value.ToString("E3", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture));
}
