namespace RubLab.Page.Tests.Harness;

/// <summary>A folder of its own, gone afterwards.</summary>
public sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("rublab-page-").FullName;

    public string At(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
