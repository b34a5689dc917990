namespace RubLab.Page.Tests.Harness;

/// <summary>Where the sources are.</summary>
public static class Repository
{
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    private static string Find(string folder) => File.Exists(Path.Combine(folder, "RubLab.sln"))
        ? folder
        : Find(Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("No RubLab.sln above the tests."));
}
