using System.Text.Json.Nodes;

namespace RubLab.Contracts.Tests.Scaling;

/// <summary>What may be wrong with a pile, each with its place and its code. Expected faults are parted by <c>; </c>.</summary>
public class PileFaultTests
{
    [Theory]
    [InlineData("""/pile/0/cut = "pork-cheek" """, "/pile/0/cut unknown-cut")]
    [InlineData("""/pile/0/cut = "Pork-Shoulder" """, "/pile/0/cut unknown-cut")]
    [InlineData("- /pile/0/cut", "/pile/0/cut required")]
    [InlineData("""/pile/0/weightIs = "gross" """, "/pile/0/weightIs unknown-word")]
    [InlineData("""/pile/1/id = "shoulders" """, "/pile/1/id duplicate-id")]
    [InlineData("""- /pile/1/id & /pile/1/cut = "pork-shoulder" & /pile/0/id = "pork-shoulder" & - /treatments/0/on""", "/pile/1/id duplicate-id")]
    [InlineData("""/pile/1/id = "a/b" """, "/pile/1/id bad-id")]
    [InlineData("""/pile/1/id = "a:b" """, "/pile/1/id bad-id")]
    [InlineData("""/pile/1/id = "a b" """, "/pile/1/id bad-id")]
    [InlineData("""/pile/1/id = "\ud83c\udf56" """, "/pile/1/id bad-id")]
    [InlineData("""/pile/1/id = "\u00e9" """, "/pile/1/id bad-id")]
    [InlineData("""/pile/1/id = "a\u0000" """, "/pile/1/id bad-id")]
    [InlineData("""/pile/1/id = "" """, "/pile/1/id bad-id")]
    [InlineData("""- /pile/0/id & - /treatments/0/on & /pile/1/cut = "pork-shoulder" & /pile/1/id = "a/b" """, "/pile/1/id bad-id")]
    [InlineData("/pile = []", "/pile required; /treatments/0/on/0 unknown-line")]
    [InlineData("/pile = [] & - /treatments/0/on", "/pile required")]
    [InlineData("- /pile & - /treatments/0/on", "/pile required")]
    [InlineData("/pile/1 = null", "/pile/1 required")]
    [InlineData("/pile/1/pieces/0 = null", "/pile/1/pieces/0 required")]
    [InlineData("/pile/1/pieces = []", "/pile/1/pieces required")]
    [InlineData("- /pile/1/pieces/0/weight", "/pile/1/pieces/0/weight required")]
    [InlineData("- /pile/1/pieces/0/weight/unit", "/pile/1/pieces/0/weight/unit required")]
    [InlineData("- /pile/1/pieces/0/weight/value", "/pile/1/pieces/0/weight/value required")]
    [InlineData("/pile/1/pieces/0/weight = {}", "/pile/1/pieces/0/weight/unit required; /pile/1/pieces/0/weight/value required")]
    public void A_pile_line_is_refused_where_it_is_wrong(string edits, string expected) => Refused(edits, expected);

    [Theory]
    [InlineData("- /pile/0/count & - /pile/0/weightEach", "/pile/0 one-or-the-other")]
    [InlineData("- /pile/0/count", "/pile/0/count required")]
    [InlineData("- /pile/0/weightEach", "/pile/0 one-or-the-other")]
    [InlineData("""/pile/0/totalWeight = {"value":14,"unit":"kg"}""", "/pile/0 one-or-the-other")]
    [InlineData("""- /pile/0/weightEach & - /pile/0/count & /pile/0/totalWeight = {"value":14,"unit":"kg"}""", "/pile/0/count required")]
    [InlineData("""/pile/1/weightEach = {"value":300,"unit":"g"}""", "/pile/1 one-or-the-other")]
    [InlineData("""/pile/1/totalWeight = {"value":600,"unit":"g"}""", "/pile/1 one-or-the-other")]
    [InlineData("""/pile/1/weightEach = {"value":300,"unit":"g"} & /pile/1/totalWeight = {"value":600,"unit":"g"}""", "/pile/1 one-or-the-other")]
    [InlineData("/pile/1/count = 2", "/pile/1/count one-or-the-other")]
    [InlineData("- /pile/1/pieces", "/pile/1 one-or-the-other")]
    [InlineData("/pile/0/count = 0", "/pile/0/count out-of-range")]
    [InlineData("/pile/0/count = -4", "/pile/0/count out-of-range")]
    [InlineData("/pile/0/count = 300001", "/pile/0/count out-of-range")]
    [InlineData("/pile/0/count = 2147483647", "/pile/0/count out-of-range")]
    [InlineData("""- /pile/0/weightEach & /pile/0/count = 2 & /pile/0/totalWeight = {"value":2001,"unit":"kg"}""", "/pile/0/totalWeight out-of-range")]
    public void Weights_are_given_in_exactly_one_way(string edits, string expected) => Refused(edits, expected);

