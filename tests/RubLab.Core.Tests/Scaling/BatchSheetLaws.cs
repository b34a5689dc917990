using CsCheck;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Scaling;

public sealed class BatchSheetLaws
{
    private static readonly (double Value, string Unit)[] Steps = [(1, "g"), (0.1, "g"), (0.01, "oz"), (5, "g"), (0.05, "lb"), (1, "mg")];

    // Scales in kitchens show hundreds of grams, so sums at exactly half a step are common.
    private static readonly Gen<Case> Cases = Gen.Select(
        Gen.OneOf(Gen.Double[50, 8000].Array[1, 40], Gen.Int[1, 80].Select(i => i * 100.0).Array[1, 40]),
        Gen.OneOf(Gen.Double[0.1, 40], Gen.Int[1, 40].Select(i => (double)i)),
        Gen.Double[0.01, 20].Array[1, 6],
        Gen.OneOf(Gen.Double[0, 30], Gen.Const(0.0), Gen.Const(10.0)),
        Gen.Int[0, Steps.Length - 1]).Select((weights, dose, parts, overage, step) => new Case(weights, dose, parts, overage, step));

    [Fact]
    public void Pieces_sum_to_what_goes_on_and_lines_to_what_is_mixed() => Law.Holds(Cases, 10_000, c =>
    {
        var sheet = c.Sheet();

        var step = Given.Step(Steps[c.Step].Value, Steps[c.Step].Unit);
        Assert.Equal(step, sheet.Pieces.Step);
        Assert.All(sheet.Lines, l => Assert.Equal(step, l.Step));
        Assert.Equal(sheet.Pieces.TotalSteps, sheet.Pieces.Steps.Sum());
        Assert.Equal((decimal)step.ValueOf(sheet.Pieces.TotalSteps), sheet.Pieces.Steps.Sum(s => (decimal)step.ValueOf(s)));
        Assert.Equal((decimal)step.ValueOf(StepsToMix(sheet)), sheet.ToMix);
        Assert.Equal(sheet.ToMix, sheet.Lines.Sum(l => (decimal)step.ValueOf(l.Steps)));
    });

    [Fact]
    public void Every_amount_is_within_a_step_of_dose_times_weight() => Law.Holds(Cases, 10_000, c =>
    {
        var sheet = c.Sheet();
        var grams = Given.Step(Steps[c.Step].Value, Steps[c.Step].Unit).Grams;
        var exact = c.Weights.Select(w => w * c.Dose / 1000 / grams).ToArray();
        var mix = exact.Sum() * (1 + (c.Overage / 100));

        for (var i = 0; i < exact.Length; i++)
        {
            Assert.InRange(sheet.Pieces.Steps[i] - exact[i], -1 - 1e-6, 1 + 1e-6);
        }

        for (var i = 0; i < c.Parts.Length; i++)
        {
            Assert.InRange(sheet.Lines[i].Steps - (mix * c.Parts[i] / c.Parts.Sum()), -1 - 1e-6, 1 + 1e-6);
        }

        Assert.InRange(sheet.Pieces.TotalSteps - exact.Sum(), -0.5 - 1e-6, 0.5 + 1e-6);
        Assert.InRange(StepsToMix(sheet) - mix, -0.5 - 1e-6, 0.5 + 1e-6);
    });

    [Fact]
    public void Twice_the_meat_on_a_scale_of_twice_the_step_is_the_same_sheet() => Law.Holds(Cases, 5_000, c =>
        AssertSame(c.Sheet(), (c with { Weights = [.. c.Weights.Select(w => w * 2)] }).Sheet(stepFactor: 2)));

    [Fact]
    public void Twice_the_dose_on_a_scale_of_twice_the_step_is_the_same_sheet() => Law.Holds(Cases, 5_000, c =>
        AssertSame(c.Sheet(), (c with { Dose = c.Dose * 2 }).Sheet(stepFactor: 2)));

    [Fact]
    public void Twice_the_applications_on_a_scale_of_twice_the_step_is_the_same_sheet() => Law.Holds(Cases, 5_000, c =>
        AssertSame(c.Sheet(), c.Sheet(stepFactor: 2, applications: 2)));

    [Fact]
    public void Any_multiple_of_the_meat_takes_that_multiple_of_the_mix() =>
        Law.Holds(Gen.Select(Cases, Gen.Double[0.5, 20]), 5_000, c =>
        {
            var (one, factor) = c;
            var fine = one with { Step = Steps.Length - 1 };
            var once = fine.Sheet();
            var more = (fine with { Weights = [.. fine.Weights.Select(w => w * factor)] }).Sheet();

            for (var i = 0; i < once.Pieces.Steps.Count; i++)
            {
                Assert.InRange(more.Pieces.Steps[i] - (once.Pieces.Steps[i] * factor), -1.01 * (1 + factor), 1.01 * (1 + factor));
            }
        });

