using RubLab.Core.Formulas;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;

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
    public void Edible_meat_is_cooked_meat_without_its_bone_which_loses_nothing()
    {
        Assert.Equal(0.7, Given.Pieces("beef-brisket").EdiblePerGreen(70), 1e-12);

        // Of 1000 g green 700 are left, 200 of them bone.
        var boned = Given.Pieces("beef-brisket") with { BonePercent = 20, CookYieldPercent = new Band(50, 70, 80) };
        Assert.Equal(0.5, boned.EdiblePerGreen(70), 1e-12);
        Same(new Band(3.0 / 5, 5.0 / 7, 6.0 / 8), boned.EdiblePerCooked!.Value);
        Assert.Null((boned with { CookYieldPercent = new Band(20, 70, 80) }).EdiblePerCooked);
        Assert.Null((boned with { CookYieldPercent = null, Cut = boned.Cut with { CookYields = [] } }).EdiblePerCooked);
    }

    // A turkey of 10 kg with a fifth bone, whose meat keeps 75 % of its weight: 8 kg of meat become 6, and with 2 kg of
    // bone 8 kg come out. Weighed whole, 75 % would be 7.5 kg, of which 5.5 are meat.
    [Fact]
    public void A_yield_of_the_meat_alone_is_put_on_the_piece_with_its_bone()
    {
        var turkey = Given.Pieces("turkey-whole", 10_000) with { BonePercent = 20, KeptInCookingPercent = Band.Exact(100), PortionGrams = 150 };
        var ofMeat = turkey with { Cut = turkey.Cut with { CookYields = [Yield(YieldBasis.EdiblePortion)] } };
        var ofPiece = turkey with { Cut = turkey.Cut with { CookYields = [Yield(YieldBasis.Green)] } };

        Same(Band.Exact(80), ofMeat.YieldCountedPercent!.Value);
        Same(Band.Exact(75), ofPiece.YieldCountedPercent!.Value);
        Assert.Equal(0.6, ofMeat.EdiblePerGreen(80), 1e-12);
        Assert.Equal(0.55, ofPiece.EdiblePerGreen(75), 1e-12);
        Same(Band.Exact(75), (ofMeat with { BonePercent = 0 }).YieldCountedPercent!.Value);

        // 10 g of salt per kg, 100 g in all, are 12.5 g per kg of 8 kg; a sauce at 50 g/kg of cooked weight is 400 g.
        var salt = Given.Draft(Given.Line("sodium-chloride", null, 10, "g/kg"));
        var ledger = SaltLedger.Of(Given.Pile(ofMeat), 0, [salt.Ratios().On(0)], isWeighed: true);
        Assert.Equal(12.5, ledger.SaltGramsPerKilogramCooked!.Value.Typical, 1e-9);

        // All of its sodium, 39.337 g put on and the meat's own, is in 6 kg of meat.
        var own = ofMeat.RawSodiumMilligramsPer100Grams!.Value * 80;
        Assert.Equal((39_337 + own) / 60, ledger.SodiumMilligramsPer100GramsEaten!.Value.Typical, 1e-6);
        var sauce = (salt with { Kind = FormulaKind.Sauce, Base = RatioBase.Cooked }).Dosed(50).Ratios();
        Assert.Equal(400, BaseWeight.OfPieces(sauce, Given.Pile(ofMeat), 0)![0] * 50, 1e-9);

        static CookYield Yield(YieldBasis basis) => new("roasted", true, Band.Exact(75), basis, Given.NoSource, null);
    }

    private static void Same(Band expected, Band actual)
    {
        Assert.Equal(expected.Low, actual.Low, 1e-12);
        Assert.Equal(expected.Typical, actual.Typical, 1e-12);
        Assert.Equal(expected.High, actual.High, 1e-12);
    }
}
