using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Salt;

public sealed class SaltLedgerTests
{
    private static readonly FormulaDraft Salted = Given.Draft(
        Given.Line("salt", "table", 10, "g/kg"), Given.Line("soy-sauce-shoyu", "liquid", 20, "g/kg"), Given.Line("baking-soda", "powder", 1, "g/kg"));

    private static readonly PileLine Brisket = Given.Pieces("beef-brisket", 6000);

    [Fact]
    public void Salt_is_counted_apart_from_sodium_and_from_what_is_weighed_as_salt()
    {
        var ledger = Of(Brisket, Salted.Ratios().On(0));

        Assert.Equal(10, ledger.SaltWeighedGramsPerKilogramGreen, 1e-12);
        Assert.Equal(9.85281 + 2.7928, ledger.SaltGramsPerKilogramGreen.Typical, 1e-9);
        Assert.Equal(3.8758 + 1.0986 + 0.2736, ledger.AddedSodiumGramsPerKilogramGreen.Typical, 1e-9);
        Assert.Equal(0.69, ledger.OwnSodiumGramsPerKilogramGreen!.Value, 1e-12);
    }

    [Fact]
    public void Each_line_has_its_entry()
    {
        var ledger = Of(Brisket, Salted.Ratios().On(0), Given.Draft(Given.Line("black-pepper", "ground", 5, "g/kg")).Ratios().On(0));

        Assert.Equal([0, 0, 0, 1], ledger.Entries.Select(e => e.Treatment));
        Assert.Equal(["salt", "soy-sauce-shoyu", "baking-soda", "black-pepper"], ledger.Entries.Select(e => e.Line.Ingredient.Id));
        Assert.Equal([9.85281, 2.7928, 0, 0], ledger.Entries.Select(e => Math.Round(e.SaltGramsPerKilogramGreen.Typical, 9)));
        Assert.Equal([3.8758, 1.0986, 0.2736, 0.001], ledger.Entries.Select(e => Math.Round(e.SodiumGramsPerKilogramGreen.Typical, 9)));
        Assert.Equal(ledger.SaltGramsPerKilogramGreen.Typical, ledger.Entries.Sum(e => e.SaltGramsPerKilogramGreen.Typical), 1e-12);
    }

    [Fact]
    public void What_falls_off_is_not_counted_but_was_weighed()
    {
        var ledger = Of(Brisket, Given.Draft(Given.Line("sodium-chloride", null, 10, "g/kg")).Ratios().On(0) with { RetainedPercent = new Band(70, 80, 95) });

        Assert.Equal(7, ledger.SaltGramsPerKilogramGreen.Low, 1e-12);
        Assert.Equal(8, ledger.SaltGramsPerKilogramGreen.Typical, 1e-12);
        Assert.Equal(9.5, ledger.SaltGramsPerKilogramGreen.High, 1e-12);
        Assert.Equal(10, ledger.SaltWeighedGramsPerKilogramGreen, 1e-12);
    }

    [Fact]
    public void Applications_and_a_dose_of_its_own_multiply()
    {
        var treatment = Given.Draft(Given.Line("salt", "table", 10, "g/kg")).Ratios().On(0) with { Applications = 3, DoseGramsPerKilogram = 2 };

        var ledger = Of(Brisket, treatment);

        Assert.Equal(6, ledger.SaltWeighedGramsPerKilogramGreen, 1e-12);
        Assert.Equal(6 * 0.985281, ledger.SaltGramsPerKilogramGreen.Typical, 1e-12);
        Assert.Equal(6 * 0.985281, ledger.Entries[0].SaltGramsPerKilogramGreen.Typical, 1e-12);
    }

    [Fact]
    public void A_ratio_to_cooked_weight_is_less_on_green_weight()
    {
        var treatment = (Salted with { Base = RatioBase.Cooked }).Ratios().On(0);

        Assert.Equal(5.6, Of(Brisket, treatment).SaltWeighedGramsPerKilogramGreen, 1e-12);
    }

    [Fact]
    public void A_ratio_to_what_is_served_counts_whole_portions_of_the_whole_line()
    {
        var treatment = (Salted with { Base = RatioBase.Portion }).Ratios().On(0);
        var line = Given.Pieces("beef-brisket", 600, 400) with { PortionGrams = 150 };

        // 1000 g x 0.56 is three portions of 150 g.
        Assert.Equal(4.5, Of(line, treatment).SaltWeighedGramsPerKilogramGreen, 1e-12);
        Assert.Equal([837, 558], Given.Sheet(Given.Pile(line), Given.Step(0.01, "g"), 0, treatment).Treatments[0].Pieces.Steps);
    }

    [Fact]
    public void A_card_in_cups_put_on_by_a_stated_dose_is_uncertain_in_its_shares_and_not_in_its_whole()
    {
        var card = Given.Draft(Given.Line("salt", "table", 1, "tsp"), Given.Line("black-pepper", "ground", 1, "tsp")).WrittenFor(1, "kg").Ratios();
        var ledger = SaltLedger.Of(Given.Pile(Brisket), 0, [card.On(0) with { DoseGramsPerKilogram = 20 }], isWeighed: false);

        Assert.Equal(20 * 0.985281 * 5.4 / (5.4 + 2.53), ledger.Entries[0].SaltGramsPerKilogramGreen.Low, 1e-9);
        Assert.Equal(20 * 0.985281 * 6.0 / 8.3, ledger.Entries[0].SaltGramsPerKilogramGreen.Typical, 1e-9);
        Assert.Equal(20 * 0.985281 * 6.6 / (6.6 + 2.07), ledger.Entries[0].SaltGramsPerKilogramGreen.High, 1e-9);
        Assert.Equal(ledger.Entries[0].SaltGramsPerKilogramGreen.High, ledger.SaltGramsPerKilogramGreen.High, 1e-9);
    }

