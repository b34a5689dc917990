using RubLab.Core.Curing;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Curing;

public sealed class LimitCheckTests
{
    private static readonly PileLine Loin = Given.Pieces("pork-loin", 4000) with { BonePercent = 0, CookYieldPercent = Band.Exact(75) };

    [Theory]
    // Dry: 1 oz to 100 lb is 625 ppm, bacon 200. Ground: 156.25. Pumped: 200, bacon 120.
    [InlineData("nitrite-dry", "other", FormulaKind.Rub, 625)]
    [InlineData("nitrite-bacon-dry", "bacon", FormulaKind.Rub, 200)]
    [InlineData("nitrite-bacon-dry", null, FormulaKind.Rub, 200)]
    [InlineData("nitrite-injection", "other", FormulaKind.Injection, 200)]
    [InlineData("nitrite-bacon-injection", null, FormulaKind.Injection, 120)]
    [InlineData("nitrite-soak", "other", FormulaKind.Soak, 200)]
    [InlineData("nitrite-bacon-soak", "bacon", FormulaKind.Soak, 120)]
    public void A_cap_is_kept_up_to_it_and_not_beyond(string limit, string? product, FormulaKind kind, double cap)
    {
        var line = Loin with { Product = product };

        Assert.False(Cures.Check(limit, line, At(cap, kind)).IsExceeded);
        Assert.Equal(Verdict.Within, Cures.Check(limit, line, At(cap, kind)).Verdict);
        Assert.Equal(Verdict.Above, Cures.Check(limit, line, At(cap + 0.01, kind)).Verdict);
        Assert.Equal(0.01, Cures.Check(limit, line, At(cap + 0.01, kind)).OverPartsPerMillion, 1e-6);
    }

    [Fact]
    public void Ground_meat_has_a_cap_of_its_own()
    {
        var ground = Given.Pieces("beef-ground-80", 1000) with { Product = "other" };
        Assert.False(Cures.Check("nitrite-ground", ground, At(156.25, FormulaKind.Rub)).IsExceeded);
        Assert.True(Cures.Check("nitrite-ground", ground, At(156.3, FormulaKind.Rub)).IsExceeded);
    }

    [Fact]
    public void A_required_level_is_a_level_and_not_a_ceiling()
    {
        var bacon = Loin with { Product = "bacon" };
        var accelerator = Cures.Mix(Given.Ingredient("sodium-erythorbate"), 0.55, 99.45, 100, FormulaKind.Injection);

        Assert.Equal(Verdict.Below, Cures.Check("nitrite-bacon-injection", bacon, At(100, FormulaKind.Injection)).Verdict);
        Assert.False(Cures.Check("nitrite-bacon-injection", bacon, At(100, FormulaKind.Injection)).IsExceeded);
        Assert.Equal(Verdict.Within, Cures.Check("nitrite-bacon-injection", bacon, At(120, FormulaKind.Injection)).Verdict);
        // A hundredth below is what a scale may lose; nothing above is allowed.
        Assert.Equal(Verdict.Within, Cures.Check("nitrite-bacon-injection", bacon, At(119, FormulaKind.Injection)).Verdict);
        Assert.True(Cures.Check("nitrite-bacon-injection", bacon, At(120.01, FormulaKind.Injection)).IsExceeded);
        Assert.Equal(Verdict.Above, Cures.Check("nitrite-bacon-injection", bacon, At(121, FormulaKind.Injection)).Verdict);
        // Without its accelerator pumped bacon is told so; with it the level is met, and the general cap a little below is not held against it.
        Assert.Equal(Verdict.Below, Cures.Check("ascorbate-bacon-injection", bacon, At(120, FormulaKind.Injection)).Verdict);
        var both = Cures.Checks(bacon, At(120, FormulaKind.Injection), accelerator);
        Assert.Equal(Verdict.Within, both.Single(c => c.Limit.Id == "ascorbate-bacon-injection").Verdict);
        Assert.DoesNotContain(both, c => c.IsExceeded);
    }

    [Fact]
    public void The_levels_of_bacon_are_of_the_weight_without_its_skin()
    {
        var belly = Loin with { Product = "bacon", SkinPercent = 10 };
        Assert.Equal(200, Cures.Check("nitrite-bacon-dry", belly, At(180, FormulaKind.Rub)).MeasuredPartsPerMillion!.Value.Typical, 1e-9);
        Assert.True(Cures.Check("nitrite-bacon-dry", belly, At(190, FormulaKind.Rub)).IsExceeded);
    }

