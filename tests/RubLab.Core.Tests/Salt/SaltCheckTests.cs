using RubLab.Core.Quantities;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;
using RubLab.Core.Sources;

namespace RubLab.Core.Tests.Salt;

public sealed class SaltCheckTests
{
    [Theory]
    [InlineData(7.4, Verdict.Below)]
    [InlineData(7.5, Verdict.Within)]
    [InlineData(12, Verdict.Within)]
    [InlineData(15, Verdict.Within)]
    [InlineData(15.1, Verdict.Above)]
    public void A_roast_is_held_against_its_range_ends_included(double grams, Verdict verdict)
    {
        var check = Roast(grams, Band.Exact(100));

        Assert.Equal(verdict, check.Verdict);
        Assert.Equal(verdict, check.TypicalVerdict);
        Assert.Equal((7.5, 15d, "green", "g/kg"), (check.Lowest, check.Highest, check.Base, check.Unit));
    }

    [Theory]
    [InlineData(10, 60, 80, 100, Verdict.CannotTell, Verdict.Within)]
    [InlineData(16, 80, 100, 100, Verdict.CannotTell, Verdict.Above)]
    [InlineData(8, 50, 60, 100, Verdict.CannotTell, Verdict.Below)]
    [InlineData(30, 20, 40, 60, Verdict.CannotTell, Verdict.Within)]
    [InlineData(8, 50, 60, 70, Verdict.Below, Verdict.Below)]
    [InlineData(30, 60, 70, 80, Verdict.Above, Verdict.Above)]
    [InlineData(10, 80, 90, 100, Verdict.Within, Verdict.Within)]
    public void A_band_that_crosses_a_bound_cannot_tell_though_its_typical_value_can(
        double grams, double low, double typical, double high, Verdict verdict, Verdict typicalVerdict)
    {
        var check = Roast(grams, new Band(low, typical, high));

        Assert.Equal(verdict, check.Verdict);
        Assert.Equal(typicalVerdict, check.TypicalVerdict);
    }

    [Theory]
    [InlineData(5, "Add 2.5 g of salt per kg of green meat to reach the low end.")]
    [InlineData(5.3456, "Add 2.16 g of salt per kg of green meat to reach the low end.")]
    [InlineData(7.4881356, "Add 0.02 g of salt per kg of green meat to reach the low end.")]
    [InlineData(17.25, "Take 2.25 g of salt per kg of green meat out to come down to the high end.")]
    [InlineData(10, "Nothing to change.")]
    public void The_advice_states_the_grams_to_the_nearer_bound(double grams, string advice) =>
        Assert.Equal(advice, Roast(grams, Band.Exact(100)).Advice);

    [Fact]
    public void Of_several_levels_of_one_product_only_the_range_advises_a_change()
    {
        var checks = Checks(Made("x", "fresh-sausage"), 22);

        Assert.Equal(["S04"], checks.Where(c => c.RestoreGramsPerKilogram is not null).Select(c => c.Id));
        Assert.Equal("7 g of salt per kg of green meat above this level. It is one figure to compare with, not a range to be in.", checks[0].Advice);
        Assert.Equal("Take 2 g of salt per kg of green meat out to come down to the high end.", checks[3].Advice);
        Assert.All(checks, c => Assert.Equal(Verdict.Above, c.Verdict));
    }

    [Theory]
    [InlineData(15, "At this level.")]
    [InlineData(17, "2 g of salt per kg of green meat above this level. It is one figure to compare with, not a range to be in.")]
    [InlineData(12.66, "2.34 g of salt per kg of green meat below this level. It is one figure to compare with, not a range to be in.")]
    public void One_level_is_a_landmark_that_nobody_must_hit(double grams, string advice)
    {
        var level = Checks(Made("x", "fresh-sausage"), grams)[0];

        Assert.Equal("S01", level.Id);
        Assert.Equal(advice, level.Advice);
        Assert.Null(level.RestoreGramsPerKilogram);
    }

    [Fact]
    public void Advice_on_a_finished_range_says_that_it_is_of_cooked_meat()
    {
        var line = Made("ham-like", "cooked-ham") with { CookYieldPercent = Band.Exact(50), KeptInCookingPercent = Band.Exact(100) };

        Assert.Equal("Add 0.3 g of salt per kg of cooked meat to reach the low end.", Assert.Single(Checks(line, 8)).Advice);
    }

