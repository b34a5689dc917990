using RubLab.Contracts.Quantities;
using RubLab.Contracts.Scaling;

namespace RubLab.Contracts.Tests.Scaling;

public class SizeLimitTests
{
    [Fact]
    public void Three_hundred_thousand_pieces_times_treatments_are_allowed_and_sum_exactly()
    {
        var result = Sheet(150_000, treatments: 2).Sheet();
        Assert.True(result.IsGood);
        Assert.All(result.Value.Treatments, t =>
        {
            var steps = t.Pieces!.Select(p => (long)p.Amount.Value).ToList();
            Assert.Equal(150_000, steps.Count);
            Assert.Equal((long)t.OnMeat.Value, steps.Sum());
        });
    }

    [Fact]
    public void One_piece_times_treatment_more_is_refused() => Assert.Equal(
        ["/pile too-many"],
        Sheet(299_999, treatments: 1).Edit(
            """
            /pile/1 = {"id":"two","cut":"lamb-leg","count":1,"weightEach":{"value":1,"unit":"kg"}}
             & /treatments/1 = {"formulaId":"pork-rub","on":["two"]}
            """.ReplaceLineEndings("")).Edit("- /treatments/0/on").SheetFaults());

    [Fact]
    public void Three_hundred_thousand_pieces_and_one_are_refused_over_all_lines() => Assert.Equal(
        ["/pile too-many"],
        Sheet(300_000, treatments: 1)
            .Edit("""/pile/1 = {"id":"two","cut":"lamb-leg","count":1,"weightEach":{"value":1,"unit":"kg"}}""").SheetFaults());

    [Fact]
    public void A_short_document_cannot_make_the_reader_fill_memory()
    {
        var lines = Enumerable.Range(0, 100).Select(PileLineRequest? (i) => new PileLineRequest
        {
            Id = $"line-{i}", Cut = "pork-shoulder", Count = 300_000, WeightEach = QuantityRequest.Of(1, "kg"),
        }).ToList();
        var request = new BatchSheetRequest { Pile = lines, Treatments = [new TreatmentRequest { FormulaId = "lost" }] };

        // What is made once, the catalogue before all, is not the document's doing.
        _ = BatchSheets.Compute(request, Seed.Catalogue, (_, _) => null);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var faults = Document.Faults(BatchSheets.Compute(request, Seed.Catalogue, (_, _) => null).Log);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1_000_000);
        Assert.Equal(["/pile too-many", "/treatments/0/formulaId unknown-formula"], faults);
    }

    [Fact]
    public void A_pile_in_steps_too_fine_to_count_is_refused_not_guessed() => Assert.Equal(
        ["/weighingStep step-too-fine"],
        Sheet(300_000, treatments: 1).Edit(
            """
            /pile/0/weightEach = {"value":999.99999997,"unit":"kg"} & /weighingStep = {"value":1,"unit":"mg"}
             & /treatments/0/dose = {"value":100,"unit":"%"} & /treatments/0/applications = 100
            """.ReplaceLineEndings("")).SheetFaults());

    [Fact]
    public void The_heaviest_pile_in_milligrams_still_sums_exactly()
    {
        var result = Sheet(300_000, treatments: 1).Edit(
            """
            /pile/0/weightEach = {"value":999.99999997,"unit":"kg"} & /weighingStep = {"value":1,"unit":"mg"}
             & /treatments/0/dose = {"value":3,"unit":"ppm"}
            """.ReplaceLineEndings("")).Sheet();
        Assert.True(result.IsGood);
        var treatment = result.Value.Treatments[0];
        Assert.Equal((decimal)treatment.OnMeat.Value, treatment.Pieces!.Sum(p => (decimal)p.Amount.Value));
    }

    private static Document Sheet(int pieces, int treatments)
    {
        var stack = string.Join(',', Enumerable.Repeat("""{"formulaId":"pork-rub","on":["one"]}""", treatments));
        return Document.Of(
            $$"""
            {"pile":[{"id":"one","cut":"pork-shoulder","count":{{pieces}},"weightEach":{"value":1.2345,"unit":"kg"} }],
             "treatments":[{{stack}}]}
            """);
    }
}
