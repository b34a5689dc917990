using System.Globalization;

namespace RubLab.Api.Hosting;

/// <summary>What the host is told.</summary>
/// <param name="Data">The data file, or a PostgreSQL connection string, whose password is not to be shown.</param>
/// <param name="Key">A key to accept; none when only stored keys, or none at all, open the server.</param>
/// <param name="NewKeyName">Set to make a key of this name, print it and end.</param>
/// <param name="NewCodeName">Set to make a pairing code for a device of this name, print it and end.</param>
/// <param name="Scopes">What the key or code made is good for; null for what is usual.</param>
/// <param name="RequestsPerSecond">How many requests one key or paired device may send, on average.</param>
public sealed record HostSettings(
    string Data, string? Key, string? NewKeyName, string? NewCodeName, IReadOnlyList<string>? Scopes, int RequestsPerSecond)
{
    public const string DefaultUrl = "http://127.0.0.1:5187";

    // Twenty characters drawn at random are beyond guessing; a word is not.
    private const int ShortestKey = 20;
    private const int DefaultRequestsPerSecond = 50;

    /// <summary>
    /// Reads <c>--data PATH-OR-CONNECTION-STRING</c> (or RUBLAB_DATA), RUBLAB_KEY, <c>--new-key NAME</c>, <c>--new-code NAME</c>,
    /// <c>--scopes A,B</c> and RUBLAB_RATE.
    /// </summary>
    /// <exception cref="SetupException">The key is too short, or the rate is no whole number above zero.</exception>
    public static HostSettings From(IConfiguration configuration)
    {
        var key = NotBlank(configuration["RUBLAB_KEY"]);
        if (key?.Length < ShortestKey)
        {
            throw new SetupException($"RUBLAB_KEY must have at least {ShortestKey} characters, drawn at random.");
        }

        return new HostSettings(
            NotBlank(configuration["data"]) ?? NotBlank(configuration["RUBLAB_DATA"]) ?? DefaultDataPath(),
            key,
            NotBlank(configuration["new-key"]),
            NotBlank(configuration["new-code"]),
            NotBlank(configuration["scopes"])?.Split(',', StringSplitOptions.TrimEntries),
            Rate(NotBlank(configuration["RUBLAB_RATE"])));
    }

    private static int Rate(string? text)
    {
        if (text is null)
        {
            return DefaultRequestsPerSecond;
        }

        return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var rate) && rate > 0
            ? rate
            : throw new SetupException("RUBLAB_RATE is a whole number of requests per second, above 0.");
    }

    private static string DefaultDataPath() => Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create),
        "rublab", "rublab.db");

    private static string? NotBlank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text;
}
