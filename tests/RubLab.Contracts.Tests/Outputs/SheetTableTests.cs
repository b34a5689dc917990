using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using RubLab.Contracts.Json;
using RubLab.Contracts.Outputs;
using RubLab.Contracts.Scaling;
using RubLab.Core.Faults;

namespace RubLab.Contracts.Tests.Outputs;

public class SheetTableTests
{
    public static TheoryData<string> Sheet => ["first", "full", "ounces"];

    [Theory]
    [MemberData(nameof(Sheet))]
    public void The_table_of_pieces_is_the_JSON_row_by_row_and_sums_to_what_goes_on(string which)
    {
        var (sheet, json, unit) = Of(which);
        var rows = CsvText.ReadNamed(Sheets.Csv(sheet, SheetTable.Pieces));

        var treatments = json["treatments"]!.AsArray();
        var pieces = treatments.SelectMany((t, i) => t!["pieces"]!.AsArray().Select(p => (
            $"{p!["number"]}", (string)p["line"]!, (string?)p["label"] ?? "", Number(p["greenWeight"]!["value"]!), $"{i + 1}", (string)t["name"]!, Number(p["amount"]!["value"]!))));
        Assert.Equal(pieces, rows.Select(r => (
            r["number"], r["line"], r["label"], Number(r[$"green_weight_{unit}"]), r["treatment_number"], r["treatment"], Number(r[$"amount_{unit}"]))));
        Assert.Equal(
            treatments.Select(t => Number(t!["onMeat"]!["value"]!)),
            rows.GroupBy(r => r["treatment_number"]).Select(g => g.Sum(r => Number(r[$"amount_{unit}"]))));
    }

    [Theory]
    [MemberData(nameof(Sheet))]
    public void The_table_of_lines_is_the_JSON_row_by_row_and_sums_to_what_is_mixed(string which)
    {
        var (sheet, json, unit) = Of(which);
        var rows = CsvText.ReadNamed(Sheets.Csv(sheet, SheetTable.Lines));

        var treatments = json["treatments"]!.AsArray();
        var lines = treatments.SelectMany((t, i) => t!["lines"]!.AsArray().Select(l => (
            $"{i + 1}", (string)t["name"]!, (string)l!["ingredient"]!, (string)l["form"]!, Number(l["ratio"]!["value"]!))));
        Assert.Equal(lines, rows.Select(r => (r["treatment_number"], r["treatment"], r["ingredient"], r["form"], Number(r["ratio_g_per_kg"]))));
        var amounts = treatments.SelectMany(t => t!["lines"]!.AsArray().Select(l => (
            Number(l!["toMix"]!["value"]!), Number(l["runningTotal"]!["value"]!), (string?)l["spoon"]?["text"] ?? "")));
        Assert.Equal(amounts, rows.Select(r => (Number(r[$"to_mix_{unit}"]), Number(r[$"running_total_{unit}"]), r["spoon"])));
        Assert.Equal(
            treatments.Select(t => Number(t!["toMix"]!["value"]!)),
            rows.GroupBy(r => r["treatment_number"]).Select(g => g.Sum(r => Number(r[$"to_mix_{unit}"]))));
    }

