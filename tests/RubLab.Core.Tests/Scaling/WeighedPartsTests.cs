using CsCheck;
using RubLab.Core.Curing;
using RubLab.Core.Scaling;
using Mixes = RubLab.Core.Tests.Curing.Cures;

namespace RubLab.Core.Tests.Scaling;

/// <summary>What of a due is brought by whole weighing steps.</summary>
public sealed class WeighedPartsTests
{
    [Fact]
    public void In_the_mix_it_is_what_is_weighed_of_what_is_due_and_never_more_than_all()
    {
        // 2.69 g of cure on tenths is 2.6; the sugar is rounded up.
        var sheet = Sheet(0.1, 0, 1000).Treatments[0];

        Assert.Equal(2.6 / 2.69, WeighedParts.InMix(sheet, 0), 1e-12);
        Assert.Equal(1, WeighedParts.InMix(sheet, 1));
    }

    [Fact]
    public void On_pieces_the_one_that_gets_least_of_its_due_stands_for_its_line()
    {
        // 26.9 and 13.181 g of mix on whole grams, of 40.081 g and a tenth more: 44.0891 g, 4.40891 of it cure, so 4 of 45 g.
        var sheet = Sheet(1, 10, 1000, 490);

        Assert.Equal([26L, 13L], sheet.Treatments[0].Pieces.Steps);
        Assert.Equal([4m, 41m], sheet.Treatments[0].Lines.Select(l => l.Value));
        Assert.Equal(26 / 26.9 * (4 / 45.0) / 0.1, WeighedParts.OnPieces(sheet.Treatments[0], sheet.Request.Pile, 0, 0), 1e-12);
    }

    [Fact]
    public void The_low_end_of_a_load_is_what_no_piece_gets_less_than() => Law.Holds(
        Gen.Select(Gen.Double[100, 5000].Array[1, 6], Gen.OneOf(Gen.Const(0.1), Gen.Const(1.0)), Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 30])), 2_000, c =>
        {
            var sheet = Sheet(c.Item2, c.Item3, c.Item1);
            var treatment = sheet.Treatments[0];
            var load = AdditiveLoads.Of(
                sheet.Request.Pile, 0, sheet.Request.Treatments, isWeighed: true, (_, i) => WeighedParts.OnPieces(treatment, sheet.Request.Pile, 0, i)).Single(l => l.Additive == "nitrite");
            var cure = treatment.Lines[0].Grams / treatment.Lines.Sum(l => l.Grams);
            var brought = c.Item1.Select((grams, i) => treatment.Pieces.Step.GramsOf(treatment.Pieces.Steps[i]) * cure * 62_500 / grams).ToList();

            Assert.Equal(brought.Min(), load.PartsPerMillion.Low, 1e-6);
            Assert.Equal(load.PartsPerMillion.Low, load.PartsPerMillion.Typical);
            Assert.Equal(2.69 * 62.5, load.PartsPerMillion.High, 1e-6);
            Assert.InRange(brought.Max(), 0, load.PartsPerMillion.High * (1 + 1e-9));
        });

    // 26.9 g/kg, a tenth of it a cure of 6.25 %.
    private static BatchSheet Sheet(double step, double overage, params double[] grams) =>
        Given.Sheet(Given.Pile(Given.Pieces("pork-loin", grams)), Given.Step(step, "g"), overage, Mixes.Mix(Mixes.Declared(0.0625), 1, 9, 26.9));
}