    [Fact]
    public void Putting_the_pieces_in_another_order_moves_a_step_only_between_equal_remainders() =>
        Law.Holds(Cases.SelectMany(c => Gen.Shuffle(c.Weights).Select(shuffled => (c, shuffled))), 5_000, pair =>
        {
            var one = pair.c.Sheet();
            var other = (pair.c with { Weights = pair.shuffled }).Sheet();

            Assert.Equal(one.Pieces.TotalSteps, other.Pieces.TotalSteps);
            Assert.Equal(StepsToMix(one), StepsToMix(other));
            if (!pair.c.HasTies())
            {
                Assert.Equal(AmountsByWeight(pair.c.Weights, one), AmountsByWeight(pair.shuffled, other));
            }
        });

    [Fact]
    public void A_pile_in_two_lines_gets_what_it_gets_in_one() => Law.Holds(Cases, 3_000, c =>
    {
        var pile = Given.Pile(Given.Pieces("beef-brisket", c.Weights[..1]), Given.Pieces("pork-shoulder", c.Weights[1..]));
        var step = Given.Step(Steps[c.Step].Value, Steps[c.Step].Unit);

        Assert.Equal(c.Sheet().Pieces.Steps, Given.Sheet(pile, step, c.Overage, c.Treatment() with { OnLines = [0, 1] }).Treatments[0].Pieces.Steps);
    });

    [Fact]
    public void A_hundred_thousand_pieces_add_up()
    {
        var random = new Random(231);
        var weights = Enumerable.Range(0, 100_000).Select(_ => 50 + (random.NextDouble() * 8000)).ToArray();

        var sheet = new Case(weights, 17.3, [9, 6, 5, 3, 1, 0.5], 7, 1).Sheet();

        Assert.Equal(sheet.Pieces.TotalSteps, sheet.Pieces.Steps.Sum());
        Assert.Equal(sheet.Pieces.Step.DecimalOf(StepsToMix(sheet)), sheet.ToMix);
        Assert.Equal(weights.Sum() * 17.3 / 1000 / 0.1, sheet.Pieces.TotalSteps, 0.6);
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(200, 1)]
    [InlineData(200, 20)]
    [InlineData(100_000, 20)]
    public void The_largest_pile_to_the_smallest_step_still_adds_up(int pieces, int applications)
    {
        // A tonne a piece, its own weight of mix a time, to the milligram.
        var sheet = new Case([.. Enumerable.Repeat(1e6, pieces)], 1000, [9, 6.1, 5.3, 3.7, 1, 0.5], 100, 5).Sheet(applications: applications);

        Assert.Equal(pieces * 1_000_000_000L * applications, sheet.Pieces.TotalSteps);
        Assert.Equal(sheet.Pieces.TotalSteps, sheet.Pieces.Steps.Sum());
        Assert.Equal(sheet.Pieces.TotalSteps * 2, StepsToMix(sheet));
        Assert.Equal(sheet.Pieces.Step.DecimalOf(StepsToMix(sheet)), sheet.ToMix);
    }

    private static void AssertSame(TreatmentSheet one, TreatmentSheet other)
    {
        Assert.Equal(one.Pieces.Steps, other.Pieces.Steps);
        Assert.Equal(one.Pieces.TotalSteps, other.Pieces.TotalSteps);
        Assert.Equal(one.Lines.Select(l => l.Steps), other.Lines.Select(l => l.Steps));
    }

    private static long StepsToMix(TreatmentSheet sheet) => sheet.Lines.Sum(l => l.Steps);

    private static IEnumerable<(double Weight, long Steps)> AmountsByWeight(double[] weights, TreatmentSheet sheet) =>
        weights.Zip(sheet.Pieces.Steps).OrderBy(p => p.First).ThenBy(p => p.Second);

    private sealed record Case(double[] Weights, double Dose, double[] Parts, double Overage, int Step)
    {
        private static readonly string[] Ingredients = ["salt", "sugar-brown", "paprika", "black-pepper", "garlic-powder", "cumin-seed"];

        public Treatment Treatment() =>
            Given.Draft([.. Parts.Select((p, i) => Given.Line(Ingredients[i], null, p, "parts-by-mass"))]).Dosed(Dose).Ratios().On(0);

        /// <summary>Two different weights have the same remainder, or nearly: the lower number decides which gets a step.</summary>
        public bool HasTies()
        {
            var steps = Dose / 1000 / Given.Step(Steps[Step].Value, Steps[Step].Unit).Grams;
            var remainders = Weights.Distinct().Select(w => w * steps).Select(e => e - Math.Floor(e)).Order().ToArray();
            return remainders.Zip(remainders.Skip(1), (a, b) => b - a).Any(gap => gap < 1e-6) || (remainders[0] < 1e-6 && remainders[^1] > 1 - 1e-6);
        }

        public TreatmentSheet Sheet(double stepFactor = 1, int applications = 1) => Given.Sheet(
            Given.Pile(Given.Pieces("beef-brisket", Weights)),
            Given.Step(Steps[Step].Value * stepFactor, Steps[Step].Unit),
            Overage,
            Treatment() with { Applications = applications }).Treatments[0];
    }
}
