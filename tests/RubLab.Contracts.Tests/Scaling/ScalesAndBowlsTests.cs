using System.Globalization;
using System.Text.Json.Nodes;

namespace RubLab.Contracts.Tests.Scaling;

public class ScalesAndBowlsTests
{
    private const string TwoScales =
        """- /weighingStep & /scales = [{"capacity":{"value":200,"unit":"g"},"step":{"value":0.1,"unit":"g"}},{"capacity":{"value":5,"unit":"kg"},"step":{"value":2,"unit":"g"}}]""";

    [Fact]
    public void Each_amount_goes_on_the_finest_scale_that_takes_it_and_the_mix_is_their_sum()
    {
        // 306.0288 g of mix: 122.4 g of salt on the fine scale, 183.6 g of pepper too; 72.9 g on a piece.
        var treatment = Sheet(TwoScales)["treatments"]![0]!;
        Assert.Equal(122.4m, (decimal)treatment["lines"]![0]!["toMix"]!["value"]!);
        Assert.Equal(0.1, (double)treatment["lines"]![0]!["step"]!["value"]!);
        Assert.Equal(183.6m, (decimal)treatment["lines"]![1]!["toMix"]!["value"]!);
        Assert.Equal(306.0m, (decimal)treatment["toMix"]!["value"]!);
        Assert.Equal(291.5m, (decimal)treatment["onMeat"]!["value"]!);
    }

    [Fact]
    public void Without_an_overage_the_lines_come_to_no_less_than_the_pieces_take()
    {
        // 582.912 g: pieces of 145.728 g on tenths, 582.9 g of them; 233.1648 g of salt and 349.7472 g of pepper on steps of 2 g are 234 and 350.
        // At 43.9 g/kg they are 232 and 348, 580 g, for pieces that take 581.6: the pepper, cut down most, gets a step.
        Assert.Equal((582.9m, 584m, "234 350"), Mixed(44));
        Assert.Equal((581.6m, 582m, "232 350"), Mixed(43.9));

        static (decimal OnMeat, decimal ToMix, string Lines) Mixed(double dose)
        {
            var treatment = Sheet(TwoScales + " & - /overage & /treatments/0/dose = {\"value\":" + dose.ToString(CultureInfo.InvariantCulture) + ",\"unit\":\"g/kg\"}")["treatments"]![0]!;
            return ((decimal)treatment["onMeat"]!["value"]!, (decimal)treatment["toMix"]!["value"]!, string.Join(' ', treatment["lines"]!.AsArray().Select(l => l!["toMix"]!["value"]!.ToJsonString())));
        }
    }

    [Fact]
    public void A_premix_is_told_in_whole_steps_with_the_error_it_leaves()
    {
        // 13.248 kg at 22 g/kg and 5 %: with cayenne at a hundredth of the mix, 3.06 g of it on whole grams.
        var finding = Sheet("""/treatments/0/formula/lines/0/amount/value = 99 & /treatments/0/formula/lines/1 = {"ingredient":"cayenne-red-pepper","amount":{"value":1,"unit":"parts-by-mass"}}""")["findings"]!
            .AsArray().Single(f => (string)f!["code"]! == "premix")!["parameters"]!;

        Assert.Equal(("20 g", "1980 g", "306 g"), ((string)finding["premixIngredient"]!, (string)finding["premixCarrier"]!, (string)finding["premixAmount"]!));
        Assert.InRange((double)finding["error"]!, -0.1, 0.1);
        Assert.InRange((double)finding["carrierError"]!, -0.2, 0.2);
    }

    [Fact]
    public void A_coat_uneven_by_dose_factors_is_told_as_such()
    {
        var codes = Codes(Sheet("""/pile/0/cut = "beef-brisket" & - /pile/0/count & - /pile/0/weightEach & /pile/0/pieces = [{"weight":{"value":5,"unit":"kg"}},{"weight":{"value":5,"unit":"kg"},"doseFactor":0.5}]"""));
        Assert.Contains("coverage-by-factor", codes);
        Assert.DoesNotContain("coverage-spread", codes);
    }