    [Fact]
    public void A_treatment_on_another_line_is_not_counted()
    {
        var pile = Given.Pile(Brisket, Given.Pieces("pork-shoulder", 4000));

        Assert.Empty(SaltLedger.Of(pile, 0, [Salted.Ratios().On(1)], isWeighed: true).Entries);
        Assert.Equal(Band.Exact(0), SaltLedger.Of(pile, 0, [Salted.Ratios().On(1)], isWeighed: true).SaltGramsPerKilogramGreen);
        Assert.Equal(3, SaltLedger.Of(pile, 1, [Salted.Ratios().On(1)], isWeighed: true).Entries.Count);
    }

    [Fact]
    public void Skipped_pieces_thin_the_mean()
    {
        var line = Given.Pieces("beef-brisket", 6000, 2000) with { DoseFactors = [1, 0] };

        Assert.Equal(7.5, Of(line, Given.Draft(Given.Line("salt", "table", 10, "g/kg")).Ratios().On(0)).SaltWeighedGramsPerKilogramGreen, 1e-12);
    }

    [Fact]
    public void Salt_per_kilogram_cooked_is_what_cooking_keeps_in_less_meat()
    {
        var line = Brisket with { CookYieldPercent = new Band(50, 60, 75), KeptInCookingPercent = new Band(60, 75, 90) };

        var cooked = Of(line, Given.Draft(Given.Line("sodium-chloride", null, 10, "g/kg")).Ratios().On(0)).SaltGramsPerKilogramCooked!.Value;

        Assert.Equal(10 * 0.60 / 0.75, cooked.Low, 1e-12);
        Assert.Equal(10 * 0.75 / 0.60, cooked.Typical, 1e-12);
        Assert.Equal(10 * 0.90 / 0.50, cooked.High, 1e-12);
    }

    [Fact]
    public void A_portion_carries_added_and_own_sodium_without_the_bone()
    {
        var line = Brisket with
        {
            CookYieldPercent = Band.Exact(60),
            KeptInCookingPercent = Band.Exact(75),
            BonePercent = 20,
            PortionGrams = 150,
        };

        var ledger = Of(line, Given.Draft(Given.Line("sodium-chloride", null, 10, "g/kg")).Ratios().On(0));

        Assert.Equal(0.69 * 0.8, ledger.OwnSodiumGramsPerKilogramGreen!.Value, 1e-12);

        // Of 1000 g green 600 g are left, 200 g of them bone.
        Assert.Equal((3.9337 + (0.69 * 0.8)) * 0.75 / 0.4 * 150, ledger.SodiumMilligramsPerPortion!.Value.Typical, 1e-9);
    }

    [Fact]
    public void Juices_returned_bring_all_of_it_back()
    {
        var ledger = Of(Brisket with { JuicesReturned = true, CookYieldPercent = Band.Exact(50) }, Given.Draft(Given.Line("sodium-chloride", null, 10, "g/kg")).Ratios().On(0));

        Assert.Equal(20, ledger.SaltGramsPerKilogramCooked!.Value.Typical, 1e-12);
    }

    [Fact]
    public void What_is_not_known_is_not_made_up()
    {
        var cut = Given.Cut("beef-brisket");
        var treatment = Salted.Ratios().On(0);

        Assert.Null(Of(Brisket with { Cut = cut with { CookYields = [] } }, treatment).SaltGramsPerKilogramCooked);
        Assert.Null(Of(Brisket with { Cut = cut with { KeptInCookingPercent = null } }, treatment).SaltGramsPerKilogramCooked);
        Assert.Null(Of(Brisket with { CookYieldPercent = new Band(0, 50, 60) }, treatment).SaltGramsPerKilogramCooked);
        Assert.Null(Of(Brisket, treatment).SodiumMilligramsPerPortion);
        Assert.Null(Of(Brisket with { Cut = cut with { Composition = null }, PortionGrams = 150 }, treatment).SodiumMilligramsPerPortion);
        Assert.Null(Of(Brisket with { Cut = cut with { Composition = null } }, treatment).OwnSodiumGramsPerKilogramGreen);
        Assert.Null(Of(Brisket with { BonePercent = 100, PortionGrams = 150 }, treatment).SodiumMilligramsPerPortion);
        Assert.NotNull(Of(Brisket with { PortionGrams = 150 }, treatment).SodiumMilligramsPerPortion);
    }

    [Fact]
    public void A_weighed_mix_has_no_doubt_left_but_a_card_in_cups_has()
    {
        var card = Given.Draft(Given.Line("salt", "table", 1, "tbsp")).WrittenFor(1, "kg").Ratios().On(0);
        var pile = Given.Pile(Brisket);

        Assert.True(SaltLedger.Of(pile, 0, [card], isWeighed: true).SaltGramsPerKilogramGreen.IsExact);
        Assert.Equal(18 * 0.985281 * 0.9, SaltLedger.Of(pile, 0, [card], isWeighed: false).SaltGramsPerKilogramGreen.Low, 1e-9);
        Assert.Equal(18 * 0.985281 * 1.1, SaltLedger.Of(pile, 0, [card], isWeighed: false).SaltGramsPerKilogramGreen.High, 1e-9);
    }

    [Fact]
    public void A_base_the_line_does_not_tell_is_a_mistake_of_the_caller() => Assert.Throws<ArgumentException>(
        () => Of(Brisket, (Salted with { Base = RatioBase.Portion }).Ratios().On(0)));

    private static SaltLedger Of(PileLine line, params Treatment[] treatments) =>
        SaltLedger.Of(Given.Pile(line), 0, treatments, isWeighed: true);
}