    [Fact]
    public void A_common_practice_range_says_so_and_keeps_its_confidence()
    {
        var roast = Roast(10, Band.Exact(100));

        Assert.Equal("Salt for roasts dry brine / presalt (common practice)", roast.Title);
        Assert.Equal(("common-practice", Confidence.Low), (roast.Citation.SourceId, roast.Citation.Confidence));
    }

    [Fact]
    public void A_published_range_stands_under_its_own_name() => Assert.Equal(
        "Salt for chicken breast marinated, sensory",
        Assert.Single(Checks(Given.Pieces("chicken-leg", 1000), 6)).Title);

    [Fact]
    public void A_finished_range_is_held_against_cooked_weight()
    {
        var line = Made("ham-like", "cooked-ham") with { CookYieldPercent = Band.Exact(50), KeptInCookingPercent = Band.Exact(100) };

        var check = Assert.Single(Checks(line, 8.4));

        Assert.Equal("S14", check.Id);
        Assert.Equal(16.8, check.Measured!.Value.Typical, 1e-12);
        Assert.Equal(Verdict.Within, check.Verdict);
    }

    [Fact]
    public void A_finished_range_without_a_yield_cannot_tell()
    {
        var check = Assert.Single(Checks(Made("ham-like", "cooked-ham"), 8.4));

        Assert.Equal((Verdict.CannotTell, Verdict.CannotTell), (check.Verdict, check.TypicalVerdict));
        Assert.Null(check.Measured);
        Assert.Equal("This range stands on finished weight, which this line cannot be put on; no verdict.", check.Advice);
    }

    [Theory]
    [InlineData("poultry-brine")]
    [InlineData("injected-beef")]
    [InlineData("equilibrium-brine")]
    public void A_range_on_a_base_the_ledger_does_not_keep_cannot_tell(string product) =>
        Assert.Equal(Verdict.CannotTell, Assert.Single(Checks(Made("x", product), 8)).Verdict);

    [Fact]
    public void A_bone_in_range_does_not_judge_meat_without_bone()
    {
        var turkey = Given.Pieces("turkey-breast", 1000);

        Assert.Equal(Verdict.CannotTell, Assert.Single(Checks(turkey with { BonePercent = 0 }, 6)).Verdict);
        Assert.Equal(Verdict.Within, Assert.Single(Checks(turkey with { BonePercent = 15 }, 6)).Verdict);
        Assert.Equal(Verdict.Within, Assert.Single(Checks(turkey, 6)).Verdict);
    }

    // Petracci 2013 tried chicken breast at up to 2 % of salt; what lies beyond nobody tried, and none of it is advice.
    [Theory]
    [InlineData(25, Verdict.Above, "5 g of salt per kg of green meat above the highest level that was tried. A trial is no advice.")]
    [InlineData(20, Verdict.Within, "Among the levels that were tried. A trial is no advice.")]
    public void A_trial_says_what_was_tried_and_advises_no_change(double grams, Verdict verdict, string advice)
    {
        var check = Assert.Single(Checks(Made("x", "chicken-trial"), grams));

        Assert.Equal((verdict, verdict, advice), (check.Verdict, check.TypicalVerdict, check.Advice));
        Assert.Null(check.RestoreGramsPerKilogram);
        Assert.Equal("Salt for chicken breast hand-salted", check.Title);
    }

    [Fact]
    public void A_range_open_at_the_top_has_no_above()
    {
        Assert.Equal(Verdict.Within, Assert.Single(Checks(Made("x", "coppa"), 500)).Verdict);
        Assert.Equal(Verdict.Below, Assert.Single(Checks(Made("x", "coppa"), 44)).Verdict);
    }

    [Fact]
    public void Every_range_that_applies_is_checked_in_the_order_of_the_table() =>
        Assert.Equal(["S01", "S02", "S03", "S04"], Checks(Made("x", "fresh-sausage"), 15).Select(c => c.Id));

    [Fact]
    public void A_cut_with_no_range_has_no_check() => Assert.Empty(Checks(Made("x", "nothing-known"), 15));