    [Fact]
    public void A_large_line_goes_on_the_coarse_scale()
    {
        var treatment = Sheet(TwoScales + " & /treatments/0/dose = {\"value\":44,\"unit\":\"g/kg\"}")["treatments"]![0]!;
        // 612.0576 g: 244.8 g of salt and 367.2 g of pepper, both above 200 g.
        Assert.Equal(244m, (decimal)treatment["lines"]![0]!["toMix"]!["value"]!);
        Assert.Equal(368m, (decimal)treatment["lines"]![1]!["toMix"]!["value"]!);
        Assert.Equal(612m, (decimal)treatment["toMix"]!["value"]!);
    }

    [Fact]
    public void A_mix_larger_than_the_bowl_is_split_and_the_bowls_add_up()
    {
        var sheet = Sheet("""/bowl = {"value":100,"unit":"g"}""");
        var treatment = sheet["treatments"]![0]!;
        var bowls = treatment["bowls"]!.AsArray();
        Assert.Equal(4, bowls.Count);
        for (var line = 0; line < 2; line++)
        {
            Assert.Equal(
                (decimal)treatment["lines"]![line]!["toMix"]!["value"]!, bowls.Sum(b => (decimal)b!["lines"]![line]!["value"]!));
        }

        Assert.Contains(sheet["findings"]!.AsArray(), f => (string)f!["code"]! == "capacity-split");
    }

    [Fact]
    public void A_dose_by_area_goes_on_by_the_surface_and_reaches_the_ledger()
    {
        var sheet = Sheet("""/treatments/0/formula/base = "area" & /treatments/0/formula/dose = {"value":2,"unit":"g/100cm2"}""");
        var treatment = sheet["treatments"]![0]!;
        Assert.Equal("area", (string)treatment["base"]!);
        Assert.Equal(2, (double)treatment["coverage"]![0]!["coverage"]!["typical"]!, 0.02);
        var perKg = (double)treatment["onMeat"]!["value"]! / 13.248;
        Assert.Equal(perKg * 0.4, (double)sheet["salt"]![0]!["ledger"]!["saltWeighedPerKgGreen"]!["value"]!, 0.02);
    }

    [Fact]
    public void Sugar_in_a_hot_cooker_is_told()
    {
        const string sweet = """/treatments/0/formula/lines/1/ingredient = "sugar-brown" & /treatments/0/formula/lines/1/form = "packed" """;
        Assert.Contains("sugar-scorch", Codes(Sheet(sweet + """ & /cookerTemperature = {"value":350,"unit":"F"}""")));
        Assert.DoesNotContain("sugar-scorch", Codes(Sheet(sweet + """ & /cookerTemperature = {"value":225,"unit":"F"}""")));
        Assert.DoesNotContain("sugar-scorch", Codes(Sheet(sweet)));
    }

    [Fact]
    public void A_packs_own_sodium_takes_the_place_of_the_references()
    {
        var plain = Sheet("""/pile/1/addedSolution = {"value":12,"unit":"%"}""");
        var told = Sheet("""/pile/1/addedSolution = {"value":12,"unit":"%"} & /pile/1/sodiumPer100g = {"value":200,"unit":"mg"} & /pile/1/bone = {"value":0,"unit":"%"}""");
        Assert.Contains("already-salted", Codes(plain));
        Assert.DoesNotContain("already-salted", Codes(told));
        Assert.Equal(2.0, (double)told["salt"]![1]!["ledger"]!["ownSodiumPerKgGreen"]!["value"]!);
    }

    [Fact]
    public void An_end_slice_is_saltier_than_a_centre_slice()
    {
        // A brick in slices: E09 of the worked examples is the packer-like brick of 40 x 25 x 6 cm, here at its own weight.
        var slices = Sheet("""/pile/0/cut = "beef-brisket" & /pile/0/sliceThickness = {"value":6,"unit":"mm"}""")["salt"]![0]!["ledger"]!["slices"]!;
        Assert.InRange((double)slices["centre"]!, 0.85, 0.95);
        Assert.InRange((double)slices["end"]!, 3, 6);
    }

