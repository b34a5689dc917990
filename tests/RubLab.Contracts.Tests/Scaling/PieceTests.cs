using System.Text.Json.Nodes;

namespace RubLab.Contracts.Tests.Scaling;

/// <summary>Dose factors, skipped pieces, several applications, the ways of giving weights, and planned sheets.</summary>
public class PieceTests
{
    private const string FineLegs = """/treatments/0/on = ["legs"] & /weighingStep = {"value":0.001,"unit":"g"}""";

    [Fact]
    public void A_skipped_piece_is_listed_with_nothing_and_the_ledger_is_thinner_by_its_share()
    {
        var all = Legs("");
        var skipped = Legs("/pile/1/pieces/0/skip = true");
        Assert.Equal([0, 6.556], Amounts(skipped));
        Assert.Equal(6.556, OnMeat(skipped));
        Assert.Equal(Salt(all) * 298 / 608, Salt(skipped), 0.005);
        Assert.Equal((double)all["greenWeight"]!["value"]!, (double)skipped["greenWeight"]!["value"]!);
    }

    [Fact]
    public void A_dose_factor_multiplies_its_piece_alone()
    {
        Assert.Equal([6.82, 6.556], Amounts(Legs("")));
        Assert.Equal([3.41, 6.556], Amounts(Legs("/pile/1/pieces/0/doseFactor = 0.5")));
        Assert.Equal([6.82, 65.56], Amounts(Legs("/pile/1/pieces/1/doseFactor = 10")));
        Assert.Equal([0, 6.556], Amounts(Legs("/pile/1/pieces/0/doseFactor = 0")));
        Assert.Equal([6.82, 6.556], Amounts(Legs("/pile/1/pieces/0/skip = false & /pile/1/pieces/1/doseFactor = 1")));
    }

    [Fact]
    public void Every_piece_skipped_gives_nothing_to_weigh_and_no_salt()
    {
        var none = Legs("/pile/1/pieces/0/skip = true & /pile/1/pieces/1/skip = true");
        Assert.Equal(0, OnMeat(none));
        Assert.Equal(0, (double)none["treatments"]![0]!["toMix"]!["value"]!);
        Assert.Equal(0, Salt(none));
    }

    [Fact]
    public void Applications_multiply_amounts_and_salt()
    {
        var once = Legs("");
        var thrice = Legs("/treatments/0/applications = 3");
        Assert.Equal([20.46, 19.668], Amounts(thrice));
        Assert.Equal(3, (int)thrice["treatments"]![0]!["applications"]!);
        Assert.Equal(Salt(once) * 3, Salt(thrice), 0.02);
        Assert.Equal("""{"value":22,"unit":"g/kg"}""", thrice["treatments"]![0]!["dose"]!.ToJsonString());
        Assert.Equal(26.4, (double)thrice["salt"]![1]!["ledger"]!["saltWeighedPerKgGreen"]!["value"]!);
    }

    [Fact]
    public void A_treatments_own_dose_replaces_the_formulas_and_its_ratios_follow()
    {
        var doubled = Legs("""/treatments/0/dose = {"value":4.4,"unit":"%"}""");
        Assert.Equal([13.64, 13.112], Amounts(doubled));
        Assert.Equal(44, (double)doubled["treatments"]![0]!["dose"]!["value"]!);
        Assert.Equal([17.6, 26.4], doubled["treatments"]![0]!["lines"]!.AsArray().Select(l => (double)l!["ratio"]!["value"]!));
    }

    [Fact]
    public void Each_weight_a_total_and_a_list_of_equal_pieces_are_the_same_pile()
    {
        var each = Shoulders("");
        var total = Shoulders("""- /pile/0/weightEach & /pile/0/totalWeight = {"value":14.4,"unit":"kg"}""");
        var list = Shoulders(
            """
            - /pile/0/weightEach & - /pile/0/count & /pile/0/pieces = [
            {"weight":{"value":3.6,"unit":"kg"}},{"weight":{"value":3600,"unit":"g"}},
            {"weight":{"value":3600000,"unit":"mg"}},{"weight":{"value":3.6,"unit":"kg"}}]
            """.ReplaceLineEndings(""));
        Assert.Equal(each.ToJsonString(), total.ToJsonString());
        Assert.Equal(each.ToJsonString(), list.ToJsonString());
    }

    [Fact]
    public void Purchase_weight_without_trim_is_planned_with_the_estimate_told()
    {
        var planned = Shoulders("- /pile/0/trimLoss");
        Assert.Equal("planned", (string)planned["status"]!);
        var finding = Assert.Single(planned["findings"]!.AsArray(), f => (string)f!["code"]! == "trim-assumed")!;
        Assert.Equal("/pile/0", (string)finding["pointer"]!);
        Assert.Equal((3, 10, 35), ((double)finding["parameters"]!["low"]!, (double)finding["parameters"]!["typical"]!, (double)finding["parameters"]!["high"]!));
        Assert.Equal((14400 * 0.9) + 608, (double)planned["greenWeight"]!["value"]!);
        Assert.Equal("weighed", (string)Shoulders("/pile/0/trimLoss/value = 0")["status"]!);
        Assert.Equal("weighed", (string)Shoulders("""- /pile/0/trimLoss & /pile/0/weightIs = "green" """)["status"]!);
    }

    [Fact]
    public void A_stored_formula_is_taken_at_its_latest_revision_or_the_one_named()
    {
        Assert.Equal([6.2, 5.96], Amounts(Legs("""- /treatments/0/formula & /treatments/0/formulaId = "pork-rub" """)));
        Assert.Equal([6.2, 5.96], Amounts(Legs("""- /treatments/0/formula & /treatments/0/formulaId = "pork-rub" & /treatments/0/revision = 2""")));
        Assert.Equal([3.1, 2.98], Amounts(Legs("""- /treatments/0/formula & /treatments/0/formulaId = "pork-rub" & /treatments/0/revision = 1""")));
    }

    private static JsonNode Legs(string edits) => Document.FirstSheet().Edit(FineLegs).Edit(edits).SheetAnswer();

    private static JsonNode Shoulders(string edits) => Document.FirstSheet().Edit(edits).SheetAnswer();

    private static IEnumerable<double> Amounts(JsonNode sheet) =>
        sheet["treatments"]![0]!["pieces"]!.AsArray().Select(p => (double)p!["amount"]!["value"]!);

    private static double OnMeat(JsonNode sheet) => (double)sheet["treatments"]![0]!["onMeat"]!["value"]!;

    private static double Salt(JsonNode sheet) => (double)sheet["salt"]![1]!["ledger"]!["saltPerKgGreen"]!["typical"]!;
}
