namespace RubLab.Core.Tests;

/// <summary>The working copy the tests were built from, for checks that read source and documentation.</summary>
public static class Repository
{
    public static string Root { get; } = FindRoot();

    public static string PathOf(params string[] parts) => Path.Combine([Root, .. parts]);

    private static string FindRoot()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "RubLab.sln")))
            {
                return at.FullName;
            }
        }

        throw new InvalidOperationException("No RubLab.sln above the tests.");
    }
}