    [Fact]
    public void A_range_on_another_weight_is_told_and_not_judged()
    {
        var sheet = Sheet("""/pile/0/cut = "turkey-breast" & /pile/0/bone = {"value":0,"unit":"%"}""");
        Assert.Contains("range-does-not-fit", Codes(sheet));
        Assert.Equal("cannot-tell", (string)sheet["salt"]![0]!["ledger"]!["checks"]!.AsArray().Single(c => (string)c!["id"]! == "S24")!["verdict"]!);
        Assert.DoesNotContain("range-does-not-fit", Codes(Sheet("""/pile/0/cut = "turkey-breast" """)));
    }

    [Theory]
    [InlineData("""/scales = [] """, "/scales one-or-the-other; /scales required")]
    [InlineData("""- /weighingStep & /scales = [{"step":{"value":0,"unit":"g"}}]""", "/scales/0/step/value out-of-range")]
    [InlineData("""- /weighingStep & /scales = [{"capacity":{"value":1,"unit":"g"},"step":{"value":5,"unit":"g"}}]""", "/scales/0/capacity out-of-range")]
    [InlineData("""- /weighingStep & /scales = [{}]""", "/scales/0/step required")]
    [InlineData("""- /weighingStep & /scales = [null]""", "/scales/0 required")]
    [InlineData("""- /weighingStep & /scales = [{"step":{"value":1,"unit":"g"}},{"step":{"value":1,"unit":"oz"}}]""", "/scales mixed-units")]
    [InlineData("""/bowl = {"value":0,"unit":"g"}""", "/bowl/value out-of-range")]
    [InlineData("""/bowl = {"value":0.1,"unit":"g"}""", "/bowl capacity-too-small")]
    [InlineData("""- /weighingStep & /scales = [{"capacity":{"value":50,"unit":"g"},"step":{"value":1,"unit":"g"}}]""", "/scales capacity-too-small")]
    [InlineData("""/pile/0/count = 1 & /pile/0/weightEach = {"value":10,"unit":"g"} & /portion = {"value":700,"unit":"g"}""", "/portion portion-too-large")]
    [InlineData("""/cookerTemperature = {"value":5000,"unit":"F"}""", "/cookerTemperature/value out-of-range")]
    [InlineData("""/pile/1/pieces/0/thickness = {"value":0,"unit":"mm"}""", "/pile/1/pieces/0/thickness/value out-of-range")]
    [InlineData("""/pile/1/pieces/0/thickness = {"value":3,"unit":"g"}""", "/pile/1/pieces/0/thickness/unit unit-not-allowed")]
    [InlineData("""/pile/0/cut = "beef-brisket" & /pile/0/sliceThickness = {"value":33,"unit":"cm"}""", "/pile/0/sliceThickness slice-too-thick")]
    [InlineData("""/pile/0/cut = "beef-brisket" & /pile/0/sliceThickness = {"value":32,"unit":"cm"}""", "")]
    [InlineData("""/pile/1/sliceThickness = {"value":40,"unit":"cm"} & /pile/0/sliceThickness = {"value":0,"unit":"mm"}""", "/pile/0/sliceThickness/value out-of-range; /pile/1/sliceThickness slice-too-thick")]
    [InlineData("""/pile/0/sodiumPer100g = {"value":60,"unit":"g"}""", "/pile/0/sodiumPer100g/value out-of-range")]
    public void What_cannot_be_is_refused(string edits, string expected) => Assert.Equal(
        expected, string.Join("; ", Document.FirstSheet().Edit(edits).SheetFaults().Order(StringComparer.Ordinal)));

    private static JsonNode Sheet(string edits) => Document.FirstSheet().Edit(edits).SheetAnswer();

    private static List<string> Codes(JsonNode sheet) => sheet["findings"]!.AsArray().Select(f => (string)f!["code"]!).ToList();
}
