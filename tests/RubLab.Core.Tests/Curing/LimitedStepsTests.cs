using CsCheck;
using RubLab.Core.Remarks;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Curing;

/// <summary>A cure is never rounded up: not on a piece, not in the bowl, not in its share of the mix.</summary>
public sealed class LimitedStepsTests
{
    private static readonly double[] WeighingSteps = [0.1, 0.5, 1, 5];

    // A small fine one and a large coarse one.
    private static readonly ScaleSet Several = new([new Scale(50, Given.Step(0.01, "g")), new Scale(5000, Given.Step(1, "g"))]);

    [Fact]
    public void The_cure_is_cut_down_and_the_rest_rounded_up()
    {
        // 1000 g at 26.9 g/kg: 2.69 of cure and 24.21 of sugar.
        var sheet = Sheet([1000], new Mixed(1, 0, 9), 26.9, Grams(0.1), null, 0);

        Assert.Equal([2.6m, 0m, 24.3m], sheet.Lines.Select(l => l.Value));
        Assert.Equal(26.9, sheet.Pieces.Step.ValueOf(sheet.Pieces.TotalSteps), 1e-9);
    }

    [Fact]
    public void A_whole_step_but_for_the_last_bits_is_not_lost() =>
        Assert.Equal(0.3m, Sheet([1000], new Mixed(1, 0, 2), 0.9, Grams(0.1), null, 0).Lines[0].Value);

    [Fact]
    public void Two_limited_lines_and_an_overage_leave_dry_bacon_at_its_200_ppm()
    {
        // 1 kg at 3.2 g/kg of 6.25 % cure is 200 ppm; with 0.55 of erythorbate and 9.583 of salt the cure is 24 % of the mix. A fourth more
        // is mixed: cut down, the cure is 4 g, of 4 + 0 + 12 g alone a fourth.
        var sheet = Sheet([1000], new Mixed(3.2, 0.55, 9.583), 13.333, Grams(1), null, 25);

        AssertNoneIsAbove(sheet, [1000], new Mixed(3.2, 0.55, 9.583), 13.333);
        var share = sheet.Lines[0].Grams / (double)sheet.ToMix;
        Assert.True(sheet.Pieces.Step.GramsOf(sheet.Pieces.Steps[0]) * share * 0.0625 / 1000 * 1_000_000 <= 200, "More nitrite than 200 ppm.");
    }

    [Fact]
    public void Where_every_line_is_limited_the_pieces_get_less()
    {
        // 2.5 + 0.6 g on the piece; 2 g of cure and nothing of erythorbate is what there is, all cure: no more of it than 2.5 g.
        var sheet = Sheet([1000], new Mixed(2.5, 0.6, 0), 3.1, Grams(1), null, 0);

        Assert.Equal([2m, 0m, 0m], sheet.Lines.Select(l => l.Value));
        Assert.Equal(2, sheet.Pieces.TotalSteps);
        AssertNoneIsAbove(sheet, [1000], new Mixed(2.5, 0.6, 0), 3.1);
    }

    [Fact]
    public void No_piece_and_no_bowl_gets_more_than_the_formula_says() => Law.Holds(
        Gen.Select(
            Gen.Double[200, 9000].Array[1, 12],
            Gen.Select(Gen.Double[0.2, 5], Gen.OneOf(Gen.Const(0.0), Gen.Double[0.05, 3]), Gen.OneOf(Gen.Const(0.0), Gen.Double[1, 30]), (c, e, r) => new Mixed(c, e, r)),
            Gen.Double[1, 60],
            Gen.OneOf(Gen.Int[0, 3].Select(i => Grams(WeighingSteps[i])), Gen.Const(Several)),
            Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 60])), 5_000, c =>
        {
            var (grams, mix, dose, scales, overage) = c;
            foreach (var bowl in new double?[] { null, 500 })
            {
                AssertNoneIsAbove(Sheet(grams, mix, dose, scales, bowl, overage), grams, mix, dose);
            }
        });

    [Theory]
    [InlineData(0.01, false)]
    [InlineData(0.1, true)]
    public void A_step_above_a_hundredth_of_a_cure_is_called_too_coarse(double step, bool isCoarse)
    {
        // 5 g of cure in 50 g of mix on 2.5 kg: 0.1 g is 2 % of it.
        var findings = new FindingLog(Seed.Catalogue);
        SheetFindings.Notice(Batch([2500], new Mixed(1, 0, 9), 20, Grams(step), null, 0), Seed.Catalogue, findings, t => $"/treatments/{t}");
        var codes = findings.Findings.Select(f => f.Code).ToList();
        Assert.Equal(isCoarse, codes.Contains("cure-step-too-coarse"));
        Assert.DoesNotContain("scale-too-coarse", codes);
    }

    private static void AssertNoneIsAbove(TreatmentSheet sheet, double[] grams, Mixed mix, double dose)
    {
        for (var bowl = 0; bowl < sheet.BowlCount; bowl++)
        {
            var weighed = sheet.Lines.Select(l => (double)l.ValueIn(bowl, sheet.BowlCount)).ToArray();
            var all = weighed.Sum();
            for (var i = 0; i < grams.Length; i++)
            {
                var on = sheet.Pieces.Step.GramsOf(sheet.Pieces.Steps[i]);
                AssertAtMost(on, grams[i] * dose / 1000);
                // A piece is seasoned from any bowl.
                AssertAtMost(all > 0 ? on * weighed[0] / all : 0, grams[i] * dose / 1000 * mix.Cure / mix.Sum);
                AssertAtMost(all > 0 ? on * weighed[1] / all : 0, grams[i] * dose / 1000 * mix.Erythorbate / mix.Sum);
            }
        }

        Assert.Equal(sheet.Pieces.TotalSteps, sheet.Pieces.Steps.Sum());
        Assert.True(sheet.ToMix >= sheet.Pieces.Step.DecimalOf(sheet.Pieces.TotalSteps), "Less is mixed than goes on the pieces.");
    }

    private static void AssertAtMost(double weighed, double due) => Assert.True(weighed <= due * (1 + 1e-9), $"{weighed} is more than {due}.");

    private static ScaleSet Grams(double step) => ScaleSet.Of(Given.Step(step, "g"));

    private static TreatmentSheet Sheet(double[] grams, Mixed mix, double dose, ScaleSet scales, double? bowl, double overage) =>
        Batch(grams, mix, dose, scales, bowl, overage).Treatments[0];

    private static BatchSheet Batch(double[] grams, Mixed mix, double dose, ScaleSet scales, double? bowl, double overage) => BatchSheet.Compute(new SheetRequest
    {
        Pile = Given.Pile(Given.Pieces("pork-loin", grams)),
        Treatments =
        [
            Given.Draft(
                Given.Line(Cures.Declared(0.0625), mix.Cure, "parts-by-mass"),
                Given.Line("sodium-erythorbate", null, mix.Erythorbate, "parts-by-mass"),
                Given.Line("sucrose", null, mix.Rest, "parts-by-mass")).Dosed(dose).Ratios().On(0),
        ],
        Scales = scales,
        OveragePercent = overage,
        BowlGrams = bowl,
    });

    private sealed record Mixed(double Cure, double Erythorbate, double Rest)
    {
        public double Sum => Cure + Erythorbate + Rest;
    }
}
