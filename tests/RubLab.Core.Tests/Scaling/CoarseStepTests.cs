using RubLab.Core.Formulas;
using RubLab.Core.Remarks;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Scaling;

public sealed class CoarseStepTests
{
    private static readonly FormulaDraft SaltAndPepper =
        Given.Draft(Given.Line("salt", "table", 8, "g/kg"), Given.Line("black-pepper", "coarse", 6, "g/kg"));

    [Fact]
    public void A_fine_enough_scale_is_not_remarked_on() =>
        Assert.Empty(Remarks(0.1, "g", Given.Pieces("beef-brisket", 6000)));

    [Theory]
    [InlineData(3333, 0)]
    [InlineData(3200, 1)]
    public void A_step_of_more_than_a_twentieth_of_an_amount_is_coarse(double grams, int remarks) =>
        Assert.Equal(remarks, Remarks(1, "g", Given.Pieces("beef-brisket", grams)).Count(f => f.Pointer == "/treatments/0"));

    [Fact]
    public void A_coarse_step_proposes_a_finer_scale_or_a_larger_batch()
    {
        var findings = Remarks(5, "g", Given.Pieces("beef-brisket", 2500));

        Assert.All(findings, f => Assert.Equal(("scale-too-coarse", Severity.Warning), (f.Code, f.Severity)));
        Assert.Equal(["35 g", "20 g", "15 g"], findings.Select(f => f.Parameters["amount"]));
        Assert.Equal(["5 g", "5 g", "5 g"], findings.Select(f => f.Parameters["step"]));
        Assert.Equal([14.3, 25d, 33.3], findings.Select(f => f.Parameters["percent"]));
        Assert.Equal(["1 g", "1 g", "0.5 g"], findings.Select(f => f.Parameters["suggestedStep"]));
        Assert.Equal([3d, 5d, 7d], findings.Select(f => f.Parameters["multiple"]));
    }

    [Fact]
    public void An_amount_that_comes_to_no_step_at_all_is_the_coarsest_of_all()
    {
        var draft = Given.Draft(Given.Line("salt", "table", 10, "g/kg"), Given.Line("thyme-dried", "leaves", 0.5, "g/kg"));
        var sheet = Given.Sheet(Given.Pile(Given.Pieces("beef-brisket", 500)), WeighingStep.Default, 0, draft.Ratios().On(0));

        Assert.Equal([5, 0], StepsOf(sheet.Treatments[0]));
        var findings = RemarksOn(sheet);
        Assert.Equal([("5 g", "A mix"), ("5 g", "Salt"), ("0.25 g", "Thyme, dried")], findings.Select(f => ((string)f.Parameters["amount"], (string)f.Parameters["what"])));
        var finding = findings[2];
        Assert.Equal("0.25 g", finding.Parameters["amount"]);
        Assert.Equal(400d, finding.Parameters["percent"]);
        Assert.Equal("0.01 g", finding.Parameters["suggestedStep"]);
        Assert.Equal(80d, finding.Parameters["multiple"]);
    }

    [Theory]
    [InlineData(new double[] { 20, 5000, 10, 30 }, 0.5, "0.105 g")]
    [InlineData(new double[] { 20, 500, 10 }, 0.1, "0.101 g")]
    public void The_least_of_all_lost_pieces_is_the_one_remarked_on(double[] grams, double thyme, string amount)
    {
        var draft = Given.Draft(Given.Line("salt", "table", 10, "g/kg"), Given.Line("thyme-dried", "leaves", thyme, "g/kg"));
        var sheet = Given.Sheet(Given.Pile(Given.Pieces("beef-brisket", grams)), WeighingStep.Default, 0, draft.Ratios().On(0));

        Assert.Equal(amount, RemarksOn(sheet)[0].Parameters["amount"]);
    }