    [Theory]
    [InlineData("/pile/0/weightEach/value = -3.6", "/pile/0/weightEach/value out-of-range")]
    [InlineData("/pile/0/weightEach/value = 0", "/pile/0/weightEach/value out-of-range")]
    [InlineData("/pile/0/weightEach/value = 1e12", "/pile/0/weightEach/value out-of-range")]
    [InlineData("/pile/0/weightEach/value = 1e308", "/pile/0/weightEach/value out-of-range")]
    [InlineData("/pile/0/weightEach/value = 1000.001", "/pile/0/weightEach/value out-of-range")]
    [InlineData("/pile/0/weightEach/value = 1e-300", "/pile/0/weightEach/value out-of-range")]
    [InlineData("/pile/1/pieces/1/weight/value = 0", "/pile/1/pieces/1/weight/value out-of-range")]
    [InlineData("/pile/1/pieces/1/weight/value = -298", "/pile/1/pieces/1/weight/value out-of-range")]
    [InlineData("""/pile/1/pieces/1/weight/unit = "mL" """, "/pile/1/pieces/1/weight/unit unit-not-allowed")]
    [InlineData("""/pile/1/pieces/1/weight/unit = "KG" """, "/pile/1/pieces/1/weight/unit unknown-unit")]
    [InlineData("""/pile/1/pieces/1/weight/unit = "" """, "/pile/1/pieces/1/weight/unit unknown-unit")]
    [InlineData("/pile/1/pieces/0/doseFactor = -0.5", "/pile/1/pieces/0/doseFactor out-of-range")]
    [InlineData("/pile/1/pieces/0/doseFactor = 10.5", "/pile/1/pieces/0/doseFactor out-of-range")]
    [InlineData("/pile/1/pieces/0/doseFactor = 1 & /pile/1/pieces/0/skip = true", "/pile/1/pieces/0 one-or-the-other")]
    public void A_piece_weighs_between_a_milligram_and_a_tonne(string edits, string expected) => Refused(edits, expected);

    [Theory]
    [InlineData("/pile/0/trimLoss/value = 100", "/pile/0/trimLoss/value out-of-range")]
    [InlineData("/pile/0/trimLoss/value = -1", "/pile/0/trimLoss/value out-of-range")]
    [InlineData("""/pile/0/trimLoss/unit = "g/kg" """, "/pile/0/trimLoss/unit unit-not-allowed")]
    [InlineData("""/pile/0/weightIs = "green" """, "/pile/0/trimLoss trim-on-green")]
    [InlineData("- /pile/0/weightIs", "/pile/0/trimLoss trim-on-green")]
    [InlineData("""/pile/0/bone = {"value":100,"unit":"%"}""", "/pile/0/bone/value out-of-range")]
    [InlineData("""/pile/0/addedSolution = {"value":101,"unit":"%"}""", "/pile/0/addedSolution/value out-of-range")]
    [InlineData("""/pile/0/cookYield = {"value":0,"unit":"%"}""", "/pile/0/cookYield/value out-of-range")]
    [InlineData("""/pile/0/cookYield = {"value":1e-300,"unit":"%"}""", "/pile/0/cookYield/value out-of-range")]
    [InlineData("""/pile/0/cookYield = {"low":60,"typical":70,"high":101,"unit":"%"}""", "/pile/0/cookYield/high out-of-range")]
    [InlineData("""/pile/0/cookYield = {"low":60,"high":80,"unit":"%"}""", "/pile/0/cookYield/typical required")]
    [InlineData("""/pile/0/cookYield = {"low":70,"typical":60,"high":80,"unit":"%"}""", "/pile/0/cookYield band-order")]
    [InlineData("""/pile/0/cookYield = {"unit":"%"}""", "/pile/0/cookYield/high required; /pile/0/cookYield/low required; /pile/0/cookYield/typical required")]
    [InlineData("""/pile/0/keptInCooking = {"value":70}""", "/pile/0/keptInCooking/unit required")]
    [InlineData("""/pile/0/keptInCooking = {"value":70,"unit":"%"} & /pile/0/juicesReturned = true""", "/pile/0/keptInCooking one-or-the-other")]
    [InlineData("""/pile/0/portion = {"value":0,"unit":"g"}""", "/pile/0/portion/value out-of-range")]
    public void What_is_said_of_the_meat_lies_in_range(string edits, string expected) => Refused(edits, expected);

