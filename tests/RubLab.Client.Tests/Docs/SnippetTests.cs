using System.Text.RegularExpressions;
using RubLab.Snippets;

namespace RubLab.Client.Tests.Docs;

public sealed partial class SnippetTests(Kitchen kitchen) : IClassFixture<Kitchen>
{
    [Fact]
    public void Every_snippet_of_the_client_page_is_a_file_that_compiles()
    {
        var snippets = Code().Matches(Repository.Read("docs", "api", "client.md")).Select(m => m.Groups[1].Value).ToList();
        var files = Directory.GetFiles(Repository.PathOf("tests", "RubLab.Client.Tests", "Snippets"))
            .Select(path => File.ReadAllText(path).ReplaceLineEndings("\n")).ToList();
        Assert.Equal(files.Order(), snippets.Order());
    }

    [Fact]
    public async Task The_first_sheet_says_what_to_weigh()
    {
        using var http = new HttpClient { BaseAddress = kitchen.Http.BaseAddress };
        // 11.3 kg at 8 and 6 g/kg.
        Assert.Equal(["90 g salt, flake-dense", "68 g black-pepper, coarse"], await FirstSheet.ToWeighAsync(http, CancellationToken.None));
    }

    [Fact]
    public async Task The_lighter_dose_is_stored_or_its_faults_are_told()
    {
        var created = await kitchen.Client.Formulas.CreateAsync(Requests.Rub());
        var id = created.Value.Id;
        Assert.Equal("revision 2", await LighterDose.SetAsync(kitchen.Client, id, Requests.Rub(), 20));
        Assert.StartsWith("/dose/value out-of-range: ", await LighterDose.SetAsync(kitchen.Client, id, Requests.Rub(), -1), StringComparison.Ordinal);
    }

    [GeneratedRegex("```csharp\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Code();
}