    [Fact]
    public void Sodium_in_a_portion_is_shown_against_each_authority()
    {
        var line = Given.Pieces("beef-brisket", 1000) with
        {
            PortionGrams = 100,
            CookYieldPercent = Band.Exact(100),
            KeptInCookingPercent = Band.Exact(100),
            Cut = Given.Cut("beef-brisket") with { SaltProducts = [] },
        };

        // 0.69 g/kg of the meat's own and 39.337 % of 10 g/kg.
        var checks = Checks(line, 10);

        Assert.Equal(["us-daily-value", "who-adult-day", "nasem-cdrr", "nasem-ai"], checks.Select(c => c.Id));
        Assert.All(checks, c => Assert.Equal(("portion", "%"), (c.Base, c.Unit)));
        Assert.Equal(462.37 / 2300 * 100, checks[0].Measured!.Value.Typical, 1e-9);
        Assert.Equal((Verdict.Above, 5d, 20d), (checks[0].Verdict, checks[0].Lowest, checks[0].Highest));
        Assert.Equal((Verdict.Within, null, 100d), (checks[1].Verdict, checks[1].Lowest, checks[1].Highest));
        Assert.Equal(462.37 / 1500 * 100, checks[3].Measured!.Value.Typical, 1e-9);
        Assert.Equal(
            "About 462 mg, 20.1 % of 2300 mg a day; up to 20.1 % at the high end. A day's figure is no bound for one portion.",
            checks[0].Advice);
        Assert.Equal("Sodium in one portion against US Daily Value for sodium", checks[0].Title);
    }

    // 69 mg of the meat's own and 39.337 mg from each g/kg, in a portion of 100 g.
    [Theory]
    [InlineData(1.171_72, "5.004 % of 2300 mg", Verdict.Within)]
    [InlineData(1.169_324, "4.9999 % of 2300 mg", Verdict.Below)]
    [InlineData(9.937_41, "19.996 % of 2300 mg", Verdict.Within)]
    [InlineData(9.940_3, "20.001 % of 2300 mg", Verdict.Above)]
    public void A_share_of_a_day_reads_on_the_side_of_its_guide_where_it_lies(double grams, string read, Verdict verdict)
    {
        var line = Given.Pieces("beef-brisket", 1000) with
        {
            PortionGrams = 100,
            CookYieldPercent = Band.Exact(100),
            KeptInCookingPercent = Band.Exact(100),
            Cut = Given.Cut("beef-brisket") with { SaltProducts = [] },
        };

        var value = Checks(line, grams)[0];

        Assert.Equal(verdict, value.Verdict);
        Assert.Contains(read, value.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_claim_about_a_portion_rests_on_the_high_end()
    {
        var line = Given.Pieces("beef-brisket", 1000) with
        {
            PortionGrams = 100,
            CookYieldPercent = Band.Exact(100),
            KeptInCookingPercent = new Band(20, 60, 100),
            Cut = Given.Cut("beef-brisket") with { SaltProducts = [] },
        };

        var value = Checks(line, 10)[0];

        Assert.Equal((Verdict.CannotTell, Verdict.Within), (value.Verdict, value.TypicalVerdict));
        Assert.Contains(" % of 2300 mg a day; up to 20.1 % at the high end", value.Advice, StringComparison.Ordinal);
    }

    private static SaltCheck Roast(double grams, Band retained) =>
        Assert.Single(Checks(Given.Pieces("beef-brisket", 1000), grams, retained));

    private static PileLine Made(string id, string product) => Given.Pieces("beef-brisket", 1000) with
    {
        Id = id,
        Cut = Given.Cut("beef-brisket") with { SaltProducts = [product], CookYields = [], KeptInCookingPercent = null },
    };

    // Pure sodium chloride, so that grams weighed are grams counted. What the label may claim has tests of its own.
    private static IReadOnlyList<SaltCheck> Checks(PileLine line, double grams, Band? retained = null) => [.. AllChecks(line, grams, retained)
        .Where(check => Seed.Catalogue.SodiumClaims.All(claim => claim.Id != check.Id))];

    private static IReadOnlyList<SaltCheck> AllChecks(PileLine line, double grams, Band? retained) => SaltCheck.Of(
        SaltLedger.Of(
            Given.Pile(line), 0,
            [Given.Draft(Given.Line("sodium-chloride", null, grams, "g/kg")).Ratios().On(0) with { RetainedPercent = retained }], isWeighed: true),
        Seed.Catalogue);
}
