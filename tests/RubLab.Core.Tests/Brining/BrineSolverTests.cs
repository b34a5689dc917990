using CsCheck;
using RubLab.Core.Brining;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;

namespace RubLab.Core.Tests.Brining;

/// <summary>Free lines of a liquid, held against what a solved liquid holds and against balances done by hand.</summary>
public sealed class BrineSolverTests
{
    private static readonly Ingredient Salt = Given.Ingredient("sodium-chloride");
    private static readonly Ingredient Water = Given.MadeUp("pure-water", null, Band.Exact(0), 0, "liquid") with { WaterGramsPer100Grams = 100 };
    private static readonly Ingredient Sugar = Given.MadeUp("pure-sugar", null, Band.Exact(0), 0, "sugar");

    // A fifth of it salt.
    private static readonly Ingredient Sauce = Given.MadeUp("sauce", null, Band.Exact(20), 0, "sauce");

    // A tenth is sauce and holds 2 % of salt; for 5 % another 3 % go in, and water is the rest.
    [Fact]
    public void Salt_goes_in_for_what_the_held_lines_do_not_bring()
    {
        var (outcome, shares, _) = Solve([Sauce, Salt, Water], [0.1, 0, 0], [0, 0, 1], new BrineTarget(1, 0.05, true));

        Assert.Equal(BrineSolution.Solved, outcome);
        AssertShares([0.1, 0.03, 0.87], shares);
    }

    // Half of the rest is sauce of a fifth of salt: (1 - x) / 2 x 0.2 + x = 0.19 gives x = 0.1.
    [Fact]
    public void What_the_filling_brings_is_less_the_more_salt_takes_its_place()
    {
        var (outcome, shares, _) = Solve([Sauce, Salt, Water], [0, 0, 0], [0.5, 0, 0.5], new BrineTarget(1, 0.19, true));

        Assert.Equal(BrineSolution.Solved, outcome);
        AssertShares([0.45, 0.1, 0.45], shares);
    }

    [Theory]
    // Held sauce brings exactly the 2 %: there is nothing to add, and no less can be.
    [InlineData(0.02, BrineSolution.Solved)]
    [InlineData(0.0199, BrineSolution.AlreadyAbove)]
    public void A_target_the_others_meet_takes_nothing_and_one_they_pass_is_refused(double target, BrineSolution expected)
    {
        var (outcome, shares, failed) = Solve([Sauce, Salt, Water], [0.1, 0, 0], [0, 0, 1], new BrineTarget(1, target, true));

        Assert.Equal((expected, expected == BrineSolution.Solved ? -1 : 0), (outcome, failed));
        if (outcome == BrineSolution.Solved)
        {
            AssertShares([0.1, 0, 0.9], shares);
        }
    }

    // Thirds do not come out even in binary: what the others bring to the last bit is not above its target.
    [Fact]
    public void Last_bits_do_not_make_a_target_that_is_met_a_target_that_is_passed() => Law.Holds(
        Gen.Select(Gen.Double[0.001, 0.9], Gen.Double[1, 60]), 2_000, c =>
        {
            var (held, percent) = c;
            var sauce = Given.MadeUp("sauce", null, Band.Exact(percent), 0, "sauce");
            var (outcome, shares, _) = Solve([sauce, Salt, Water], [held, 0, 0], [0, 0, 1], new BrineTarget(1, percent * held / 100, true));

            Assert.Equal(BrineSolution.Solved, outcome);
            Assert.InRange(shares[1], 0, 1e-12);
        });

    // A billionth of it too much is too much, though less than the last bits of the whole liquid.
    [Fact]
    public void A_small_target_is_passed_by_a_small_part_of_itself() => Assert.Equal(
        BrineSolution.AlreadyAbove,
        Solve([Sauce, Salt, Water], [0.005 * (1 + 1e-9), 0, 0], [0, 0, 1], new BrineTarget(1, 0.001, true)).Outcome);

