namespace RubLab.Api.Hosting;

/// <summary>What the host is told: the data file, and a key to accept.</summary>
public sealed record HostSettings(string DataPath, string? Key, string? NewKeyName)
{
    public const string DefaultUrl = "http://127.0.0.1:5187";

    /// <summary>Reads <c>--data PATH</c> (or RUBLAB_DATA), RUBLAB_KEY and <c>--new-key NAME</c>.</summary>
    public static HostSettings From(IConfiguration configuration) => new(
        NotBlank(configuration["data"]) ?? NotBlank(configuration["RUBLAB_DATA"]) ?? DefaultDataPath(),
        NotBlank(configuration["RUBLAB_KEY"]),
        NotBlank(configuration["new-key"]));

    private static string DefaultDataPath() => Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create),
        "rublab", "rublab.db");

    private static string? NotBlank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text;
}
