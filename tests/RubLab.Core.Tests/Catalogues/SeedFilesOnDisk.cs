namespace RubLab.Core.Tests.Catalogues;

/// <summary>The reference data read as plain rows, beside the catalogue made of it.</summary>
public static class SeedFilesOnDisk
{
    public static Dictionary<string, List<Dictionary<string, string>>> Tables { get; } = Seed.Files()
        .Where(f => f.Key.EndsWith(".csv", StringComparison.Ordinal))
        .ToDictionary(f => f.Key, f => PlainCsv.Read(f.Value), StringComparer.Ordinal);

    /// <summary>All cells of a column.</summary>
    public static IEnumerable<string> Column(string file, string column) => Tables[file].Select(row => row[column]);
}