    [Fact]
    public void The_first_record_names_the_columns_with_their_units()
    {
        Assert.StartsWith(
            "number,line,label,green_weight_g,treatment_number,treatment,amount_g\r\n", Sheets.Csv(Sheets.First(), SheetTable.Pieces), StringComparison.Ordinal);
        Assert.StartsWith(
            "treatment_number,treatment,ingredient,form,ratio_g_per_kg,to_mix_lb,running_total_lb,spoon\r\n",
            Sheets.Csv(Sheets.First("/weighingStep/unit = \"lb\" & /weighingStep/value = 0.01"), SheetTable.Lines), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("=2+3")]
    [InlineData("+2")]
    [InlineData("-2")]
    [InlineData("@SUM(A1)")]
    [InlineData("\t=2+3")]
    [InlineData("\r=2+3")]
    [InlineData("=\"a\",b")]
    public void A_cell_that_a_spreadsheet_would_run_starts_with_an_apostrophe(string text)
    {
        var row = Assert.Single(CsvText.ReadNamed(Sheets.Csv(Sheets.Named(text, text), SheetTable.Pieces)));
        Assert.Equal(("'" + text, "'" + text), (row["label"], row["treatment"]));
        Assert.Equal("'" + text, CsvText.ReadNamed(Sheets.Csv(Sheets.Named(text, ""), SheetTable.Lines))[0]["treatment"]);
    }

    [Theory]
    [InlineData("the \"big\" one, left")]
    [InlineData("two\r\nlines")]
    [InlineData("two\nlines")]
    [InlineData("\"")]
    [InlineData("'quoted'")]
    [InlineData(" spaces ")]
    [InlineData("🐖 schouder, épaule, плечо")]
    [InlineData("1-2 = 3")]
    public void Any_other_text_comes_back_as_it_was(string text)
    {
        var row = Assert.Single(CsvText.ReadNamed(Sheets.Csv(Sheets.Named(text, text), SheetTable.Pieces)));
        Assert.Equal((text, text, "291"), (row["label"], row["treatment"], row["amount_g"]));
    }

    [Theory]
    [InlineData("kg", 0.00001)]
    [InlineData("lb", 0.00001)]
    [InlineData("mg", 1)]
    public void Numbers_have_no_exponent_and_nothing_around_them(string unit, double step)
    {
        var sheet = Sheets.First($"/weighingStep/unit = \"{unit}\" & /weighingStep/value = {step.ToString("R", CultureInfo.InvariantCulture)}");
        var rows = CsvText.ReadNamed(Sheets.Csv(sheet, SheetTable.Pieces));
        Assert.Equal(4, rows.Count);
        Assert.All(rows, r => Assert.Matches("^[0-9]+(\\.[0-9]+)?$", r[$"amount_{unit}"]));
        Assert.Equal((decimal)sheet.Treatments[0].OnMeat.Value, rows.Sum(r => Number(r[$"amount_{unit}"])));
    }

    [Theory]
    [InlineData("pieces", "", "")]
    [InlineData("lines", "/pieces = \"none\"", "")]
    [InlineData("pieces", "/pieces = \"none\"", "/table no-table")]
    [InlineData("pieces", "/purpose = \"check\"", "/table no-table")]
    [InlineData("lines", "/purpose = \"check\"", "/table no-table")]
    [InlineData("Pieces", "", "/table unknown-word")]
    [InlineData("", "/purpose = \"check\"", "/table unknown-word")]
    [InlineData(null, "/purpose = \"check\"", "")]
    public void A_table_the_sheet_would_not_hold_is_refused(string? word, string edits, string fault)
    {
        var log = new FaultLog();
        var request = JsonSerializer.Deserialize(Document.FirstSheet().Edit(edits).Json, RubLabJson.Default.BatchSheetRequest)!;
        var table = SheetTables.Read(word, request, log.Root.At("table"));
        Assert.Equal(fault, string.Join(' ', Document.Faults(log)));
        Assert.Equal(word is "pieces" or "lines", table is not null);
    }

    private static (BatchSheetResponse Sheet, JsonNode Json, string Unit) Of(string which)
    {
        var sheet = which switch
        {
            "full" => Sheets.Full(),
            "ounces" => Sheets.Full("/weighingStep = {\"value\":0.05,\"unit\":\"oz\"}"),
            _ => Sheets.First(),
        };
        return (sheet, JsonNode.Parse(JsonSerializer.Serialize(sheet, RubLabJson.Default.BatchSheetResponse))!, which == "ounces" ? "oz" : "g");
    }

    private static decimal Number(JsonNode node) => Number(node.ToJsonString());

    private static decimal Number(string text) => decimal.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
