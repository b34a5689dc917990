namespace RubLab.Api.Tests.Hosting;

/// <summary>A directory of one fixture, named so that spaces and letters beyond ASCII are always in the path.</summary>
public sealed class TemporaryDirectory : IDisposable
{
    private readonly string _path = Directory.CreateTempSubdirectory("rublab épice ").FullName;

    public string At(params string[] names) => Path.Combine([_path, .. names]);

    public void Dispose() => Directory.Delete(_path, recursive: true);
}
