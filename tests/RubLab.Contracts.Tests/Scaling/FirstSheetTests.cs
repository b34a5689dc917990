using System.Text.Json.Nodes;

namespace RubLab.Contracts.Tests.Scaling;

/// <summary>The worked body of the API's fixed part, held to its printed answer.</summary>
public class FirstSheetTests
{
    private static readonly JsonNode Answer = Document.FirstSheet().SheetAnswer();

    [Theory]
    [InlineData("/status", "\"weighed\"")]
    [InlineData("/greenWeight", """{"value":13856,"unit":"g"}""")]
    [InlineData("/treatments/0/name", "\"Lockside pork rub\"")]
    [InlineData("/treatments/0/kind", "\"rub\"")]
    [InlineData("/treatments/0/dose", """{"value":22,"unit":"g/kg"}""")]
    [InlineData("/treatments/0/onMeat", """{"value":291,"unit":"g"}""")]
    [InlineData("/treatments/0/toMix", """{"value":306,"unit":"g"}""")]
    [InlineData("/treatments/0/lines/0/ingredient", "\"salt\"")]
    [InlineData("/treatments/0/lines/0/form", "\"table\"")]
    [InlineData("/treatments/0/lines/0/ratio", """{"value":8.8,"unit":"g/kg"}""")]
    [InlineData("/treatments/0/lines/0/toMix", """{"value":122,"unit":"g"}""")]
    [InlineData("/treatments/0/lines/0/runningTotal", """{"value":122,"unit":"g"}""")]
    [InlineData("/treatments/0/lines/1/ratio", """{"value":13.2,"unit":"g/kg"}""")]
    [InlineData("/treatments/0/lines/1/toMix", """{"value":184,"unit":"g"}""")]
    [InlineData("/treatments/0/lines/1/runningTotal", """{"value":306,"unit":"g"}""")]
    [InlineData("/treatments/0/pieces/0/number", "1")]
    [InlineData("/treatments/0/pieces/0/line", "\"shoulders\"")]
    [InlineData("/treatments/0/pieces/0/greenWeight", """{"value":3312,"unit":"g"}""")]
    [InlineData("/salt/0/line", "\"shoulders\"")]
    [InlineData("/salt/0/ledger/saltPerKgGreen", """{"low":7.8,"typical":8.24,"high":8.67,"unit":"g/kg"}""")]
    [InlineData("/salt/0/ledger/saltWeighedPerKgGreen", """{"value":8.8,"unit":"g/kg"}""")]
    [InlineData("/salt/0/ledger/entries/0/treatment", "0")]
    [InlineData("/salt/0/ledger/entries/0/ingredient", "\"salt\"")]
    [InlineData("/salt/0/ledger/entries/0/form", "\"table\"")]
    [InlineData("/salt/0/ledger/entries/0/salt", """{"low":7.8,"typical":8.24,"high":8.67,"unit":"g/kg"}""")]
    [InlineData("/salt/1/line", "\"legs\"")]
    [InlineData("/salt/1/ledger/saltPerKgGreen", """{"low":0,"typical":0,"high":0,"unit":"g/kg"}""")]
    [InlineData("/salt/1/ledger/saltWeighedPerKgGreen", """{"value":0,"unit":"g/kg"}""")]
    [InlineData("/salt/1/ledger/entries", "[]")]
    [InlineData("/dataVersion", "\"2026.3\"")]
    public void The_worked_body_gives_the_printed_answer(string pointer, string expected) =>
        Assert.Equal(expected, Pointed.At(Answer, pointer)!.ToJsonString());

    [Fact]
    public void The_four_shoulders_get_three_times_73_g_and_once_72_g()
    {
        var pieces = Answer["treatments"]![0]!["pieces"]!.AsArray();
        Assert.Equal([72, 73, 73, 73], pieces.Select(p => (double)p!["amount"]!["value"]!).Order());
        Assert.Equal([1, 2, 3, 4], pieces.Select(p => (int)p!["number"]!));
        Assert.All(pieces, p => Assert.Equal("g", (string)p!["amount"]!["unit"]!));
    }

