using CsCheck;
using RubLab.Core.Formulas;
using RubLab.Core.Remarks;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Formulas;

public sealed class LineChangeTests
{
    private static readonly string[] Manners = ["g", "tbsp", "g/kg", "parts-by-mass", "parts-by-volume"];

    private static readonly Gen<Formula> Formulas = Gen.Select(
        Gen.Int[0, Manners.Length - 1], Gen.Double[0.5, 20].Array[3], Gen.Double[5, 40], Gen.Bool, Gen.Bool, (manner, amounts, dose, isDosed, asBought) =>
        {
            var unit = Manners[manner];
            var draft = Given.Draft(
                Given.Line("salt", "table", amounts[0], unit), Given.Line("black-pepper", "ground", amounts[1], unit),
                Given.Line("soy-sauce-shoyu", null, amounts[2], unit));
            draft = manner < 2 ? draft.WrittenFor(2, "kg", asBought ? WeightBasis.Purchase : WeightBasis.Green) : draft;
            return (isDosed || manner > 2 ? draft.Dosed(dose) : draft).Sound();
        });

    [Fact]
    public void Holding_the_salt_keeps_salt_per_kilogram_whichever_line_changes() =>
        Law.Holds(Gen.Select(Formulas, Gen.Int[0, 2], Gen.Double[0.1, 40]), 5_000, c =>
        {
            var (formula, line, amount) = c;
            var changed = LineChange.WithAmount(formula, line, amount, HoldOnChange.Salt, Seed.Catalogue)!;

            Assert.Equal(amount, changed.Lines[line].Amount);
            Same(SaltOn(formula), SaltOn(changed));
        });

    [Fact]
    public void Holding_the_dose_keeps_the_mix_per_kilogram_whichever_line_changes() =>
        Law.Holds(Gen.Select(Formulas, Gen.Int[0, 2], Gen.Double[0.1, 40]), 5_000, c =>
        {
            var (formula, line, amount) = c;
            var changed = LineChange.WithAmount(formula, line, amount, HoldOnChange.Dose, Seed.Catalogue)!;

            Assert.Equal(amount, changed.Lines[line].Amount);
            Same(MixOn(formula), MixOn(changed));
        });

    [Fact]
    public void Another_grind_is_another_volume_of_the_same_mass() => Law.Holds(Formulas, 5_000, formula =>
    {
        Assert.True(Given.Ingredient("black-pepper").TryFindForm("coarse", out var coarse));
        var changed = LineChange.WithForm(formula, 1, coarse, Seed.Catalogue)!;
        var isByVolume = formula.Lines[1].Unit.Symbol is "tbsp" or "parts-by-volume";

        Assert.Equal("coarse", changed.Lines[1].NamedForm!.Id);
        Assert.Equal(isByVolume, changed.Lines[1].Amount != formula.Lines[1].Amount);
        for (var i = 0; i < 3; i++)
        {
            Same(Ratios(formula).Lines[i].RatioGramsPerKilogram.Typical, Ratios(changed).Lines[i].RatioGramsPerKilogram.Typical);
        }

        Same(SaltOn(formula), SaltOn(changed));
    });

    [Fact]
    public void Pepper_is_bulk_and_more_of_it_at_a_held_dose_means_less_salt()
    {
        var rub = Given.Draft(Given.Line("sodium-chloride", null, 10, "parts-by-mass"), Given.Line("black-pepper", "ground", 10, "parts-by-mass")).Dosed(20).Sound();

        Assert.Equal(5, SaltOn(LineChange.WithAmount(rub, 1, 30, HoldOnChange.Dose, Seed.Catalogue)!), 1e-12);
        Assert.Equal(40, MixOn(LineChange.WithAmount(rub, 1, 30, HoldOnChange.Salt, Seed.Catalogue)!), 1e-12);
    }

    [Fact]
    public void Salt_that_is_not_there_cannot_be_held()
    {
        var rub = Given.Draft(Given.Line("salt", "table", 0, "parts-by-mass"), Given.Line("black-pepper", "ground", 10, "parts-by-mass")).Dosed(20).Sound();

        Assert.Null(LineChange.WithAmount(rub, 1, 30, HoldOnChange.Salt, Seed.Catalogue));
        Assert.Null(LineChange.WithAmount(rub, 0, 5, HoldOnChange.Salt, Seed.Catalogue));
        Assert.NotNull(LineChange.WithAmount(rub, 0, 5, HoldOnChange.Dose, Seed.Catalogue));
    }

    [Theory]
    [InlineData("g/kg")]
    [InlineData("parts-by-mass")]
    [InlineData("parts-by-volume")]
    [InlineData("g")]
    public void A_mix_of_nothing_is_no_mix_whatever_is_held(string unit)
    {
        var rub = Given.Draft(Given.Line("salt", "table", 3, unit), Given.Line("black-pepper", "ground", 0, unit)).Dosed(20).Sound();

        Assert.All(Enum.GetValues<HoldOnChange>(), hold =>
        {
            Assert.Throws<ArgumentException>(() => LineChange.WithAmount(rub, 0, 0, hold, Seed.Catalogue));
            Assert.NotNull(LineChange.WithAmount(rub, 1, 0, hold, Seed.Catalogue));
        });
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void An_amount_is_finite_and_not_negative(double amount)
    {
        var rub = Given.Draft(Given.Line("salt", "table", 3, "g/kg")).Sound();

        Assert.Throws<ArgumentOutOfRangeException>(() => LineChange.WithAmount(rub, 0, amount, HoldOnChange.Dose, Seed.Catalogue));
    }

    [Fact]
    public void A_form_nobody_weighed_cannot_take_over_a_volume()
    {
        var bare = Given.Form("bare", null, isDefault: false);

        Assert.Null(LineChange.WithForm(Given.Draft(Given.Line("salt", "table", 1, "tbsp")).WrittenFor(1, "kg").Sound(), 0, bare, Seed.Catalogue));
        Assert.NotNull(LineChange.WithForm(Given.Draft(Given.Line("salt", "table", 10, "g/kg")).Sound(), 0, bare, Seed.Catalogue));
    }

    private static FormulaRatios Ratios(Formula formula) => FormulaRatios.Of(formula, Seed.Catalogue, new FindingLog(Seed.Catalogue), "");

    // Meat bought and trimmed by a fifth, so that a base of meat as bought and one of trimmed meat tell apart.
    private static Pile Trimmed() => Given.Pile(
        Given.Pieces("beef-brisket", 5000) with { WeightIs = WeightBasis.Purchase, TrimLossPercent = 20 });

    private static double SaltOn(Formula formula) =>
        SaltLedger.Of(Trimmed(), 0, [Ratios(formula).On(0)], isWeighed: true).SaltGramsPerKilogramGreen.Typical;

    private static double MixOn(Formula formula) =>
        BaseWeight.PerKilogramGreen(Ratios(formula), Trimmed(), 0)!.Value * Ratios(formula).DoseGramsPerKilogram;

    private static void Same(double expected, double actual) => Assert.Equal(expected, actual, expected * 1e-11);
}
