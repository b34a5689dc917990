using RubLab.Core.Formulas;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Scaling;

public sealed class BatchSheetTests
{
    private static readonly FormulaDraft SaltAndPepper =
        Given.Draft(Given.Line("salt", "table", 8, "g/kg"), Given.Line("black-pepper", "coarse", 6, "g/kg"));

    [Fact]
    public void Two_pieces_get_their_dose_and_the_bowl_its_overage()
    {
        var sheet = Sheet(1, "g", 10, Given.Pieces("beef-brisket", 6000, 5500)).Treatments[0];

        Assert.Equal([84, 77], sheet.Pieces.Steps);
        Assert.Equal(161, sheet.Pieces.TotalSteps);
        Assert.Equal(177, StepsOf(sheet).Sum());
        Assert.Equal([101, 76], StepsOf(sheet));
    }

    [Fact]
    public void Scaling_of_zero_weight_gives_zero_lines()
    {
        var sheet = Sheet(1, "g", 10, Given.Pieces("beef-brisket")).Treatments[0];

        Assert.Empty(sheet.Pieces.Steps);
        Assert.Equal(0, sheet.Pieces.TotalSteps);
        Assert.Equal(0, StepsOf(sheet).Sum());
        Assert.Equal([0, 0], StepsOf(sheet));
    }

    [Theory]
    [InlineData(new double[] { 200, 6700, 1600, 1800, 3000, 2100, 900, 7700, 4500, 1900, 7100 })]
    [InlineData(new double[] { 900, 1800, 6700, 1900, 1600, 7700, 3000, 2100, 7100, 4500, 200 })]
    public void A_total_of_exactly_half_a_step_goes_up_in_whatever_order_it_is_summed(double[] grams)
    {
        var ratios = Given.Draft(Given.Line("salt", "table", 19, "g/kg")).Ratios();

        var sheet = Given.Sheet(Given.Pile(Given.Pieces("beef-brisket", grams)), WeighingStep.Default, 0, ratios.On(0)).Treatments[0];

        Assert.Equal(713, sheet.Pieces.TotalSteps);
        Assert.Equal(713, StepsOf(sheet).Sum());
    }

    [Fact]
    public void A_skipped_piece_gets_nothing_and_the_bowl_less()
    {
        var sheet = Sheet(1, "g", 0, Given.Pieces("beef-brisket", 6000, 5500, 5000) with { DoseFactors = [1, 0, 0.5] }).Treatments[0];

        Assert.Equal([84, 0, 35], sheet.Pieces.Steps);
        Assert.Equal(119, StepsOf(sheet).Sum());
    }

    [Fact]
    public void A_treatment_s_own_dose_scales_every_line()
    {
        var treatment = SaltAndPepper.Ratios().On(0) with { DoseGramsPerKilogram = 28 };
        var sheet = Given.Sheet(Given.Pile(Given.Pieces("beef-brisket", 1000)), WeighingStep.Default, 0, treatment).Treatments[0];

        Assert.Equal([28], sheet.Pieces.Steps);
        Assert.Equal([16, 12], StepsOf(sheet));
        Assert.Equal(2, treatment.DoseScale);
    }

    [Fact]
    public void Each_application_takes_the_full_dose()
    {
        var treatment = SaltAndPepper.Ratios().On(0) with { Applications = 3 };

        Assert.Equal([42], Given.Sheet(Given.Pile(Given.Pieces("beef-brisket", 1000)), WeighingStep.Default, 0, treatment).Treatments[0].Pieces.Steps);
    }

    [Fact]
    public void A_treatment_on_one_line_leaves_the_others_alone()
    {
        var pile = Given.Pile(Given.Pieces("beef-brisket", 1000, 1000), Given.Pieces("pork-shoulder", 2000));
        var sheet = Given.Sheet(pile, WeighingStep.Default, 0, SaltAndPepper.Ratios().On(1), SaltAndPepper.Ratios().On(0, 1));

        Assert.Equal([28], sheet.Treatments[0].Pieces.Steps);
        Assert.Equal([14, 14, 28], sheet.Treatments[1].Pieces.Steps);
    }

    [Fact]
    public void A_cooked_base_counts_cooked_weight()
    {
        var ratios = (SaltAndPepper with { Base = RatioBase.Cooked }).Ratios();

        Assert.Equal([784], Given.Sheet(Given.Pile(Given.Pieces("beef-brisket", 10_000)), Given.Step(0.1, "g"), 0, ratios.On(0)).Treatments[0].Pieces.Steps);
    }

    [Fact]
    public void A_base_the_pile_does_not_tell_is_a_mistake_of_the_caller()
    {
        var ratios = (SaltAndPepper with { Base = RatioBase.Portion }).Ratios();

        Assert.Throws<ArgumentException>(() => Given.Sheet(Given.Pile(Given.Pieces("beef-brisket", 1000)), WeighingStep.Default, 0, ratios.On(0)));
    }

    [Fact]
    public void A_card_for_meat_as_bought_puts_on_the_trimmed_piece_what_the_card_would()
    {
        var card = Given.Draft(Given.Line("salt", "table", 10, "g")).WrittenFor(1, "kg", WeightBasis.Purchase).Ratios();
        var bought = Given.Pieces("beef-brisket", 5000) with { WeightIs = WeightBasis.Purchase, TrimLossPercent = 20 };

        Assert.Equal([50], Given.Sheet(Given.Pile(bought), WeighingStep.Default, 0, card.On(0)).Treatments[0].Pieces.Steps);
    }

    private static BatchSheet Sheet(double step, string unit, double overage, PileLine line) =>
        Given.Sheet(Given.Pile(line), Given.Step(step, unit), overage, SaltAndPepper.Ratios().On(0));

    private static long[] StepsOf(TreatmentSheet sheet) => [.. sheet.Lines.Select(l => l.Steps)];
}