    [Fact]
    public void Salt_weighed_and_salt_as_sodium_chloride_differ_by_what_table_salt_is_not()
    {
        // 22 g/kg x 2/5 x 38,758 / 39,337 x 0.95, from USDA's sodium and the atomic weights.
        var typical = (double)Answer["salt"]![0]!["ledger"]!["saltPerKgGreen"]!["typical"]!;
        Assert.Equal(22 * 2.0 / 5 * 38_758 / 39_337 * 0.95, typical, 0.005);
    }

    [Fact]
    public void Salt_per_kg_cooked_divides_by_the_yield_and_never_multiplies_bands_the_wrong_way()
    {
        // Kept 66.1 / 66.1 / 77.2 %, yield of the meat 65.0 / 69.5 / 73.8 %, of the piece with 15 % bone 70.25 / 74.075 / 77.73:
        // lowest over highest, highest over lowest.
        var cooked = Answer["salt"]![0]!["ledger"]!["saltPerKgCooked"]!;
        var salt = 22 * 2.0 / 5 * 38_758 / 39_337;
        Assert.Equal(salt * 0.90 * 0.661 / 0.7773, (double)cooked["low"]!, 0.005);
        Assert.Equal(salt * 0.95 * 0.661 / 0.74075, (double)cooked["typical"]!, 0.005);
        Assert.Equal(salt * 1.00 * 0.772 / 0.7025, (double)cooked["high"]!, 0.05);
    }

    [Fact]
    public void Sodium_per_portion_holds_the_meats_own_sodium()
    {
        // Own sodium of pork shoulder 65 mg/100 g of meat, 15 % of the piece being bone; pepper 20 mg/100 g; a portion of
        // 170 g of meat without bone.
        var perKg = (8.8 * 0.38758 + 13.2 * 0.0002) * 0.95 + 0.65 * 0.85;
        var typical = perKg * 0.661 / 0.695 / 0.85 * 170;
        Assert.Equal(Math.Round(typical), (double)Answer["salt"]![0]!["ledger"]!["sodiumPerPortion"]!["typical"]!);
        Assert.Equal(Math.Round(0.84 * 0.795 / 0.681 * 170), (double)Answer["salt"]![1]!["ledger"]!["sodiumPerPortion"]!["typical"]!);
    }

    [Fact]
    public void The_answer_has_the_contracts_members()
    {
        Assert.Superset(Set("status", "greenWeight", "treatments", "salt", "findings", "cautions", "dataVersion"), Members(""));
        Assert.Superset(Set("name", "kind", "dose", "onMeat", "toMix", "lines", "pieces"), Members("/treatments/0"));
        Assert.Superset(Set("ingredient", "form", "ratio", "toMix", "runningTotal", "spoon"), Members("/treatments/0/lines/0"));
        Assert.Superset(Set("text", "low", "high", "unit"), Members("/treatments/0/lines/0/spoon"));
        Assert.Superset(Set("number", "line", "greenWeight", "amount"), Members("/treatments/0/pieces/0"));
        Assert.Superset(
            Set("saltPerKgGreen", "saltWeighedPerKgGreen", "saltPerKgCooked", "sodiumPerPortion", "entries", "checks"),
            Members("/salt/0/ledger"));
        Assert.Superset(Set("treatment", "ingredient", "form", "salt", "sodium"), Members("/salt/0/ledger/entries/0"));
        Assert.Superset(
            Set("id", "title", "base", "verdict", "typicalVerdict", "measured", "lowest", "highest", "unit", "sourceId", "locator", "confidence", "advice"),
            Members("/salt/0/ledger/checks/0"));
        Assert.Superset(Set("code", "severity", "message", "pointer", "parameters"), Members("/findings/0"));
        Assert.Superset(Set("id", "text", "defersTo", "sourceId"), Members("/cautions/0"));
    }

    [Fact]
    public void The_label_of_a_piece_is_given_back_when_a_treatment_reaches_it()
    {
        var pieces = Document.FirstSheet().Edit("""/treatments/0/on = ["legs"]""").SheetAnswer()["treatments"]![0]!["pieces"]!;
        Assert.Null(pieces[0]!["label"]);
        Assert.Equal("blue tag", (string)pieces[1]!["label"]!);
        Assert.Equal([5, 6], pieces.AsArray().Select(p => (int)p!["number"]!));
    }

    private static HashSet<string> Set(params string[] names) => [.. names];

    private static HashSet<string> Members(string pointer) => Pointed.At(Answer, pointer)!.AsObject().Select(p => p.Key).ToHashSet();
}
