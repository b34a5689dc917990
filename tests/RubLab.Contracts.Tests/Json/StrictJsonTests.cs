using System.Text.Json;
using RubLab.Contracts.Json;

namespace RubLab.Contracts.Tests.Json;

public class StrictJsonTests
{
    [Theory]
    [InlineData("an unknown member", """{"pile":[{"cut":"pork-shoulder","colour":"red"}]}""", "$.pile[0].colour")]
    [InlineData("a member in another case", """{"Pile":[]}""", "$.Pile")]
    [InlineData("a duplicate member", """{"pile":[{"cut":"pork-shoulder","cut":"lamb-leg"}]}""", "$.pile[0].cut")]
    [InlineData("a duplicate member in a list item", """{"pile":[],"treatments":[{"dose":{"value":1,"value":2}}]}""", "$.treatments[0].dose.value")]
    [InlineData("text for a number", """{"pile":[{"count":1,"weightEach":{"value":"310","unit":"g"}}]}""", "$.pile[0].weightEach.value")]
    [InlineData("a number for text", """{"pile":[{"cut":7}]}""", "$.pile[0].cut")]
    [InlineData("a list for an object", """{"weighingStep":[1,"g"]}""", "$.weighingStep")]
    [InlineData("an object for a list", """{"pile":{"0":{}}}""", "$.pile")]
    [InlineData("a fraction for a count", """{"pile":[{"count":1.5}]}""", "$.pile[0].count")]
    [InlineData("a count beyond an integer", """{"pile":[{"count":3000000000}]}""", "$.pile[0].count")]
    [InlineData("text for a flag", """{"pile":[{"juicesReturned":"true"}]}""", "$.pile[0].juicesReturned")]
    [InlineData("an integer for a word", """{"purpose":1}""", "$.purpose")]
    [InlineData("an integer for a kind", """{"treatments":[{"formula":{"kind":1}}]}""", "$.treatments[0].formula.kind")]
    [InlineData("NaN", """{"overage":{"value":NaN,"unit":"%"}}""", "$.overage.value")]
    [InlineData("NaN as text", """{"overage":{"value":"NaN","unit":"%"}}""", "$.overage.value")]
    [InlineData("Infinity", """{"overage":{"value":Infinity,"unit":"%"}}""", "$.overage.value")]
    [InlineData("Infinity as text", """{"overage":{"value":"Infinity","unit":"%"}}""", "$.overage.value")]
    [InlineData("a hexadecimal number", """{"overage":{"value":0x10,"unit":"%"}}""", "$.overage.value")]
    [InlineData("a leading zero", """{"overage":{"value":05,"unit":"%"}}""", "$.overage.value")]
    [InlineData("a decimal comma", """{"overage":{"value":1,5,"unit":"%"}}""", "$.overage")]
    [InlineData("half a surrogate pair", """{"pile":[{"id":"\ud83d"}]}""", "$.pile[0].id")]
    public void What_cannot_be_read_is_refused_where_it_stands(string what, string json, string path)
    {
        var refusal = Assert.Throws<JsonException>(() => JsonSerializer.Deserialize(json, RubLabJson.Default.BatchSheetRequest));
        Assert.True(path == refusal.Path, $"{what}: expected {path}, told {refusal.Path}: {refusal.Message}");
    }

    [Theory]
    [InlineData("a comma after the last item", """{"pile":[{},]}""")]
    [InlineData("a comma after the last member", """{"pieces":"all",}""")]
    [InlineData("a comment", """{"pieces":/* all of them */"all"}""")]
    [InlineData("single quotes", "{'pieces':'all'}")]
    [InlineData("text after the end", """{"pieces":"all"} {}""")]
    [InlineData("no end", """{"pile":[{"cut":"pork-shoulder" """)]
    [InlineData("nothing", "")]
    [InlineData("a list", "[]")]
    [InlineData("a text", "\"pile\"")]
    public void What_is_not_strict_JSON_is_refused_with_a_path(string what, string json)
    {
        var refusal = Assert.Throws<JsonException>(() => JsonSerializer.Deserialize(json, RubLabJson.Default.BatchSheetRequest));
        Assert.True(refusal.Path is ['$', ..], $"{what}: {refusal.Path}");
    }

    [Fact]
    public void A_document_nested_too_deep_is_refused()
    {
        var deep = new string('[', 40) + new string(']', 40);
        var refusal = Assert.Throws<JsonException>(
            () => JsonSerializer.Deserialize($$"""{"pile":[{"cut":{{deep}}}]}""", RubLabJson.Default.BatchSheetRequest));
        Assert.StartsWith("$.pile[0].cut", refusal.Path, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_nested_too_deep_behind_an_unknown_member_is_refused()
    {
        var deep = new string('[', 100_000);
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize($$"""{"x":{{deep}}""", RubLabJson.Default.BatchSheetRequest));
    }

    [Theory]
    [InlineData("/overage/value", "/overage/value not-finite")]
    [InlineData("/portion/value", "/portion/value not-finite")]
    [InlineData("/weighingStep/value", "/weighingStep/value not-finite")]
    [InlineData("/pile/0/weightEach/value", "/pile/0/weightEach/value not-finite")]
    [InlineData("/pile/0/trimLoss/value", "/pile/0/trimLoss/value not-finite")]
    [InlineData("/pile/1/pieces/1/weight/value", "/pile/1/pieces/1/weight/value not-finite")]
    [InlineData("/treatments/0/retained/high", "/treatments/0/retained/high not-finite")]
    [InlineData("/treatments/0/formula/dose/value", "/treatments/0/formula/dose/value not-finite")]
    [InlineData("/treatments/0/formula/lines/1/amount/value", "/treatments/0/formula/lines/1/amount/value not-finite")]
    public void A_number_too_large_to_be_read_is_a_fault_at_its_place(string pointer, string expected)
    {
        // The place is marked and then replaced in the text: a JSON tree would refuse to hold 1e999.
        var json = Document.FirstSheet().Set(pointer, "here").Json.Replace("\"here\"", "1e999", StringComparison.Ordinal);
        Assert.Equal([expected], Document.Of(json).SheetFaults());
        Assert.Equal([expected], Document.Of(json.Replace("1e999", "-1e999", StringComparison.Ordinal)).SheetFaults());
    }

    [Theory]
    [InlineData("/treatments/0/formula/dose", "/treatments/0/formula/dose")]
    [InlineData("/treatments/0/formula/lines/1/amount", "/treatments/0/formula/lines/1/amount")]
    [InlineData("/weighingStep", "/weighingStep")]
    public void A_number_too_large_and_a_unit_unknown_are_both_told(string pointer, string at)
    {
        var json = Document.FirstSheet()
            .Edit($$"""{{pointer}} = {"value":"here","unit":"stone"}""").Json.Replace("\"here\"", "1e999", StringComparison.Ordinal);
        Assert.Equal([$"{at}/unit unknown-unit", $"{at}/value not-finite"], Document.Of(json).SheetFaults());
    }
}
