namespace RubLab.Core.Tests.Catalogues;

/// <summary>The reference data read as plain rows, beside the catalogue made of it; files the product does not read yet among them.</summary>
public static class SeedFilesOnDisk
{
    /// <summary>The text of every table in the folder.</summary>
    public static Dictionary<string, string> Texts { get; } = Directory
        .GetFiles(Repository.PathOf("seed-data"), "*.csv")
        .ToDictionary(f => Path.GetFileName(f), File.ReadAllText, StringComparer.Ordinal);

    public static Dictionary<string, List<Dictionary<string, string>>> Tables { get; } = Texts
        .ToDictionary(f => f.Key, f => PlainCsv.Read(f.Value), StringComparer.Ordinal);

    /// <summary>All cells of a column.</summary>
    public static IEnumerable<string> Column(string file, string column) => Tables[file].Select(row => row[column]);
}
