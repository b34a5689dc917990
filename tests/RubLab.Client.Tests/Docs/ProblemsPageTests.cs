using System.Text.RegularExpressions;
using RubLab.Api.Http;

namespace RubLab.Client.Tests.Docs;

public sealed partial class ProblemsPageTests
{
    private static readonly string Page = Repository.Read("docs", "api", "problems.md");

    [Fact]
    public void Every_kind_of_problem_is_listed_with_its_status_and_title() => Assert.All(
        ProblemTypes.All, t => Assert.Contains($"| `{t.Name}` | {t.Status} | {t.Title} |", Page, StringComparison.Ordinal));

    [Fact]
    public void Every_code_in_the_source_is_listed_and_no_other()
    {
        var codes = Directory.EnumerateFiles(Repository.PathOf("src"), "*.cs", SearchOption.AllDirectories)
            .Where(path => !path.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .SelectMany(path => Codes(File.ReadAllText(path))).ToHashSet();
        var table = Page[Page.IndexOf("## Codes", StringComparison.Ordinal)..];
        Assert.Equal(codes.Order(StringComparer.Ordinal), Listed().Matches(table).Select(m => m.Groups[1].Value).Order(StringComparer.Ordinal));
        Assert.Contains("required", codes);
        Assert.Contains("host-not-allowed", codes);
        Assert.Contains("not-json", codes);
    }

    private static IEnumerable<string> Codes(string source) =>
        NotedAtAPlace().Matches(source).Concat(WrittenAsAProblem().Matches(source)).Select(m => m.Groups[1].Value);

    [GeneratedRegex("""\.Fault\(\s*"([a-z-]+)"\s*,""")]
    private static partial Regex NotedAtAPlace();

    // Problems.Of(type, pointer, "code", ...) and Fault(pointer, "code", ...).
    [GeneratedRegex("""(?:Problems\.Of\(\s*ProblemTypes\.\w+,|\bFault\()\s*(?:""|[\w.]+(?:\([^()]*\))?)\s*,\s*"([a-z-]+)"\s*,""")]
    private static partial Regex WrittenAsAProblem();

    [GeneratedRegex(@"^\| `([a-z-]+)` \|", RegexOptions.Multiline)]
    private static partial Regex Listed();
}