    [Theory]
    // 300 ppm of sodium nitrite: 100 above 200 is 0.1 g to a kilogram; in a bath of as much liquid as meat there is as much again to leave out.
    [InlineData("nitrite-injection", "other", FormulaKind.Injection, 300, 0, 0.1)]
    [InlineData("nitrite-soak", "other", FormulaKind.Soak, 300, 0, 0.2)]
    // Bacon's levels leave out a tenth of skin: 270 of all is 300 of the rest, and the 100 too much are of nine tenths.
    [InlineData("nitrite-bacon-dry", "bacon", FormulaKind.Rub, 270, 10, 0.09)]
    public void What_is_too_much_is_told_in_grams_of_what_is_put_on_or_in(
        string limit, string product, FormulaKind kind, double ppm, double skin, double grams)
    {
        // A soak of as much liquid as meat halves what is put in by the gram.
        var treatment = kind == FormulaKind.Soak
            ? Cures.Mix(Given.Ingredient("sodium-nitrite"), ppm * 2, 1e6 - (ppm * 2), 1000, FormulaKind.Soak)
            : Cures.Mix(Given.Ingredient("sodium-nitrite"), ppm, 1e5 - ppm, 100, kind);
        var check = Cures.Check(limit, Loin with { Product = product, SkinPercent = skin }, treatment);

        Assert.Equal(grams, check.OverGramsPerKilogram(check.Load.Shares[0]), 1e-9);
    }

    [Fact]
    public void Bacon_gets_no_nitrate_and_what_is_not_named_may_be_bacon()
    {
        var cure = Cures.Mix(Cures.Declared(0.0625, 0.04), 1, 9, 10);

        Assert.True(Cures.Check("nitrate-bacon", Loin with { Product = "bacon" }, cure).IsExceeded);
        Assert.True(Cures.Check("nitrate-bacon", Loin, cure).IsExceeded);
        Assert.DoesNotContain(Cures.Checks(Loin with { Product = "other" }, cure), c => c.IsExceeded);
    }

    [Fact]
    public void Two_treatments_that_are_each_allowed_may_be_too_much_together()
    {
        var line = Loin with { Product = "other" };
        var both = Cures.Check("nitrite-injection", line, At(150, FormulaKind.Injection), At(100, FormulaKind.Rub));

        Assert.True(both.IsExceeded);
        Assert.Equal(50, both.OverPartsPerMillion, 1e-6);
        Assert.Equal([150, 100], both.Load.Shares.Select(s => Math.Round(s.PartsPerMillion.Typical, 6)));
    }

    [Fact]
    public void What_is_left_of_nitrite_cannot_be_told_unless_all_of_it_would_do()
    {
        var line = Loin with { Product = "other" };
        Assert.Equal(Verdict.Within, Cures.Check("nitrite-finished", line, At(150, FormulaKind.Rub)).Verdict);
        Assert.Equal(Verdict.CannotTell, Cures.Check("nitrite-finished", line, At(151, FormulaKind.Rub)).Verdict);
        Assert.False(Cures.Check("nitrite-finished", line, At(600, FormulaKind.Rub)).IsExceeded);
    }

    [Fact]
    public void Phosphate_all_kept_is_two_thirds_of_a_percent_of_meat_cooked_to_three_quarters()
    {
        var check = Cures.Check(
            "phosphate-finished", Loin, Cures.Mix(Given.Ingredient("sodium-tripolyphosphate"), 5, 95, 100, FormulaKind.Injection));
        Assert.Equal(0.667, check.MeasuredPartsPerMillion!.Value.Typical / 10_000, 0.0005);
        Assert.Equal(Verdict.CannotTell, check.Verdict);
    }

    [Theory]
    [InlineData("corned-beef-brisket", "gain-corned-beef-brisket", 20)]
    [InlineData("corned-beef", "gain-corned-beef", 10)]
    public void Corned_beef_gains_no_more_than_its_rule_allows(string product, string limit, double percent)
    {
        var line = Loin with { Product = product };
        var pumped = Cures.Mix(Given.Ingredient("sodium-chloride"), 1, 9, percent * 10, FormulaKind.Injection) with { RetainedPercent = Band.Exact(100) };

        Assert.False(Cures.Check(limit, line, pumped).IsExceeded);
        Assert.True(Cures.Check(limit, line, pumped with { DoseGramsPerKilogram = (percent * 10) + 1 }).IsExceeded);
        // What drains is no gain.
        Assert.False(Cures.Check(limit, line, pumped with { DoseGramsPerKilogram = percent * 20, RetainedPercent = Band.Exact(50) }).IsExceeded);
    }

