using System.Globalization;

namespace RubLab.Storage;

/// <summary>Instants as ISO-8601 UTC text of fixed width, so that text order is time order on every engine.</summary>
internal static class Timestamp
{
    private const string Format = "yyyy-MM-dd'T'HH:mm:ss.fffffff'Z'";

    public static string Write(DateTimeOffset instant) => instant.ToUniversalTime().ToString(Format, CultureInfo.InvariantCulture);

    public static DateTimeOffset Read(string text) =>
        DateTimeOffset.ParseExact(text, Format, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal);
}
