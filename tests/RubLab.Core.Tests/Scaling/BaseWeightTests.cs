using RubLab.Core.Formulas;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Scaling;

public sealed class BaseWeightTests
{
    private static readonly FormulaDraft OneGram = Given.Draft(Given.Line("salt", "table", 1, "g/kg"));

    [Fact]
    public void A_green_ratio_stands_on_green_weight() =>
        Assert.Equal(1, BaseWeight.PerGreen(OneGram.Ratios(), Given.Pieces("beef-brisket", 1000), 1000));

    [Fact]
    public void A_cooked_ratio_stands_on_the_typical_yield() =>
        Assert.Equal(0.56, BaseWeight.PerGreen(Based(RatioBase.Cooked), Given.Pieces("beef-brisket", 1000), 1000)!.Value, 1e-12);

    [Fact]
    public void A_portion_ratio_stands_on_whole_portions()
    {
        var line = Given.Pieces("beef-brisket", 1000) with { PortionGrams = 150, BonePercent = 10 };

        // 1000 x 0.9 x 0.56 = 504 g is three portions of 150 g.
        Assert.Equal(0.45, BaseWeight.PerGreen(Based(RatioBase.Portion), line, 1000)!.Value, 1e-12);
        Assert.Equal(0.504, BaseWeight.PerGreen(Based(RatioBase.Portion), line, 0)!.Value, 1e-12);
    }

    [Fact]
    public void A_base_the_pile_does_not_tell_is_none()
    {
        var bare = Given.Pieces("beef-brisket", 1000) with { Cut = Given.Cut("beef-brisket") with { CookYields = [] } };

        Assert.Null(BaseWeight.PerGreen(Based(RatioBase.Cooked), bare, 1000));
        Assert.Null(BaseWeight.PerGreen(Based(RatioBase.Portion), bare with { PortionGrams = 150 }, 1000));
        Assert.Null(BaseWeight.PerGreen(Based(RatioBase.Portion), Given.Pieces("beef-brisket", 1000), 1000));
        Assert.Null(BaseWeight.PerGreen(
            (OneGram with { Base = RatioBase.Area }).Dosed(1, "g/100cm2").Ratios(), Given.Pieces("beef-brisket", 1000), 1000));
    }

    [Fact]
    public void A_card_for_meat_as_bought_gives_trimmed_meat_what_it_would_have_had_before()
    {
        var card = Given.Draft(Given.Line("salt", "table", 10, "g")).WrittenFor(1, "kg", WeightBasis.Purchase).Ratios();
        var bought = Given.Pieces("beef-brisket", 5000) with { WeightIs = WeightBasis.Purchase, TrimLossPercent = 20 };

        Assert.Equal(1 / 0.8, BaseWeight.PerGreen(card, bought, 4000)!.Value, 1e-12);
        Assert.Equal(1 / 0.9, BaseWeight.PerGreen(card, Given.Pieces("beef-brisket", 4000), 4000)!.Value, 1e-12);
        Assert.Equal(1, BaseWeight.PerGreen(
            card, Given.Pieces("beef-brisket", 4000) with { Cut = Given.Cut("beef-brisket") with { TrimLossPercent = null } }, 4000));
    }

    private static FormulaRatios Based(RatioBase on) => (OneGram with { Base = on }).Ratios();
}
