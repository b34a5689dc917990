using RubLab.Core.Catalogues;

namespace RubLab.Api.Hosting;

/// <summary>The reference data beside the program.</summary>
public static class SeedFolder
{
    private static readonly string Root = Path.Combine(AppContext.BaseDirectory, "seed-data");

    public static Catalogue ReadCatalogue() =>
        Catalogue.Read(SeedFiles.Names.ToDictionary(name => name, name => File.ReadAllText(Path.Combine(Root, name))));

    /// <summary>The example formulas: id and document.</summary>
    public static IEnumerable<(string Id, string Document)> ReadFormulas() =>
        Directory.EnumerateFiles(Path.Combine(Root, "formulas"), "*.json")
            .Order(StringComparer.Ordinal)
            .Select(path => (Path.GetFileNameWithoutExtension(path), File.ReadAllText(path)));
}