    [Fact]
    public void The_smallest_amount_is_remarked_on_wherever_it_stands_and_skipped_pieces_are_not()
    {
        var line = Given.Pieces("beef-brisket", 5000, 950, 400, 700) with { DoseFactors = [0, 1, 1, 1] };

        var pieces = Sheet(1, "g", 0, line);

        Assert.Equal([0, 13, 6, 10], pieces.Treatments[0].Pieces.Steps);
        Assert.Equal(["6 g", "17 g", "12 g"], RemarksOn(pieces).Select(f => f.Parameters["amount"]));
    }

    [Theory]
    [InlineData(500, "g", 680_000, "9500 g", "200 g")]
    [InlineData(1.23456, "g", 200, "2.469 g", "0.1 g")]
    public void Amounts_in_a_remark_are_written_as_a_cook_writes_them(double step, string unit, double grams, string amount, string suggested)
    {
        var draft = Given.Draft(Given.Line("salt", "table", 14, "g/kg"));
        var sheet = Given.Sheet(Given.Pile(Given.Pieces("beef-brisket", grams)), Given.Step(step, unit), 0, draft.Ratios().On(0));

        var finding = Assert.Single(RemarksOn(sheet));
        Assert.Equal((amount, suggested), (finding.Parameters["amount"], finding.Parameters["suggestedStep"]));
    }

    [Fact]
    public void A_piece_that_comes_to_no_step_at_all_is_remarked_on()
    {
        var pile = Given.Pile(Given.Pieces("beef-brisket", 10, 5000));
        var sheet = Given.Sheet(pile, WeighingStep.Default, 0, SaltAndPepper.Ratios().On(0));

        Assert.Equal(0, sheet.Treatments[0].Pieces.Steps[0]);
        Assert.Equal("0.14 g", Assert.Single(RemarksOn(sheet)).Parameters["amount"]);
    }

    [Fact]
    public void A_skipped_piece_and_an_empty_line_are_not_lost_amounts()
    {
        var draft = Given.Draft(Given.Line("salt", "table", 10, "g/kg"), Given.Line("thyme-dried", "leaves", 0, "g/kg"));
        var pile = Given.Pile(Given.Pieces("beef-brisket", 5000, 5000) with { DoseFactors = [1, 0] });

        Assert.Empty(RemarksOn(Given.Sheet(pile, WeighingStep.Default, 0, draft.Ratios().On(0))));
    }

    [Fact]
    public void Ice_that_goes_into_ground_meat_carries_no_small_line()
    {
        // 0.25 % of pepper on 1 kg is 2.5 g; there is most of ice, and next of salt.
        var draft = Given.Draft(Given.Line("salt", "table", 1.6, "%"), Given.Line("black-pepper", "ground", 0.25, "%"), Given.Line("ice", "crushed", 2.5, "%"));
        var findings = new FindingLog(Seed.Catalogue);
        SheetFindings.Notice(
            Given.Sheet(Given.Pile(Given.Pieces("beef-ground-80", 1000)), WeighingStep.Default, 0, draft.Ratios().On(0)), Seed.Catalogue, findings, _ => "");

        Assert.Equal("Salt", Assert.Single(findings.Findings, f => f.Code == "premix").Parameters["carrier"]);
    }

    private static BatchSheet Sheet(double step, string unit, double overage, PileLine line) =>
        Given.Sheet(Given.Pile(line), Given.Step(step, unit), overage, SaltAndPepper.Ratios().On(0));

    private static IReadOnlyList<Finding> Remarks(double step, string unit, PileLine line) => RemarksOn(Sheet(step, unit, 0, line));

    private static IReadOnlyList<Finding> RemarksOn(BatchSheet sheet)
    {
        var findings = new FindingLog(Seed.Catalogue);
        SheetFindings.Notice(sheet, Seed.Catalogue, findings, t => $"/treatments/{t}");

        // A premix and the coat are remarked on besides, and have tests of their own.
        return [.. findings.Findings.Where(f => f.Code == "scale-too-coarse")];
    }

    private static long[] StepsOf(TreatmentSheet sheet) => [.. sheet.Lines.Select(l => l.Steps)];
}
