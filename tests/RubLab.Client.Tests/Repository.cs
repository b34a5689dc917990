namespace RubLab.Client.Tests;

/// <summary>Files of the working copy the tests were built from.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    public static string PathOf(params string[] parts) => Path.Combine([Root, .. parts]);

    public static string Read(params string[] parts) => File.ReadAllText(PathOf(parts)).ReplaceLineEndings("\n");

    private static string Find()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(at.FullName, "RubLab.sln")))
        {
            at = at.Parent ?? throw new DirectoryNotFoundException("These tests read docs and src beside RubLab.sln.");
        }

        return at.FullName;
    }
}
