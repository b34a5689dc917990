using CsCheck;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Scaling;

public sealed class ScaleSetTests
{
    private static readonly Scale Pocket = new(200, Given.Step(0.01, "g"));
    private static readonly Scale Bench = new(3000, Given.Step(0.1, "g"));
    private static readonly Scale Floor = new(30_000, Given.Step(5, "g"));

    private static readonly ScaleSet Kitchen = new([Floor, Pocket, Bench]);

    private static readonly Gen<(double[] Parts, double Grams, double Dose)> Batches = Gen.Select(
        Gen.OneOf(Gen.Double[0.01, 1], Gen.Double[1, 100]).Array[2, 6], Gen.Double[200, 300_000], Gen.Double[1, 60]);

    [Theory]
    [InlineData(0, 0.01, 1)]
    [InlineData(200, 0.01, 1)]
    [InlineData(200.0001, 0.1, 1)]
    [InlineData(3000, 0.1, 1)]
    [InlineData(3001, 5, 1)]
    [InlineData(30_000, 5, 1)]
    [InlineData(30_001, 5, 2)]
    [InlineData(90_000, 5, 3)]
    [InlineData(90_001, 5, 4)]
    public void The_finest_scale_that_holds_an_amount_is_taken(double grams, double step, int weighings)
    {
        Assert.Equal(step, Kitchen.For(grams).Step.Value);
        Assert.Equal(weighings, Kitchen.WeighingsFor(grams));
    }

    [Fact]
    public void A_kitchen_knows_its_finest_and_its_largest_scale()
    {
        Assert.Equal((Pocket, Floor), (Kitchen.Finest, Kitchen.Largest));
        Assert.Equal(Bench, new ScaleSet([Pocket, Bench]).Largest);
        Assert.Throws<ArgumentException>(() => new ScaleSet([]));
    }

    [Fact]
    public void Of_two_scales_as_fine_the_one_that_takes_more_comes_first() =>
        Assert.Equal(500, new ScaleSet([new(300, Pocket.Step), new(500, Pocket.Step)]).For(10).CapacityGrams);

    // Sums of decimals miss their decimal by a bit: 0.1 + 0.2 is above 0.3, and 330.00000000000006 above 330.
    [Theory]
    [InlineData(0.1 + 0.2, 0.3)]
    [InlineData(330.00000000000006, 330)]
    [InlineData(16 * 28.349523125, 453.59237)]
    [InlineData(1.1 * 1.1 * 100, 121)]
    public void An_amount_that_is_a_capacity_but_for_its_last_bits_goes_on_that_scale_at_once(double grams, double capacity)
    {
        var fine = new Scale(capacity, Given.Step(0.01, "g"));

        Assert.Same(fine, new ScaleSet([fine, Floor]).For(grams));
        Assert.Equal(1, new ScaleSet([fine]).WeighingsFor(grams));
        Assert.Equal(3, new ScaleSet([fine]).WeighingsFor(grams * 3));
        Assert.Same(Floor, new ScaleSet([fine, Floor]).For(grams * (1 + 1e-9)));
        Assert.Equal(2, new ScaleSet([fine]).WeighingsFor(grams * (1 + 1e-9)));
    }

    [Fact]
    public void On_several_scales_every_line_is_within_half_a_step_of_its_own_and_the_mix_is_their_sum() => Law.Holds(Batches, 5_000, c =>
    {
        // With an overage the mix is more than the pieces take, however the lines are rounded.
        var sheet = Sheet(c.Parts, c.Grams, c.Dose, overage: 20);
        var mix = c.Grams * c.Dose / 1000 * 1.2;
        var onOne = sheet.Lines.All(l => l.Step == sheet.Lines[0].Step);

        for (var i = 0; i < c.Parts.Length; i++)
        {
            var line = sheet.Lines[i];
            var exact = mix * c.Parts[i] / c.Parts.Sum();
            Assert.Equal(Kitchen.For(exact).Step, line.Step);

            // On one scale the lines sum to the nearest whole mix instead, and one may be up to a step off.
            Assert.InRange((line.Grams - exact) / line.Step.Grams, onOne ? -1 - 1e-6 : -0.5 - 1e-6, onOne ? 1 + 1e-6 : 0.5 + 1e-6);
        }

        Assert.Equal(sheet.ToMix, sheet.Lines.Sum(l => l.Steps * (decimal)l.Step.Value));
    });

    [Theory]
    [InlineData(100, 100, 1)]
    [InlineData(100.1, 100, 2)]
    [InlineData(330.00000000000006, 110, 3)]
    [InlineData(0, 100, 1)]
    public void A_mix_takes_as_many_bowls_as_hold_it(double mix, double capacity, int bowls) =>
        Assert.Equal(bowls, Bowls.Count(mix, capacity));

    [Fact]
    public void Shares_of_a_line_sum_to_the_line_for_any_bowls_and_differ_by_no_more_than_a_step() =>
        Law.Holds(Gen.Select(Gen.OneOf(Gen.Long[0, 10], Gen.Long[0, 1_000_000_000_000]), Gen.Int[1, 1000]), 10_000, c =>
        {
            var (steps, bowls) = c;
            var shares = Enumerable.Range(0, bowls).Select(bowl => Bowls.Share(steps, bowl, bowls)).ToArray();

            Assert.Equal(steps, shares.Sum());
            Assert.InRange(shares.Max() - shares.Min(), 0, 1);
            Assert.Equal(shares.Min(), shares[0]);
        });

    [Fact]
    public void A_batch_in_bowls_is_weighed_bowl_by_bowl_and_sums_to_the_batch() =>
        Law.Holds(Gen.Select(Batches, Gen.Double[20, 5000]), 3_000, pair =>
        {
            var (c, bowl) = pair;
            var sheet = Sheet(c.Parts, c.Grams, c.Dose, bowl);

            Assert.True(c.Grams * c.Dose / 1000 / sheet.BowlCount <= bowl * (1 + 1e-9));
            for (var i = 0; i < c.Parts.Length; i++)
            {
                var share = c.Grams * c.Dose / 1000 * c.Parts[i] / c.Parts.Sum() / sheet.BowlCount;
                Assert.Equal(Kitchen.For(share).Step, sheet.Lines[i].Step);
                Assert.Equal(Kitchen.WeighingsFor(share), sheet.Lines[i].Weighings);
            }

            Assert.All(sheet.Lines, line =>
                Assert.Equal(line.Value, Enumerable.Range(0, sheet.BowlCount).Sum(b => line.ValueIn(b, sheet.BowlCount))));
        });

    private static TreatmentSheet Sheet(double[] parts, double grams, double dose, double? bowl = null, double overage = 0)
    {
        var ids = new[] { "salt", "sugar-brown", "paprika", "black-pepper", "garlic-powder", "cumin-seed" };
        var ratios = Given.Draft([.. parts.Select((p, i) => Given.Line(ids[i], null, p, "parts-by-mass"))]).Dosed(dose).Ratios();
        return BatchSheet.Compute(new SheetRequest
        {
            Pile = Given.Pile(Given.Pieces("beef-brisket", grams)),
            Treatments = [ratios.On(0)],
            Scales = Kitchen,
            OveragePercent = overage,
            BowlGrams = bowl,
        }).Treatments[0];
    }
}
