using CsCheck;
using RubLab.Core.Brining;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;
using RubLab.Core.Tests.Published;

namespace RubLab.Core.Tests.Brining;

public sealed class BrineTests
{
    private static readonly Ingredient Salt = Given.Ingredient("sodium-chloride");
    private static readonly Ingredient Water = Given.Ingredient("water");

    [Theory]
    [InlineData("CU05-percent")]
    [InlineData("CU05-us-gallon")]
    [InlineData("CU06-10")]
    [InlineData("CU06-20")]
    [InlineData("CU06-30")]
    [InlineData("CU06-40")]
    [InlineData("W22")]
    [InlineData("D05")]
    [InlineData("MB04")]
    [InlineData("W20")]
    public void A_published_brine_has_its_strength(string id)
    {
        var row = PublishedCase.Read("brines.csv").Single(c => c.Id == id);
        var unit = row.Inputs.Contains("_lb", StringComparison.Ordinal) ? "_lb" : row.Inputs.Contains("_g", StringComparison.Ordinal) ? "_g" : "";

        row.AssertIs(Of(row.Input("salt" + unit), row.Input("water" + unit)).StrengthPercent);
    }

    [Theory]
    [InlineData("W23")]
    [InlineData("W24")]
    public void A_published_reading_has_its_strength(string id)
    {
        var row = PublishedCase.Read("brines.csv").Single(c => c.Id == id);
        row.AssertIs(Seed.Catalogue.Brines.Solution.PercentOf(row.Input("degrees")));
    }

    [Fact]
    public void A_brine_of_a_sixth_weighs_no_1323_grams_a_litre()
    {
        // The example prints that density; solutions of 16 and 18 % weigh 1116.2 and 1131.9.
        Assert.InRange(1 / Of(20, 100).MillilitresPerGram(Seed.Catalogue.Brines, 20), 1.1162, 1.1319);
    }

    [Fact]
    public void Salt_into_a_brine_and_water_out_of_it_balance()
    {
        // MB12: x kg at 2.5 % and 1 kg of salt are 3 %: 194 kg. MB13: 212 kg at 13 %, 30 kg of water off, 5 kg of salt in: 17.41 %.
        Assert.Equal(3, Of((194 * 0.025) + 1, 194 * 0.975).StrengthPercent, 1e-9);
        Assert.Equal(17.4118, Of((212 * 0.13) + 5, (212 * 0.87) - 30).StrengthPercent, 0.00005);
        // MB15: 32 of 80 lb at 12 % evaporate to 20 %.
        Assert.Equal(20, Of(80 * 0.12, (80 * 0.88) - 32).StrengthPercent, 1e-9);
    }

    [Fact]
    public void The_ingredients_own_water_and_salt_count()
    {
        var soy = Given.Ingredient("soy-sauce-shoyu");
        var brine = Brine.Of([soy, Water], [100, 100]);

        Assert.Equal((soy.WaterGramsPer100Grams!.Value + 100) / 200, brine.WaterFraction, 1e-12);
        Assert.Equal(soy.SaltGramsPer100Grams.Typical / 200, brine.SaltFraction.Typical, 1e-12);
        Assert.Equal(1, brine.WaterFraction + brine.SaltFraction.Typical + brine.OtherFraction, 1e-12);
    }

    [Fact]
    public void Sugar_changes_the_volume_and_not_the_strength()
    {
        var sugared = Brine.Of([Salt, Water, Given.Ingredient("sugar-granulated")], [10, 90, 20]);

        Assert.Equal(10, sugared.StrengthPercent, 0.01);
        var figures = Seed.Catalogue.Brines;
        Assert.True(sugared.MillilitresPerGram(figures, 10) < Of(10, 90).MillilitresPerGram(figures, 10));
    }

    [Fact]
    public void Nothing_is_no_liquid()
    {
        Assert.Equal("grams", Assert.Throws<ArgumentException>(() => Of(0, 0)).ParamName);
        Assert.Equal(0, Brine.Of([Given.MadeUp("dry", null, Band.Exact(0), 0)], [1]).StrengthPercent);
        Assert.Throws<ArgumentException>(() => Brine.Of([Salt], [1, 2]));
        Assert.Equal(0, Of(0, 1).StrengthPercent);
    }

    [Fact]
    public void Phosphate_goes_in_before_salt_and_a_cure_last()
    {
        string[] ids = ["cure-6-25", "sugar-granulated", "salt", "black-pepper", "sodium-tripolyphosphate", "water"];

        Assert.Equal(
            ["water", "sodium-tripolyphosphate", "salt", "sugar-granulated", "black-pepper", "cure-6-25"],
            DissolvingOrder.Of(ids.Select(Given.Ingredient).ToList()).Select(i => ids[i]));
    }

    [Fact]
    public void Solved_lines_reach_their_targets_whatever_the_others_bring() => Law.Holds(
        Gen.Select(Gen.Double[0, 0.2], Gen.Double[0.001, 0.2], Gen.Double[0.001, 0.2], Gen.Double[0, 0.3]), 500, c =>
        {
            var (soyShare, saltTarget, sugarTarget, juice) = c;
            Ingredient[] lines = [Given.Ingredient("soy-sauce-shoyu"), Water, Salt, Given.Ingredient("sugar-granulated")];
            double[] held = [soyShare, 0, 0, 0];
            double[] filling = [juice, 1 - juice, 0, 0];
            var shares = new double[4];
            var outcome = BrineSolver.Solve(
                lines, held, filling, [new BrineTarget(2, saltTarget, true), new BrineTarget(3, sugarTarget, false)], shares, out _);
            if (outcome != BrineSolution.Solved)
            {
                Assert.Equal(BrineSolution.AlreadyAbove, outcome);
                return;
            }

            var brine = Brine.Of(lines, shares);
            Assert.Equal(1, shares.Sum(), 1e-12);
            Assert.Equal(saltTarget, brine.SaltFraction.Typical, 1e-12);
            Assert.Equal(sugarTarget, brine.Shares[3], 1e-12);
            Assert.All(shares, share => Assert.True(share >= 0));
        });

    [Fact]
    public void Targets_that_leave_nothing_or_fix_nothing_are_told_apart()
    {
        var shares = new double[2];
        Assert.Equal(BrineSolution.NoRest, BrineSolver.Solve([Water, Salt], [0, 0], [1, 0], [new BrineTarget(1, 1.2, false)], shares, out var failed));
        Assert.Equal(0, failed);
        Assert.Equal(BrineSolution.Undetermined, BrineSolver.Solve([Salt, Salt], [0, 0], [1, 0], [new BrineTarget(1, 0.5, true)], shares, out _));
        Assert.Equal(BrineSolution.AlreadyAbove, BrineSolver.Solve([Water, Salt, Salt], [0, 0.2, 0], [1, 0, 0], [new BrineTarget(2, 0.1, true)], new double[3], out _));
    }

    private static Brine Of(double salt, double water) => Brine.Of([Salt, Water], [salt, water]);
}
