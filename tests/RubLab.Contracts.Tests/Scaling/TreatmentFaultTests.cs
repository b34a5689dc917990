using System.Text.Json.Nodes;

namespace RubLab.Contracts.Tests.Scaling;

/// <summary>What may be wrong with a treatment or the sheet around it, each with its place and its code.</summary>
public class TreatmentFaultTests
{
    [Theory]
    [InlineData("- /treatments/0/formula", "/treatments/0 one-or-the-other")]
    [InlineData("""/treatments/0/formulaId = "pork-rub" """, "/treatments/0 one-or-the-other")]
    [InlineData("""/treatments/0/formulaId = "pork-rub" & /treatments/0/revision = 2""", "/treatments/0 one-or-the-other")]
    [InlineData("""/treatments/0/formulaId = "pork-rub" & /treatments/0/formula/lines/0/ingredient = "unicorn" & - /treatments/0/formula/lines/1/amount""", "/treatments/0 one-or-the-other; /treatments/0/formula/lines/0/ingredient unknown-ingredient; /treatments/0/formula/lines/1/amount required")]
    [InlineData("""- /treatments/0/formula & /treatments/0/formulaId = "lost" """, "/treatments/0/formulaId unknown-formula")]
    [InlineData("""- /treatments/0/formula & /treatments/0/formulaId = "pork-rub" & /treatments/0/revision = 3""", "/treatments/0/formulaId unknown-formula")]
    [InlineData("""- /treatments/0/formula & /treatments/0/formulaId = "pork-rub" & /treatments/0/revision = -1""", "/treatments/0/formulaId unknown-formula")]
    [InlineData("""- /treatments/0/formula & /treatments/0/formulaId = "pork/rub" """, "/treatments/0/formulaId bad-id")]
    [InlineData("/treatments/0/revision = 1", "/treatments/0/revision needs-other")]
    [InlineData("/treatments/0/applications = 0", "/treatments/0/applications out-of-range")]
    [InlineData("/treatments/0/applications = -2", "/treatments/0/applications out-of-range")]
    [InlineData("/treatments/0/applications = 101", "/treatments/0/applications out-of-range")]
    [InlineData("""/treatments/0/stage = "later" """, "/treatments/0/stage unknown-word")]
    [InlineData("/treatments = []", "/treatments required")]
    [InlineData("- /treatments", "/treatments required")]
    [InlineData("/treatments/1 = null", "/treatments/1 required")]
    public void A_treatment_is_refused_where_it_is_wrong(string edits, string expected) => PileFaultTests.Refused(edits, expected);

    [Theory]
    [InlineData("""/treatments/0/on = ["shoulder"]""", "/treatments/0/on/0 unknown-line")]
    [InlineData("""/treatments/0/on = ["shoulders", "Legs"]""", "/treatments/0/on/1 unknown-line")]
    [InlineData("""/treatments/0/on = ["legs", "shoulders", "legs"]""", "/treatments/0/on/2 duplicate-id")]
    [InlineData("""/treatments/0/on = ["legs", null]""", "/treatments/0/on/1 required")]
    [InlineData("/treatments/0/on = []", "/treatments/0/on required")]
    public void A_treatment_names_lines_of_the_pile_once_each(string edits, string expected) => PileFaultTests.Refused(edits, expected);

    [Theory]
    [InlineData("/treatments/0/retained/high = 100.5", "/treatments/0/retained/high out-of-range")]
    [InlineData("/treatments/0/retained/low = -1", "/treatments/0/retained/low out-of-range")]
    [InlineData("/treatments/0/retained/low = 99", "/treatments/0/retained band-order")]
    [InlineData("/treatments/0/retained/typical = 89", "/treatments/0/retained band-order")]
    [InlineData("/treatments/0/retained/value = 95", "/treatments/0/retained one-or-the-other")]
    [InlineData("""/treatments/0/retained = {"value":101,"unit":"%"}""", "/treatments/0/retained/value out-of-range")]
    [InlineData("- /treatments/0/retained/high", "/treatments/0/retained/high required")]
    [InlineData("""/treatments/0/retained/unit = "g" """, "/treatments/0/retained/unit unit-not-allowed")]
    [InlineData("""/treatments/0/dose = {"value":20,"unit":"g"}""", "/treatments/0/dose/unit unit-not-allowed")]
    [InlineData("""/treatments/0/dose = {"value":20,"unit":"g/100cm2"}""", "/treatments/0/dose/unit unit-not-allowed")]
    [InlineData("""/treatments/0/dose = {"value":0,"unit":"g/kg"}""", "/treatments/0/dose/value out-of-range")]
    [InlineData("""/treatments/0/dose = {"value":101,"unit":"%"}""", "/treatments/0/dose/value out-of-range")]
    [InlineData("""/treatments/0/dose = {"value":1e-300,"unit":"g/kg"}""", "/treatments/0/dose/value out-of-range")]
    public void Dose_and_retained_lie_in_range(string edits, string expected) => PileFaultTests.Refused(edits, expected);

