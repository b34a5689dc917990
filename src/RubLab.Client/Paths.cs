using System.Globalization;
using System.Text;

namespace RubLab.Client;

/// <summary>Builds paths and queries; whatever an id holds, it stays one segment.</summary>
internal static class Paths
{
    /// <summary>A list's path and an id.</summary>
    /// <exception cref="ArgumentException">The id is empty, or <c>.</c> or <c>..</c>, which no path can hold.</exception>
    public static string Of(string list, string id)
    {
        ArgumentException.ThrowIfNullOrEmpty(id);
        return id is "." or ".."
            ? throw new ArgumentException($"'{id}' cannot be an id.", nameof(id))
            : list + "/" + Uri.EscapeDataString(id);
    }

    public static string Of(long number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A path with the members of its query that are given.</summary>
    public static string Query(string path, params ReadOnlySpan<(string Name, string? Value)> members)
    {
        var query = new StringBuilder(path);
        var separator = '?';
        foreach (var (name, value) in members)
        {
            if (value is not null)
            {
                query.Append(separator).Append(name).Append('=').Append(Uri.EscapeDataString(value));
                separator = '&';
            }
        }

        return query.ToString();
    }
}
