using RubLab.Core.Formulas;
using RubLab.Core.Quantities;

namespace RubLab.Core.Tests.Scaling;

public sealed class PileTests
{
    [Fact]
    public void Pieces_are_numbered_through_the_pile()
    {
        var pile = Given.Pile(Given.Pieces("beef-brisket", 6000, 5500), Given.Pieces("pork-shoulder", 4000));

        Assert.Equal(3, pile.PieceCount);
        Assert.Equal(0, pile.FirstPieceOf(0));
        Assert.Equal(2, pile.FirstPieceOf(1));
        Assert.Equal([6000, 5500], pile.GreenGramsOf(0).ToArray());
        Assert.Equal([4000], pile.GreenGramsOf(1).ToArray());
        Assert.Equal(15500, pile.GreenGrams);
        Assert.True(pile.IsWeighed);
    }

    [Fact]
    public void Meat_as_bought_is_counted_trimmed()
    {
        var pile = Given.Pile(Given.Pieces("beef-brisket", 5000) with { WeightIs = WeightBasis.Purchase, TrimLossPercent = 20 });

        Assert.Equal(4000, pile.GreenGrams, 1e-9);
        Assert.True(pile.IsWeighed);
    }

    [Fact]
    public void Meat_as_bought_without_a_trim_is_planned_with_the_cut_s_typical_trim()
    {
        var pile = Given.Pile(Given.Pieces("beef-brisket", 5000) with { WeightIs = WeightBasis.Purchase }, Given.Pieces("beef-brisket", 1000));

        Assert.Equal(4500 + 1000, pile.GreenGrams, 1e-9);
        Assert.False(pile.IsWeighed);
    }

    [Fact]
    public void A_cut_nobody_trimmed_is_counted_whole()
    {
        var cut = Given.Cut("beef-brisket") with { TrimLossPercent = null };

        Assert.Equal(5000, Given.Pile(Given.Pieces("beef-brisket", 5000) with { Cut = cut, WeightIs = WeightBasis.Purchase }).GreenGrams);
    }

    [Fact]
    public void A_trim_stated_for_green_meat_is_not_taken_off_again() =>
        Assert.Equal(5000, Given.Pile(Given.Pieces("beef-brisket", 5000) with { TrimLossPercent = 20 }).GreenGrams);

    [Fact]
    public void The_mean_dose_factor_is_weighted_by_weight()
    {
        var pile = Given.Pile(
            Given.Pieces("beef-brisket", 1000, 3000) with { DoseFactors = [2, 0] },
            Given.Pieces("beef-brisket", 1000),
            Given.Pieces("beef-brisket") with { DoseFactors = [] });

        Assert.Equal(0.5, pile.MeanDoseFactorOf(0), 1e-12);
        Assert.Equal([2, 0], pile.DoseFactorsOf(0).ToArray());
        Assert.Equal(1, pile.MeanDoseFactorOf(1));
        Assert.Equal([1], pile.DoseFactorsOf(1).ToArray());
        Assert.Equal(1, pile.MeanDoseFactorOf(2));
    }

    [Fact]
    public void The_kitchen_s_own_yield_and_retention_come_before_the_reference()
    {
        var reference = Given.Pieces("beef-brisket", 1000);
        var own = reference with { CookYieldPercent = new Band(50, 60, 70), KeptInCookingPercent = new Band(80, 90, 95) };

        Assert.Equal(new Band(56, 56, 59.3), reference.YieldCountedPercent);
        Assert.Equal(new Band(47.5, 66.1, 69.3), reference.KeptCountedPercent);
        Assert.Equal(new Band(50, 60, 70), own.YieldCountedPercent);
        Assert.Equal(new Band(80, 90, 95), own.KeptCountedPercent);
        Assert.Equal(Band.Exact(100), (own with { JuicesReturned = true }).KeptCountedPercent);
    }

    [Fact]
    public void A_cut_without_figures_has_no_yield_and_no_retention()
    {
        var line = Given.Pieces("beef-brisket", 1000) with
        {
            Cut = Given.Cut("beef-brisket") with { CookYields = [], KeptInCookingPercent = null },
        };

        Assert.Null(line.YieldCountedPercent);
        Assert.Null(line.KeptCountedPercent);
    }

    [Fact]
    public void Edible_meat_is_cooked_meat_without_its_bone()
    {
        Assert.Equal(0.7, Given.Pieces("beef-brisket").EdiblePerGreen(70), 1e-12);
        Assert.Equal(0.56, (Given.Pieces("beef-brisket") with { BonePercent = 20 }).EdiblePerGreen(70), 1e-12);
    }
}
