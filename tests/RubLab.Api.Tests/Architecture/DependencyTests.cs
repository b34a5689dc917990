using System.Xml.Linq;

namespace RubLab.Api.Tests.Architecture;

/// <summary>Projects point one way only.</summary>
public class DependencyTests
{
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["RubLab.Core"] = [],
        ["RubLab.Contracts"] = ["RubLab.Core"],
        ["RubLab.Storage"] = ["RubLab.Core"],
        ["RubLab.Client"] = ["RubLab.Contracts"],
        ["RubLab.Page"] = ["RubLab.Contracts", "RubLab.Core"],
        ["RubLab.Api"] = ["RubLab.Contracts", "RubLab.Page", "RubLab.Storage"],
    };

    [Fact]
    public void Every_project_is_known_here() =>
        Assert.Equal(Allowed.Keys.Order(), Projects().Select(p => Path.GetFileNameWithoutExtension(p)).Order());

    [Fact]
    public void No_project_references_another_than_it_may()
    {
        foreach (var project in Projects())
        {
            var name = Path.GetFileNameWithoutExtension(project);
            var references = XDocument.Load(project).Descendants("ProjectReference")
                .Select(r => Path.GetFileNameWithoutExtension((string)r.Attribute("Include")!));
            Assert.All(references, reference => Assert.Contains(reference, Allowed[name]));
        }
    }

    [Fact]
    public void Core_is_pure()
    {
        var assembly = typeof(Core.Catalogues.Catalogue).Assembly;
        string[] impure = ["System.Data", "System.Net", "System.Text.Json", "System.IO.FileSystem", "Microsoft.AspNetCore"];
        Assert.All(assembly.GetReferencedAssemblies(), reference =>
            Assert.DoesNotContain(impure, word => reference.Name!.StartsWith(word, StringComparison.Ordinal)));
        string[] forbidden = ["DateTime.Now", "DateTime.UtcNow", "TimeProvider", "File.", "Directory.", "JsonPropertyName", "HttpClient"];
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Root(), "src", "RubLab.Core"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)))
        {
            var text = File.ReadAllText(file);
            Assert.All(forbidden, word => Assert.False(text.Contains(word, StringComparison.Ordinal), $"{Path.GetFileName(file)} uses {word}"));
        }
    }

    [Fact]
    public void Contracts_and_storage_know_nothing_of_the_web()
    {
        foreach (var assembly in new[] { typeof(Contracts.Json.RubLabJson).Assembly, typeof(Storage.Database).Assembly })
        {
            Assert.All(assembly.GetReferencedAssemblies(), reference =>
                Assert.False(reference.Name!.StartsWith("Microsoft.AspNetCore", StringComparison.Ordinal), $"{assembly.GetName().Name} references {reference.Name}"));
        }
    }

    [Fact]
    public void The_root_holds_the_agreed_names_alone()
    {
        string[] agreed = ["DEVELOPERS.md", "Dockerfile", "README.md", "RubLab.sln", "docs", "seed-data", "src", "tests"];
        Assert.Equal(agreed, Directory.EnumerateFileSystemEntries(Root())
            .Select(e => Path.GetFileName(e)!)
            .Where(e => !e.StartsWith('.'))
            .Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> Projects() => Directory.EnumerateFiles(Path.Combine(Root(), "src"), "*.csproj", SearchOption.AllDirectories);

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "RubLab.sln")))
        {
            folder = folder.Parent!;
        }

        return folder.FullName;
    }
}