    [Fact]
    public void An_id_of_64_is_an_id_and_one_of_10_kB_is_not()
    {
        Assert.Empty(Document.FirstSheet().Set("/pile/1/id", new string('x', 64)).SheetFaults());
        var result = Document.FirstSheet().Set("/pile/1/id", new string('x', 10_000)).Sheet();
        var fault = Assert.Single(result.Log.Faults);
        Assert.Equal("/pile/1/id bad-id", $"{fault.Pointer} {fault.Code}");
        Assert.InRange(fault.Detail.Length, 1, 400);
    }

    [Fact]
    public void A_hundred_lines_are_a_pile_and_a_hundred_and_one_are_not()
    {
        Assert.Empty(WithLines(100).SheetFaults());
        Assert.Equal(["/pile too-many"], WithLines(101).SheetFaults());
    }

    [Fact]
    public void A_pile_with_too_many_lines_does_not_hide_what_is_wrong_with_the_treatments() =>
        Assert.Equal(
            ["/pile too-many", "/treatments/0/formula/kind unknown-word"],
            WithLines(101).Edit("""/treatments/0/formula/kind = "paste" """).SheetFaults());

    [Fact]
    public void A_label_holds_no_control_characters_and_no_broken_ones()
    {
        Assert.Equal(["/pile/1/pieces/0/label required"], FaultsOfLabel("\n"));
        Assert.Equal(["/pile/1/pieces/0/label bad-text"], FaultsOfLabel("a\u0007b"));
        Assert.Equal(["/pile/1/pieces/0/label bad-text"], FaultsOfLabel("a\u0085b"));
        Assert.Equal(["/pile/1/pieces/0/label bad-text"], FaultsOfLabel("\ud83d label"));
        Assert.Equal(["/pile/1/pieces/0/label bad-text"], FaultsOfLabel("label \udc00"));
    }

    // Half a surrogate pair never gets through JSON; a client in the same process can still send one.
    private static IReadOnlyList<string> FaultsOfLabel(string label)
    {
        var request = System.Text.Json.JsonSerializer.Deserialize(
            Document.FirstSheet().Json, RubLab.Contracts.Json.RubLabJson.Default.BatchSheetRequest)!;
        request.Pile![1]!.Pieces![0]!.Label = label;
        return Document.Faults(RubLab.Contracts.Scaling.BatchSheets.Compute(request, Seed.Catalogue, (_, _) => null).Log);
    }

    [Fact]
    public void A_label_may_be_in_any_script() =>
        Assert.Empty(Document.FirstSheet().Set("/pile/1/pieces/0/label", "\u7f8a\u8089 \ud83c\udf56 \u00e9t\u00e9").SheetFaults());

    internal static void Refused(string edits, string expected) =>
        Assert.Equal(expected.Split("; ").Order(StringComparer.Ordinal), Document.FirstSheet().Edit(edits).SheetFaults());

    private static Document WithLines(int count)
    {
        var pile = new JsonArray();
        for (var i = 0; i < count; i++)
        {
            pile.Add(JsonNode.Parse($$"""{"id":"line-{{i}}","cut":"pork-shoulder","count":1,"weightEach":{"value":1,"unit":"kg"} }"""));
        }

        return Document.FirstSheet().Set("/pile", pile).Remove("/treatments/0/on");
    }
}
