using System.Text.RegularExpressions;

namespace RubLab.Core.Tests.Catalogues;

public sealed partial class FindingCodesTests
{
    // Worded ahead of the computations that will note them; one that is noted leaves this list.
    [Fact]
    public void Every_finding_the_code_notes_is_worded_and_every_wording_is_used()
    {
        string[] projects = ["RubLab.Core", "RubLab.Contracts"];
        var noted = projects
            .SelectMany(project => Directory.GetFiles(Repository.PathOf("src", project), "*.cs", SearchOption.AllDirectories))
            .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .SelectMany(file => NotedFinding().Matches(File.ReadAllText(file)).Select(m => m.Groups[1].Value))
            .ToHashSet(StringComparer.Ordinal);

        Assert.Equal(
            SeedFilesOnDisk.Column("findings.csv", "code").Order(StringComparer.Ordinal),
            noted.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_finding_is_on_its_page_with_cause_and_cure()
    {
        var page = File.ReadAllText(Repository.PathOf("docs", "findings.md"));
        Assert.All(SeedFilesOnDisk.Tables["findings.csv"], finding => Assert.Contains(
            $"## {finding["code"]}\n\n*{finding["severity"]}*. {finding["message"]}\n\n- Cause: {finding["cause"]}\n- Cure: {finding["cure"]}\n",
            page, StringComparison.Ordinal));
    }

    [GeneratedRegex("findings[.]Add[(]\\s*\"([a-z-]+)\"")]
    private static partial Regex NotedFinding();

    [Fact]
    public void A_message_names_only_parameters_its_code_gives() => Assert.All(
        SeedFilesOnDisk.Tables["findings.csv"],
        finding => Assert.All(
            Placeholder().Matches(finding["message"] + finding["title"]).Select(m => m.Groups[1].Value),
            name => Assert.Contains(
                Directory.GetFiles(Repository.PathOf("src"), "*.cs", SearchOption.AllDirectories)
                    .Select(File.ReadAllText).Where(text => text.Contains($"\"{finding["code"]}\"", StringComparison.Ordinal)),
                text => text.Contains($"(\"{name}\", ", StringComparison.Ordinal))));

    [GeneratedRegex("[{]([A-Za-z]+)[}]")]
    private static partial Regex Placeholder();
}
