using RubLab.Core.Catalogues;

namespace RubLab.Core.Tests.Catalogues;

/// <summary>Reads reference data a test has changed.</summary>
public static class Reading
{
    public static Catalogue Of(Dictionary<string, string> files) => Catalogue.Read(files);

    /// <summary>The shipped files with one text put in the place of another, which must stand there exactly once.</summary>
    public static Dictionary<string, string> With(string file, string was, string becomes)
    {
        var files = Seed.Files();
        Assert.Equal(2, files[file].Split(was).Length);
        files[file] = files[file].Replace(was, becomes, StringComparison.Ordinal);
        return files;
    }
}
