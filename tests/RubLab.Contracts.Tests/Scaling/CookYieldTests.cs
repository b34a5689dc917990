using System.Text.Json;
using System.Text.Json.Nodes;
using RubLab.Contracts.Json;
using RubLab.Contracts.Reference;

namespace RubLab.Contracts.Tests.Scaling;

/// <summary>Cooking yields on pieces with bone, and yields that rest on one pair of figures.</summary>
public class CookYieldTests
{
    // Legs with 25 % bone: 68.1 % of the meat is left, give or take 5.2 points, so 25 + 0.75 x 62.9 to 25 + 0.75 x 73.3 of the piece.
    [Fact]
    public void A_yield_of_the_meat_alone_is_told_for_the_piece_with_its_bone_and_its_width_as_an_estimate()
    {
        var findings = Sheet("").Where(f => (string)f["pointer"]! == "/pile/1").ToDictionary(f => (string)f["code"]!);

        var yield = findings["yield-assumed"];
        Assert.Equal(("usda-sr28-derived", 72.2, 80.0), ((string)yield["sourceId"]!, (double)yield["parameters"]!["low"]!, (double)yield["parameters"]!["high"]!));
        var width = findings["yield-width-estimated"];
        Assert.Equal(("yield-spread-estimate", 76.1), ((string)width["sourceId"]!, (double)width["parameters"]!["typical"]!));
    }

    [Theory]
    [InlineData("""/pile/1/cookYield = {"low":60,"typical":65,"high":70,"unit":"%"}""")]
    [InlineData("""/pile/1/cut = "beef-brisket" """)]
    public void A_yield_with_a_width_of_its_own_is_not_called_an_estimate(string edits) => Assert.DoesNotContain(
        Sheet(edits), f => (string)f["code"]! == "yield-width-estimated" && (string)f["pointer"]! == "/pile/1");

    [Theory]
    [InlineData("""/pile/1/cookYield = {"low":25,"typical":65,"high":70,"unit":"%"} & /pile/1/bone = {"value":25,"unit":"%"}""", "/pile/1/cookYield bone-over-yield")]
    [InlineData("""/pile/1/cookYield = {"low":20,"typical":65,"high":70,"unit":"%"}""", "/pile/1/cookYield bone-over-yield")]
    [InlineData("""/pile/0/cut = "beef-rib-roast" & /pile/0/bone = {"value":80,"unit":"%"}""", "/pile/0/bone bone-over-yield")]
    [InlineData("""/pile/0/cut = "beef-rib-roast" & /pile/0/bone = {"value":77,"unit":"%"}""", "")]
    [InlineData("""/pile/1/bone = {"value":99,"unit":"%"}""", "")]
    public void A_yield_leaves_more_than_the_bone(string edits, string expected) =>
        Assert.Equal(expected, string.Join("; ", Document.FirstSheet().Edit(edits).SheetFaults()));

    [Fact]
    public void A_cut_says_what_its_yields_are_a_part_of_and_where_their_width_comes_from()
    {
        var thigh = Yields("turkey-thigh").Single()!;
        Assert.Equal((64.9, 70.1, 75.3, "edible-portion", "yield-spread-estimate"), (
            (double)thigh["low"]!, (double)thigh["typical"]!, (double)thigh["high"]!, (string)thigh["basis"]!, (string)thigh["widthSourceId"]!));
        var smoked = Yields("beef-brisket")[0]!;
        Assert.Equal("green", (string)smoked["basis"]!);
        Assert.Null(smoked["widthSourceId"]);
    }

    private static List<JsonNode> Sheet(string edits) => Document.FirstSheet().Edit(edits).SheetAnswer()["findings"]!.AsArray().Select(f => f!).ToList();

    private static JsonArray Yields(string cut)
    {
        Assert.True(Seed.Catalogue.TryFindCut(cut, out var found));
        return JsonNode.Parse(JsonSerializer.Serialize(ReferenceAnswers.From(found, Seed.Catalogue), RubLabJson.Default.CutResponse))!["cookYields"]!.AsArray();
    }
}
