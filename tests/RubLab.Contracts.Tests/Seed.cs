using RubLab.Core.Catalogues;

namespace RubLab.Contracts.Tests;

/// <summary>The reference data as shipped.</summary>
public static class Seed
{
    public static Catalogue Catalogue { get; } = Catalogue.Read(SeedFiles.Names.ToDictionary(
        name => name, name => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "seed-data", name))));
}
