using RubLab.Core.Catalogues;

namespace RubLab.Core.Tests;

/// <summary>The reference data as shipped.</summary>
public static class Seed
{
    public static Catalogue Catalogue { get; } = Catalogue.Read(Files());

    public static Dictionary<string, string> Files() => SeedFiles.Names.ToDictionary(
        name => name, name => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "seed-data", name)));
}
