using System.Globalization;

namespace RubLab.Contracts.Reading;

/// <summary>What a person sent, as it may be shown back to them.</summary>
public static class Shown
{
    private const int Longest = 80;

    // Nearer to nothing, or further from it, a row of noughts is harder to read than an exponent.
    private const double LeastPlain = 1e-8;
    private const double MostPlain = 1e15;

    /// <summary>A number without an exponent where it can be read so.</summary>
    public static string Number(double value) => value == 0 || Math.Abs(value) is >= LeastPlain and <= MostPlain
        ? ((decimal)value).ToString(CultureInfo.InvariantCulture)
        : value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>The text, cut where it would drown the message; never through a surrogate pair.</summary>
    public static string Text(string text)
    {
        if (text.Length <= Longest)
        {
            return text;
        }

        var end = char.IsHighSurrogate(text[Longest - 1]) ? Longest - 1 : Longest;
        return text[..end] + "...";
    }
}
