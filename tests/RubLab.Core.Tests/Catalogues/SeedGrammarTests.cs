using System.Text.RegularExpressions;
using RubLab.Core.Catalogues;

namespace RubLab.Core.Tests.Catalogues;

public sealed class SeedGrammarTests
{
    private const string Kebab = "[a-z0-9]+(-[a-z0-9]+)*";

    private static readonly Dictionary<string, Regex> Grammars = new Dictionary<string, string>
    {
        ["id"] = Kebab,
        ["id?"] = $"({Kebab})?",
        ["ids?"] = $"({Kebab}(;{Kebab})*)?",
        ["range"] = "S[0-9]{2}",
        ["number"] = "[0-9]+([.][0-9]+)?",
        ["number?"] = "([0-9]+([.][0-9]+)?)?",
        ["whole"] = "[0-9]+",
        ["whole?"] = "[0-9]*",
        ["flag"] = "true|false",
        ["severity"] = "info|advice|warning|danger",
        ["confidence"] = "high|good|fair|low|very-low",
        ["confidence?"] = "(high|good|fair|low|very-low)?",
        ["provenance"] = "read|read-abstract|secondary|computed|memory|common-practice|estimate",
        ["text"] = "[^\\s](.*[^\\s])?",
        ["text?"] = "([^\\s](.*[^\\s])?)?",
    }.ToDictionary(g => g.Key, g => new Regex($"^({g.Value})$"));

    private static readonly List<Dictionary<string, string>> Columns =
        PlainCsv.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Catalogues", "seed-columns.csv")));

    public static TheoryData<string> Tables => new(SeedFilesOnDisk.Tables.Keys);

    [Theory]
    [MemberData(nameof(Tables))]
    public void A_table_has_its_columns_in_their_order(string file) =>
        Assert.Equal(Columns.Where(c => c["file"] == file).Select(c => c["column"]), PlainCsv.Header(Seed.Files()[file]));

    [Theory]
    [MemberData(nameof(Tables))]
    public void Every_cell_is_written_as_its_column_asks(string file) => Assert.All(
        Columns.Where(c => c["file"] == file),
        column => Assert.All(
            SeedFilesOnDisk.Column(file, column["column"]),
            cell => Assert.True(Grammars[column["grammar"]].IsMatch(cell), $"{column["column"]} '{cell}' is no {column["grammar"]}.")));

    [Theory]
    [MemberData(nameof(Tables))]
    public void A_table_has_rows_and_ends_in_a_line_feed(string file)
    {
        Assert.NotEmpty(SeedFilesOnDisk.Tables[file]);
        Assert.EndsWith("\n", Seed.Files()[file], StringComparison.Ordinal);
        Assert.DoesNotContain('\r', Seed.Files()[file]);
    }

    [Fact]
    public void Every_file_in_the_folder_is_one_the_product_reads() => Assert.Equal(
        SeedFiles.Names.Order(StringComparer.Ordinal),
        Directory.GetFiles(Repository.PathOf("seed-data")).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("sources.csv", "source_id")]
    [InlineData("constants.csv", "constant_id")]
    [InlineData("ingredients.csv", "ingredient_id")]
    [InlineData("forms.csv", "ingredient_id", "form_id")]
    [InlineData("measures.csv", "ingredient_id", "sequence")]
    [InlineData("measures.csv", "ingredient_id", "form_id", "amount", "unit")]
    [InlineData("sieves.csv", "us_mesh")]
    [InlineData("cuts.csv", "cut_id")]
    [InlineData("cut-composition.csv", "cut_id")]
    [InlineData("trim-losses.csv", "cut_id")]
    [InlineData("cooking-yields.csv", "cut_id", "method")]
    [InlineData("cooking-retention.csv", "cut_id")]
    [InlineData("salt-ranges.csv", "range_id")]
    [InlineData("sodium-references.csv", "reference_id")]
    [InlineData("findings.csv", "code")]
    [InlineData("cautions.csv", "caution_id")]
    public void Ids_are_unique(string file, params string[] key)
    {
        var keys = SeedFilesOnDisk.Tables[file].Select(row => string.Join(' ', key.Select(k => row[k]))).ToList();

        Assert.Equal(keys.Order(StringComparer.Ordinal), keys.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }
}
