using RubLab.Core.Curing;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Curing;

/// <summary>Where a level ends, and which levels are held against a load at all.</summary>
public sealed class LimitEdgesTests
{
    private static readonly PileLine Loin = Given.Pieces("pork-loin", 4000) with { BonePercent = 0 };
    private static readonly PileLine Bacon = Loin with { Product = "bacon" };

    [Theory]
    // 9 CFR 424.22(b)(1): 120 ppm, no more and no less.
    [InlineData(120, 120, Verdict.Within)]
    [InlineData(100, 120, Verdict.CannotTell)]
    [InlineData(120, 130, Verdict.CannotTell)]
    [InlineData(100, 119.9, Verdict.Below)]
    [InlineData(120.1, 130, Verdict.Above)]
    public void A_load_known_as_a_band_is_judged_by_both_its_ends(double low, double high, Verdict verdict) =>
        Assert.Equal(verdict, Held("nitrite-bacon-injection", new Band(low, (low + high) / 2, high), "bacon", 0).Verdict);

    [Fact]
    public void A_required_level_that_is_exactly_met_says_so_and_a_missed_one_says_what_to_do()
    {
        Assert.Equal("120 ppm: met.", Held("nitrite-bacon-injection", Band.Exact(120), "bacon", 0).Advice);
        Assert.StartsWith("120 ppm is required.", Held("nitrite-bacon-injection", Band.Exact(119), "bacon", 0).Advice, StringComparison.Ordinal);
        Assert.StartsWith("Take 80 ppm out: 120 ppm is the most.", Held("nitrite-bacon-injection", Band.Exact(200), "bacon", 0).Advice, StringComparison.Ordinal);
    }

    // 1062 ppm is far above every cap of nitrite: what is said of the least must not read as if all were well.
    [Theory]
    [InlineData("nitrite-keep-cold", 1062, "corned-beef", "At least 120 ppm: met. It is no cap.")]
    [InlineData("nitrite-injection", 199.9, "other", "At most 200 ppm: kept.")]
    [InlineData("nitrite-bacon-injection", 90, null, "At most 120 ppm: kept.")]
    [InlineData("nitrite-bacon-injection", 120.004, "bacon", "Take 0.004 ppm out: 120 ppm is the most.")]
    public void What_is_met_is_said_of_its_own_level_alone(string id, double ppm, string? product, string advice) =>
        Assert.Equal(advice, Held(id, Band.Exact(ppm), product, 0).Advice);

    [Fact]
    public void Only_meat_that_nobody_named_is_asked_whether_it_is_bacon()
    {
        Assert.Contains("name the product", Held("nitrite-bacon-dry", Band.Exact(300), null, 0).Advice, StringComparison.Ordinal);
        Assert.EndsWith("is the most.", Held("nitrite-bacon-dry", Band.Exact(300), "bacon", 0).Advice, StringComparison.Ordinal);
        Assert.EndsWith("is the most.", Held("nitrite-injection", Band.Exact(300), null, 0).Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void Skin_counts_with_the_meat_but_for_bacon()
    {
        Assert.Equal(180, Held("nitrite-injection", Band.Exact(180), "other", 10).MeasuredPartsPerMillion!.Value.Typical);
        Assert.Equal(200, Held("nitrite-bacon-dry", Band.Exact(180), "bacon", 10).MeasuredPartsPerMillion!.Value.Typical, 1e-9);
    }

    [Fact]
    public void Meat_that_nobody_named_is_not_held_to_bacon_s_least()
    {
        Assert.Equal(Verdict.Within, Cures.Check("nitrite-bacon-injection", Loin, Pumped(100)).Verdict);
        Assert.Equal(Verdict.Below, Cures.Check("nitrite-bacon-injection", Bacon, Pumped(90)).Verdict);
    }

    [Fact]
    public void The_accelerator_of_bacon_is_missed_only_where_nitrite_is_pumped_in()
    {
        Assert.Contains("ascorbate-bacon-injection", Limits(Bacon, Pumped(120)));
        Assert.DoesNotContain("ascorbate-bacon-injection", Limits(Loin, Pumped(120)));
        Assert.DoesNotContain("ascorbate-bacon-injection", Limits(Bacon, Cures.Mix(Cures.Declared(0.0625), 1, 0, 200 / 62.5)));
        Assert.DoesNotContain("ascorbate-bacon-injection", Limits(Bacon, Phosphate()));
        Assert.Empty(Limits(Bacon, Cures.Mix(Given.Ingredient("sodium-chloride"), 1, 9, 100, FormulaKind.Injection)));
    }

    [Fact]
    public void Of_what_is_not_brought_nothing_else_is_missed()
    {
        string[] ofNitrite = ["nitrite", "ascorbate"];
        Assert.All(Cures.Checks(Bacon, Pumped(120)), check => Assert.Contains(check.Limit.Additive, ofNitrite));
        Assert.All(Cures.Checks(Bacon, Phosphate()), check => Assert.Equal("phosphate", check.Limit.Additive));
        // Dry cured bacon may have less than 200 ppm; pumped bacon's alternative of 100 is none of its own.
        Assert.DoesNotContain(Cures.Checks(Bacon, Cures.Mix(Cures.Declared(0.0625), 1, 0, 100 / 62.5)), c => c.Limit.Level == LimitLevel.Alternative);
    }

    [Fact]
    public void Advice_on_what_a_soak_gains_is_to_weigh_and_on_what_is_allowed_anyway_there_is_none()
    {
        var line = Loin with { Product = "corned-beef" };
        var soak = Cures.Mix(Given.Ingredient("sodium-chloride"), 1, 9, 1000, FormulaKind.Soak);
        var little = Cures.Mix(Given.Ingredient("sodium-chloride"), 1, 9, 100, FormulaKind.Injection);

        Assert.Contains("soak", Cures.Check("gain-corned-beef", line, soak).Advice, StringComparison.Ordinal);
        Assert.Equal("At most 100,000 ppm: kept.", Cures.Check("gain-corned-beef", line, little).Advice);
    }

    private static Treatment Pumped(double ppm) => Cures.Mix(Cures.Declared(0.0625), ppm / 62.5, 100 - (ppm / 62.5), 100, FormulaKind.Injection);

    private static Treatment Phosphate() => Cures.Mix(Given.Ingredient("sodium-tripolyphosphate"), 1, 99, 100, FormulaKind.Injection);

    private static IEnumerable<string> Limits(PileLine line, Treatment treatment) => Cures.Checks(line, treatment).Select(c => c.Limit.Id);

    // Weighed without any error, so that a level is met at itself alone.
    private static LimitCheck Held(string id, Band ppm, string? product, double skinPercent)
    {
        var limit = Seed.Catalogue.AdditiveLimits.Single(l => l.Id == id);
        var method = limit.Methods.DefaultIfEmpty(CuringMethod.Injection).First();
        return LimitCheck.Of(
            limit, new AdditiveLoad(limit.Additive, limit.Base, [new AdditiveShare(0, method, ppm, ppm, 1000)]), product, skinPercent, null, 0);
    }
}
