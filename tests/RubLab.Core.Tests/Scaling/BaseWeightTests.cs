using RubLab.Core.Formulas;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Scaling;

public sealed class BaseWeightTests
{
    private static readonly FormulaDraft OneGram = Given.Draft(Given.Line("salt", "table", 1, "g/kg"));

    [Fact]
    public void A_green_ratio_stands_on_green_weight() =>
        Assert.Equal(1, PerGreen(OneGram.Ratios(), Given.Pieces("beef-brisket", 1000), 1000));

    [Fact]
    public void A_cooked_ratio_stands_on_the_typical_yield() =>
        Assert.Equal(0.56, PerGreen(Based(RatioBase.Cooked), Given.Pieces("beef-brisket", 1000), 1000)!.Value, 1e-12);

    [Fact]
    public void A_portion_ratio_stands_on_whole_portions()
    {
        var line = Given.Pieces("beef-brisket", 1000) with { PortionGrams = 150, BonePercent = 10 };

        // Of 560 g cooked 100 g are bone: 460 g is three portions of 150 g.
        Assert.Equal(0.45, PerGreen(Based(RatioBase.Portion), line, 1000)!.Value, 1e-12);
        Assert.Equal(0.46, PerGreen(Based(RatioBase.Portion), line, 0)!.Value, 1e-12);
    }

    [Fact]
    public void A_base_the_pile_does_not_tell_is_none()
    {
        var bare = Given.Pieces("beef-brisket", 1000) with { Cut = Given.Cut("beef-brisket") with { CookYields = [] } };

        Assert.Null(PerGreen(Based(RatioBase.Cooked), bare, 1000));
        Assert.Null(PerGreen(Based(RatioBase.Portion), bare with { PortionGrams = 150 }, 1000));
        Assert.Null(PerGreen(Based(RatioBase.Portion), Given.Pieces("beef-brisket", 1000), 1000));
        Assert.Null(PerGreen(
            (OneGram with { Base = RatioBase.Area }).Dosed(1, "g/100cm2").Ratios(),
            bare with { Cut = Given.Cut("beef-brisket") with { Shape = null } }, 1000));
        Assert.Null(PerGreen(
            (OneGram with { Base = RatioBase.Area }).Dosed(1, "g/100cm2").Ratios(), Given.Pieces("beef-brisket", 1000), 0));
    }

    [Fact]
    public void A_card_for_meat_as_bought_gives_trimmed_meat_what_it_would_have_had_before()
    {
        var card = Given.Draft(Given.Line("salt", "table", 10, "g")).WrittenFor(1, "kg", WeightBasis.Purchase).Ratios();
        var bought = Given.Pieces("beef-brisket", 5000) with { WeightIs = WeightBasis.Purchase, TrimLossPercent = 20 };

        Assert.Equal(1 / 0.8, PerGreen(card, bought, 4000)!.Value, 1e-12);
        Assert.Equal(1 / 0.9, PerGreen(card, Given.Pieces("beef-brisket", 4000), 4000)!.Value, 1e-12);
        Assert.Equal(1, PerGreen(
            card, Given.Pieces("beef-brisket", 4000) with { Cut = Given.Cut("beef-brisket") with { TrimLossPercent = null } }, 4000));
    }

    [Fact]
    public void Each_piece_has_its_own_base_before_its_dose_factor_and_the_line_one_after()
    {
        var pile = Given.Pile(Given.Pieces("beef-brisket", 1000, 3000) with { DoseFactors = [2, 0] });

        Assert.Equal([0.56, 1.68], BaseWeight.OfPieces(Based(RatioBase.Cooked), pile, 0)!.Select(b => Math.Round(b, 12)));
        Assert.Equal(0.56 * 2 / 4, BaseWeight.PerKilogramGreen(Based(RatioBase.Cooked), pile, 0)!.Value, 1e-12);
    }

    // Pieces without a weight stand for a question about the cut alone.
    private static double? PerGreen(FormulaRatios ratios, PileLine line, double greenGrams)
    {
        var pile = Given.Pile(line with { WeighedGrams = greenGrams > 0 ? [greenGrams / line.GreenPerWeighed] : [] });
        var perGreen = BaseWeight.PerKilogramGreen(ratios, pile, 0);
        if (greenGrams > 0)
        {
            var piece = BaseWeight.OfPieces(ratios, pile, 0)?[0] * 1000 / greenGrams;
            Assert.Equal(perGreen is null, piece is null);
            Assert.Equal(perGreen ?? 0, piece ?? 0, 1e-12);
        }

        return perGreen;
    }

    private static FormulaRatios Based(RatioBase on) => (OneGram with { Base = on }).Ratios();
}