    [Theory]
    [InlineData("""/portion = {"value":0,"unit":"g"}""", "/portion/value out-of-range")]
    [InlineData("""/portion = {"value":-170,"unit":"g"}""", "/portion/value out-of-range")]
    [InlineData("""/portion = {"value":6,"unit":"kg"}""", "/portion/value out-of-range")]
    [InlineData("""/portion = {"value":1,"unit":"cup"}""", "/portion/unit unit-not-allowed")]
    [InlineData("/weighingStep/value = 0", "/weighingStep/value out-of-range")]
    [InlineData("/weighingStep/value = 1e-9", "/weighingStep/value out-of-range")]
    [InlineData("/weighingStep/value = -1", "/weighingStep/value out-of-range")]
    [InlineData("/weighingStep/value = 1001", "/weighingStep/value out-of-range")]
    [InlineData("/weighingStep/value = 0.3333333333333333", "/weighingStep/value too-many-digits")]
    [InlineData("/weighingStep/value = 0.1234567", "/weighingStep/value too-many-digits")]
    [InlineData("- /weighingStep/value", "/weighingStep/value required")]
    [InlineData("- /weighingStep/unit", "/weighingStep/unit required")]
    [InlineData("""/weighingStep/unit = "tsp" """, "/weighingStep/unit unit-not-allowed")]
    [InlineData("/overage/value = -1", "/overage/value out-of-range")]
    [InlineData("/overage/value = 100.5", "/overage/value out-of-range")]
    [InlineData("""/overage/unit = "g/kg" """, "/overage/unit unit-not-allowed")]
    [InlineData("""/pieces = "some" """, "/pieces unknown-word")]
    [InlineData("""/purpose = "plan" """, "/purpose unknown-word")]
    public void The_sheet_is_refused_where_it_is_wrong(string edits, string expected) => PileFaultTests.Refused(edits, expected);

    [Fact]
    public void Twenty_treatments_are_a_stack_and_twenty_one_are_not()
    {
        Assert.Empty(WithTreatments(20).SheetFaults());
        Assert.Equal(["/treatments too-many"], WithTreatments(21).SheetFaults());
    }

    [Fact]
    public void Every_fault_of_a_document_is_told_at_once()
    {
        var faults = Document.FirstSheet().Edit(
            """
            /pile/0/cut = "pork-cheek" & /pile/0/trimLoss/value = 100 & /pile/1/pieces/0/weight/value = -1 & /pile/1/id = "a/b"
             & /treatments/0/formula/kind = "paste" & /treatments/0/formula/lines/0/ingredient = "slat"
             & /treatments/0/formula/lines/1/form = "dust" & /treatments/0/retained/low = 101 & /treatments/0/applications = 0
             & /treatments/0/stage = "later" & /weighingStep/value = 0 & /overage/unit = "g" & /portion/value = 0 & /pieces = "some"
            """.ReplaceLineEndings("")).SheetFaults();
        Assert.Equal(
            [
                "/overage/unit unit-not-allowed", "/pieces unknown-word", "/pile/0/cut unknown-cut", "/pile/0/trimLoss/value out-of-range",
                "/pile/1/id bad-id", "/pile/1/pieces/0/weight/value out-of-range", "/portion/value out-of-range",
                "/treatments/0/applications out-of-range", "/treatments/0/formula/kind unknown-word",
                "/treatments/0/formula/lines/0/ingredient unknown-ingredient", "/treatments/0/formula/lines/1/form unknown-form",
                "/treatments/0/retained/low out-of-range", "/treatments/0/stage unknown-word", "/weighingStep/value out-of-range",
            ],
            faults);
    }

    [Fact]
    public void A_fault_carries_the_value_sent_and_what_would_be_allowed()
    {
        var word = Assert.Single(Document.FirstSheet().Edit("""/pieces = "some" """).Sheet().Log.Faults);
        Assert.Equal("some", word.Parameters["value"]);
        Assert.Equal(["all", "none"], Assert.IsType<string[]>(word.Parameters["allowed"]));
        var unit = Assert.Single(Document.FirstSheet().Edit("""/portion/unit = "cup" """).Sheet().Log.Faults);
        Assert.Equal(["mg", "g", "kg", "oz", "lb"], Assert.IsType<string[]>(unit.Parameters["allowed"]));
        var range = Assert.Single(Document.FirstSheet().Edit("/overage/value = -1").Sheet().Log.Faults);
        Assert.Equal((-1d, 0d, 100d), (range.Parameters["value"], range.Parameters["lowest"], range.Parameters["highest"]));
    }

    [Fact]
    public void A_document_with_very_many_faults_lists_a_hundred_and_counts_all()
    {
        var pieces = new JsonArray();
        for (var i = 0; i < 1_000; i++)
        {
            pieces.Add(JsonNode.Parse("""{"weight":{"value":0,"unit":"g"}}"""));
        }

        var log = Document.FirstSheet().Set("/pile/1/pieces", pieces).Sheet().Log;
        Assert.Equal(100, log.Faults.Count);
        Assert.Equal(1_000, log.Count);
    }

    private static Document WithTreatments(int count)
    {
        var sheet = Document.FirstSheet();
        var treatment = JsonNode.Parse(sheet.Json)!["treatments"]![0]!;
        for (var i = 1; i < count; i++)
        {
            sheet.Set($"/treatments/{i}", treatment.DeepClone());
        }

        return sheet;
    }
}
