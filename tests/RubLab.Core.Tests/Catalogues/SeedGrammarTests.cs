using System.Text.RegularExpressions;
using RubLab.Core.Catalogues;

namespace RubLab.Core.Tests.Catalogues;

/// <summary>Every file and column of the reference data against the grammar it ships with.</summary>
public sealed class SeedGrammarTests
{
    private const string Word = "[a-z0-9]+(-[a-z0-9]+)*";

    private static readonly Dictionary<string, Regex> Types = new Dictionary<string, string>
    {
        // A salt range is numbered as its table numbers it.
        ["id"] = $"{Word}|S[0-9]{{2}}",
        ["words"] = $"{Word}(;{Word})*",
        ["number"] = "[0-9]+([.][0-9]+)?",
        ["flag"] = "true|false",
        ["confidence"] = "high|good|fair|low|very-low",
        ["text"] = "[^\\s](.*[^\\s])?",
    }.ToDictionary(g => g.Key, g => new Regex($"^({g.Value})$"));

    private static readonly Dictionary<string, string> UnitsInNames = new()
    {
        ["mg/100g"] = "_mg_per_100g",
        ["g/100g"] = "_g_per_100g",
        ["kcal/100g"] = "_kcal_per_100g",
        ["g/mL"] = "_g_per_ml",
        ["kg/m3"] = "_kg_per_m3",
        ["um"] = "_um",
        ["mm"] = "_mm",
        ["g"] = "_g",
        ["mg"] = "_mg",
        ["mL"] = "_ml",
        ["um2/s"] = "_um2_per_s",
        ["mPa s"] = "_mpa_s",
        ["%"] = "_percent",
        ["ppm"] = "_ppm",
        ["C"] = "_c",
        ["kg/m3/C"] = "_kg_per_m3_per_c",
    };

    // Counts, numbers in a list, quotients and the one figure whose unit its row's identifier names.
    private static readonly string[] WithoutUnit =
    [
        "value", "amount", "sequence", "measure_sequence", "us_mesh", "length_to_thickness", "width_to_thickness", "household_amount",
        "hausner_printed_low", "hausner_printed_high", "hausner_decided_low", "hausner_decided_high", "minor_digits",
    ];

    // Shipped for what is to come; nothing is computed from them yet.
    private static readonly string[] NotReadYet = ["columns.csv"];

    private static readonly List<Dictionary<string, string>> Columns = SeedFilesOnDisk.Tables["columns.csv"];

    public static TheoryData<string> Tables => new(SeedFilesOnDisk.Tables.Keys.Order(StringComparer.Ordinal));