    [Fact]
    public void What_an_assumed_retention_would_gain_is_never_refused()
    {
        var line = Loin with { Product = "corned-beef" };
        var pumped = Cures.Mix(Given.Ingredient("sodium-chloride"), 1, 9, 150, FormulaKind.Injection);

        var check = Cures.Check("gain-corned-beef", line, pumped);
        Assert.Equal((Verdict.CannotTell, false), (check.Verdict, check.IsExceeded));
        Assert.Contains("retained", check.Advice, StringComparison.Ordinal);
        Assert.True(Cures.Check("gain-corned-beef", line, pumped with { RetainedPercent = Band.Exact(100) }).IsExceeded);
        // All of so little may stay.
        Assert.Equal(Verdict.Within, Cures.Check("gain-corned-beef", line, pumped with { DoseGramsPerKilogram = 100 }).Verdict);
    }

    [Fact]
    public void What_a_soak_gains_cannot_be_told()
    {
        var line = Loin with { Product = "corned-beef" };
        var soaked = Cures.Mix(Given.Ingredient("sodium-chloride"), 1, 9, 1000, FormulaKind.Soak);

        var check = Cures.Check("gain-corned-beef", line, soaked);
        Assert.Equal((Verdict.CannotTell, false, null), (check.Verdict, check.IsExceeded, check.MeasuredPartsPerMillion));
        var pumped = Cures.Mix(Given.Ingredient("sodium-chloride"), 1, 9, 50, FormulaKind.Injection) with { RetainedPercent = Band.Exact(90) };
        Assert.Equal(Verdict.CannotTell, Cures.Check("gain-corned-beef", line, pumped, soaked).Verdict);
    }

    [Fact]
    public void Bacon_pumped_with_less_is_told_which_alternative_it_meets()
    {
        var bacon = Loin with { Product = "bacon" };

        var hundred = Cures.Checks(bacon, At(100, FormulaKind.Injection));
        Assert.Equal(Verdict.Within, hundred.Single(c => c.Limit.Id == "nitrite-bacon-injection-100").Verdict);
        Assert.DoesNotContain(hundred, c => c.Limit.Id == "nitrite-bacon-injection-40-80");
        Assert.Contains("550 ppm", hundred.Single(c => c.Limit.Id == "nitrite-bacon-injection-100").Advice, StringComparison.Ordinal);
        Assert.Contains("alternative", hundred.Single(c => c.Limit.Id == "nitrite-bacon-injection").Advice, StringComparison.Ordinal);
        // 90 meets neither, and neither does a load above 100 or 80.
        foreach (var ppm in new double[] { 39, 81, 90, 101, 120 })
        {
            Assert.DoesNotContain(Cures.Checks(bacon, At(ppm, FormulaKind.Injection)), c => c.Limit.Level == LimitLevel.Alternative);
        }

        // Nobody said that it is bacon.
        Assert.DoesNotContain(Cures.Checks(Loin, At(100, FormulaKind.Injection)), c => c.Limit.Level == LimitLevel.Alternative);
    }

    [Theory]
    // A tenth of the pickle: 7 g/kg of sugar is 7 % of it.
    [InlineData(40, 7.0, Verdict.Within)]
    [InlineData(80, 6.0, Verdict.Below)]
    [InlineData(60, 0, Verdict.Below)]
    public void The_alternative_with_a_culture_asks_for_sugar(double ppm, double sugar, Verdict verdict)
    {
        var bacon = Loin with { Product = "bacon" };
        var cure = ppm / 62.5;
        var pickle = Given.Draft(
            Given.Line(Cures.Declared(0.0625), cure, "parts-by-mass"), Given.Line("sucrose", null, sugar, "parts-by-mass"),
            Given.Line("water", null, 100 - cure - sugar, "parts-by-mass")) with { Kind = FormulaKind.Injection };
        var checks = Cures.Checks(bacon, pickle.Dosed(100).Ratios().On(0));

        var met = checks.Single(c => c.Limit.Id == "nitrite-bacon-injection-40-80");
        Assert.Equal(Verdict.Within, met.Verdict);
        Assert.Contains("starter culture", met.Advice, StringComparison.Ordinal);
        Assert.Equal(verdict, checks.Single(c => c.Limit.Id == "sugar-bacon-injection-40-80").Verdict);
        Assert.DoesNotContain(checks, c => c.IsExceeded);
    }