    // Half of the rest is salt, and so is half of the line that is to bring salt: by itself it changes nothing. But a line of salt is to
    // come to 45 % with the rest's: 2 x (0.55 - 0.45) of the first, 2 x 0.45 - 1 + 0.2 of the second.
    [Fact]
    public void A_line_that_changes_nothing_by_itself_may_together_with_another()
    {
        var half = Given.MadeUp("half", null, Band.Exact(50), 0);
        var (outcome, shares, _) = Solve(
            [half, Salt, Salt, Water], [0, 0, 0, 0], [0, 0, 0.5, 0.5], new BrineTarget(0, 0.55, true), new BrineTarget(1, 0.45, false));

        Assert.Equal(BrineSolution.Solved, outcome);
        AssertShares([0.2, 0.1, 0.35, 0.35], shares);
    }

    [Theory]
    [InlineData(0.9999, BrineSolution.Solved)]
    [InlineData(1.0, BrineSolution.NoRest)]
    public void A_liquid_that_is_all_salt_is_none(double target, BrineSolution expected) =>
        Assert.Equal(expected, Solve([Water, Salt], [0, 0], [1, 0], new BrineTarget(1, target, true)).Outcome);

    [Fact]
    public void The_target_that_fails_is_the_one_named()
    {
        // Salt would do, but there is more sugar held than is asked for.
        var above = Solve(
            [Salt, Sugar, Sugar, Water], [0, 0, 0.2, 0], [0, 0, 0, 1], new BrineTarget(0, 0.05, true), new BrineTarget(1, 0.1, false));
        Assert.Equal((BrineSolution.AlreadyAbove, 1), (above.Outcome, above.Failed));

        // A line without salt is to bring salt.
        var undetermined = Solve([Sugar, Sauce, Water], [0, 0, 0], [0, 0, 1], new BrineTarget(1, 0.05, false), new BrineTarget(0, 0.1, true));
        Assert.Equal((BrineSolution.Undetermined, 1), (undetermined.Outcome, undetermined.Failed));
    }

    // A line's own ingredient counts wherever it stands: 5 % of sugar are held, so 5 % more make a tenth.
    [Fact]
    public void A_target_of_an_ingredient_counts_its_other_lines()
    {
        var (outcome, shares, _) = Solve([Sugar, Sugar, Water], [0.05, 0, 0], [0, 0, 1], new BrineTarget(1, 0.1, false));

        Assert.Equal(BrineSolution.Solved, outcome);
        AssertShares([0.05, 0.05, 0.9], shares);
    }

    [Fact]
    public void Targets_that_hang_on_one_another_are_all_met() => Law.Holds(
        Gen.Select(Gen.Double[0.001, 0.03], Gen.Double[0.3, 0.5], Gen.Double[0.1, 0.3], Gen.Double[0.01, 0.1]), 1_000, c =>
        {
            // Salt comes in with the sauce, and sugar by its own line and with the filling: both lines bring, and displace, the other's.
            var (salt, sugar, sweet, curing) = c;
            Ingredient[] lines = [Sauce, Sugar, Sugar, Water, Given.Ingredient("sodium-tripolyphosphate")];
            var (outcome, shares, _) = Solve(
                lines, [0, 0, 0, 0, 0], [0, 0, sweet, 1 - sweet, 0],
                new BrineTarget(0, salt, true), new BrineTarget(1, sugar, false), new BrineTarget(4, curing, false));

            Assert.Equal(BrineSolution.Solved, outcome);
            var brine = Brine.Of(lines, shares);
            Assert.Equal(1, shares.Sum(), 1e-12);
            Assert.Equal(salt, brine.SaltFraction.Typical, 1e-12);
            Assert.Equal(sugar, brine.Shares[1] + brine.Shares[2], 1e-12);
            Assert.Equal(curing, brine.Shares[4], 1e-12);
            Assert.Equal(sweet / (1 - sweet), brine.Shares[2] / brine.Shares[3], 1e-9);
        });

    private static void AssertShares(double[] expected, double[] shares)
    {
        for (var i = 0; i < expected.Length; i++)
        {
            Assert.Equal(expected[i], shares[i], 1e-12);
        }
    }

    private static (BrineSolution Outcome, double[] Shares, int Failed) Solve(Ingredient[] lines, double[] held, double[] filling, params BrineTarget[] targets)
    {
        var shares = new double[lines.Length];
        var outcome = BrineSolver.Solve(lines, held, filling, targets, shares, out var failed);
        return (outcome, shares, failed);
    }
}