    [Fact]
    public void The_grammar_speaks_of_every_file_and_of_no_other() => Assert.Equal(
        SeedFilesOnDisk.Tables.Keys.Order(StringComparer.Ordinal),
        Columns.Select(c => c["file"]).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Tables))]
    public void A_table_has_its_columns_in_their_order(string file) =>
        Assert.Equal(ColumnsOf(file).Select(c => c["column"]), PlainCsv.Header(SeedFilesOnDisk.Texts[file]));

    [Theory]
    [MemberData(nameof(Tables))]
    public void Every_cell_is_written_as_its_column_asks(string file) => Assert.All(ColumnsOf(file), column =>
    {
        foreach (var cell in SeedFilesOnDisk.Column(file, column["column"]))
        {
            Assert.True(
                cell.Length == 0 ? column["required"] == "false" : Types[column["type"]].IsMatch(cell),
                $"{file} {column["column"]}: '{cell}' is no {column["type"]}, required {column["required"]}.");
        }
    });

    [Theory]
    [MemberData(nameof(Tables))]
    public void A_cell_that_names_something_names_something_listed(string file) => Assert.All(
        ColumnsOf(file).Where(c => c["references"].Length > 0),
        column =>
        {
            // Written file.csv.column, and alternatives after bars.
            var alternatives = column["references"].Split('|');
            var end = alternatives[0].LastIndexOf('.');
            var listed = SeedFilesOnDisk.Column(alternatives[0][..end], alternatives[0][(end + 1)..]).ToHashSet(StringComparer.Ordinal);
            listed.UnionWith(alternatives.Skip(1));
            var words = SeedFilesOnDisk.Column(file, column["column"]).SelectMany(cell => cell.Split(';', StringSplitOptions.RemoveEmptyEntries));

            Assert.Empty(words.Except(listed));
        });

    [Theory]
    [MemberData(nameof(Tables))]
    public void A_number_says_its_unit_in_its_name(string file) => Assert.All(ColumnsOf(file), column =>
    {
        if (column["unit"].Length > 0)
        {
            Assert.Equal("number", column["type"]);
            Assert.EndsWith(UnitsInNames[column["unit"]], column["column"], StringComparison.Ordinal);
        }
        else if (column["type"] == "number")
        {
            Assert.Contains(column["column"], WithoutUnit);
        }
    });

    [Theory]
    [MemberData(nameof(Tables))]
    public void A_table_has_rows_and_ends_in_a_line_feed(string file)
    {
        Assert.NotEmpty(SeedFilesOnDisk.Tables[file]);
        Assert.EndsWith("\n", SeedFilesOnDisk.Texts[file], StringComparison.Ordinal);
        Assert.DoesNotContain('\r', SeedFilesOnDisk.Texts[file]);
    }

    [Theory]
    [InlineData("findings.csv", "severity", "info|advice|warning|danger")]
    [InlineData("sources.csv", "provenance", "read|read-abstract|secondary|computed|memory|common-practice|estimate")]
    [InlineData("salt-ranges.csv", "authority", "published|common-practice|trial")]
    [InlineData("cut-shapes.csv", "shape", "brick|cylinder|ellipsoid|slab")]
    [InlineData("sodium-claims.csv", "comparison", "less-than|at-most|more-than|at-least")]
    [InlineData("diffusivities.csv", "salting", "brine|dry-bed|dry-brine|brine;dry-bed")]
    [InlineData("ingredients.csv", "salt_method", "natural-sodium|sodium-as-sodium-chloride|not-salt|part-of-sodium|upper-bound")]
    public void A_closed_vocabulary_stays_closed(string file, string column, string words) =>
        Assert.Empty(SeedFilesOnDisk.Column(file, column).Except(words.Split('|')));

    [Fact]
    public void Every_file_in_the_folder_is_one_the_product_reads_but_for_those_of_later_work() => Assert.Equal(
        SeedFiles.Names.Concat(NotReadYet).Order(StringComparer.Ordinal),
        SeedFilesOnDisk.Texts.Keys.Append("VERSION").Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("columns.csv", "file", "column")]
    [InlineData("sources.csv", "source_id")]
    [InlineData("constants.csv", "constant_id")]
    [InlineData("ingredients.csv", "ingredient_id")]
    [InlineData("forms.csv", "ingredient_id", "form_id")]
    [InlineData("measures.csv", "ingredient_id", "sequence")]
    [InlineData("measures.csv", "ingredient_id", "form_id", "amount", "unit")]
    [InlineData("piece-measures.csv", "ingredient_id", "sequence")]
    [InlineData("sieves.csv", "us_mesh")]
    [InlineData("cuts.csv", "cut_id")]
    [InlineData("cut-composition.csv", "cut_id")]
    [InlineData("cut-shapes.csv", "cut_id")]
    [InlineData("bone.csv", "cut_id")]
    [InlineData("added-solution.csv", "cut_id")]
    [InlineData("trim-losses.csv", "cut_id")]
    [InlineData("cooking-yields.csv", "cut_id", "method")]
    [InlineData("cooking-retention.csv", "cut_id")]
    [InlineData("portion-weights.csv", "appetite")]
    [InlineData("piece-weights.csv", "cut_id")]
    [InlineData("currencies.csv", "code")]
    [InlineData("salt-ranges.csv", "range_id")]
    [InlineData("sodium-references.csv", "reference_id")]
    [InlineData("sodium-claims.csv", "claim_id")]
    [InlineData("reference-amounts.csv", "kind_id")]
    [InlineData("powder-flow.csv", "class_id")]
    [InlineData("diffusivities.csv", "diffusivity_id")]
    [InlineData("water-viscosity.csv", "temperature_c")]
    [InlineData("findings.csv", "code")]
    [InlineData("cautions.csv", "caution_id")]
    public void Ids_are_unique(string file, params string[] key)
    {
        var keys = SeedFilesOnDisk.Tables[file].Select(row => string.Join(' ', key.Select(k => row[k]))).ToList();

        Assert.Equal(keys.Order(StringComparer.Ordinal), keys.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }

    private static IEnumerable<Dictionary<string, string>> ColumnsOf(string file) => Columns.Where(c => c["file"] == file);
}