    [Fact]
    public void Ground_meat_that_nobody_named_is_not_held_to_bacon_s_ban_of_nitrate()
    {
        var ground = Given.Pieces("beef-ground-80", 1000);
        var cure = Cures.Mix(Cures.Declared(0.0625, 0.04), 1, 9, 10);

        Assert.DoesNotContain(Cures.Checks(ground, cure), c => c.Limit.Id == "nitrate-bacon");
        Assert.Contains(Cures.Checks(Loin, cure), c => c.Limit.Id == "nitrate-bacon");
    }

    [Theory]
    // The chart counts each salt by its own weight: 625 ppm of potassium nitrite is 506.7 as sodium nitrite. Bacon's 200 is 246.7 of it.
    [InlineData("nitrite-dry", "other", 0.625, 0.6251)]
    [InlineData("nitrite-bacon-dry", "bacon", 0.2466, 0.2467)]
    public void Potassium_nitrite_counts_as_each_rule_counts_it(string limit, string product, double kept, double broken)
    {
        var line = Loin with { Product = product };
        Assert.False(Cures.Check(limit, line, Potassium(kept)).IsExceeded);
        Assert.True(Cures.Check(limit, line, Potassium(broken)).IsExceeded);

        static Treatment Potassium(double dose) => Cures.Mix(Given.Ingredient("potassium-nitrite"), 1, 0, dose);
    }

    [Fact]
    public void A_cured_product_kept_cold_is_told_of_too_little_nitrite()
    {
        var ham = Loin with { Product = "cooked-ham" };
        Assert.Equal(Verdict.Below, Cures.Check("nitrite-keep-cold", ham, At(100, FormulaKind.Rub)).Verdict);
        Assert.False(Cures.Check("nitrite-keep-cold", ham, At(100, FormulaKind.Rub)).IsExceeded);
        Assert.Equal(Verdict.Within, Cures.Check("nitrite-keep-cold", ham, At(600, FormulaKind.Rub)).Verdict);
        Assert.DoesNotContain(Cures.Checks(Loin, At(100, FormulaKind.Rub)), c => c.Limit.Id == "nitrite-keep-cold");
    }

    [Fact]
    public void The_fat_of_fresh_sausage_is_the_meat_s_and_what_is_mixed_in()
    {
        var sausage = Given.Pieces("beef-ground-80", 1000) with { Product = "fresh-sausage" };

        // 200 g of fat in 1000 g, of 1020 g in all.
        var check = Cures.Check("fat-fresh-sausage", sausage, Cures.Mix(Given.Ingredient("sodium-chloride"), 1, 1, 20));
        Assert.Equal(196_078, check.MeasuredPartsPerMillion!.Value.Typical, 0.5);
        Assert.Equal((Verdict.Within, false), (check.Verdict, check.IsExceeded));
        // 200 + 900 of 2000 g is too much, but nobody measured this meat's fat.
        var fat = Given.Ingredient("sodium-chloride") with { FatGramsPer100Grams = 100 };
        check = Cures.Check("fat-fresh-sausage", sausage, Cures.Mix(fat, 9, 1, 1000));
        Assert.Equal(550_000, check.MeasuredPartsPerMillion!.Value.Typical, 0.5);
        Assert.Equal((Verdict.CannotTell, false), (check.Verdict, check.IsExceeded));
    }

    [Fact]
    public void A_seasoning_without_additives_has_nothing_to_check() =>
        Assert.Empty(Cures.Checks(Loin, Cures.Mix(Given.Ingredient("salt"), 1, 1, 20)));

    private static Treatment At(double ppm, FormulaKind kind) => kind switch
    {
        FormulaKind.Injection => Cures.Mix(Cures.Declared(0.0625), ppm / 62.5, 100 - (ppm / 62.5), 100, kind),
        // As much pickle as meat: half of what is in the pickle counts.
        FormulaKind.Soak => Cures.Mix(Cures.Declared(0.0625), ppm / 312.5, 100 - (ppm / 312.5), 1000, kind),
        _ => Cures.Mix(Cures.Declared(0.0625), 1, 0, ppm / 62.5),
    };
}
