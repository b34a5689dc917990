using System.Globalization;
using CsCheck;
using RubLab.Core.Formulas;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Scaling;

/// <summary>There is never less on the bench than the pieces take, whatever scales the two are weighed on.</summary>
public sealed class LineCoverTests
{
    private static readonly string[] Ids = ["salt", "sugar-brown", "paprika", "black-pepper", "garlic-powder", "cumin-seed"];

    private static readonly Scale Pocket = new(200, Given.Step(0.01, "g"));
    private static readonly Scale Bench = new(3000, Given.Step(0.1, "g"));
    private static readonly Scale Floor = new(30_000, Given.Step(5, "g"));

    private static readonly ScaleSet[] Kitchens = [new([Pocket, Bench, Floor]), new([Pocket, Floor]), new([Bench, Floor]), new([Pocket, Bench])];

    private static readonly Gen<Case> Cases = Gen.Select(
        Gen.OneOf(Gen.Double[0.01, 1], Gen.Double[1, 100]).Array[1, 6], Gen.Double[100, 60_000].Array[1, 8], Gen.Double[1, 60],
        Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 0.5]), Gen.Int[0, Kitchens.Length - 1], Gen.Select(Gen.Bool, Gen.Double[50, 5000], (isBowl, grams) => isBowl ? grams : (double?)null),
        (parts, grams, dose, overage, kitchen, bowl) => new Case(parts, grams, dose, overage, Kitchens[kitchen], bowl));

    [Fact]
    public void The_lines_come_to_no_less_than_the_pieces_take() => Law.Holds(Cases, 20_000, c =>
    {
        var sheet = c.Sheet();

        Assert.True(sheet.ToMix >= OnMeat(sheet), $"{sheet.ToMix} to mix, {OnMeat(sheet)} on the meat");
        Assert.Equal(sheet.ToMix, sheet.Lines.Sum(l => l.Value));
        Assert.All(sheet.Lines, line => Assert.True(line.LostSteps == 0 || line.Steps == 0));
    });

    [Fact]
    public void A_line_is_within_a_step_of_its_share_and_no_more_is_mixed_than_rounding_explains() => Law.Holds(Cases, 20_000, c =>
    {
        var sheet = c.Sheet();
        var mix = c.Grams.Sum() * c.Dose / 1000 * (1 + (c.Overage / 100));
        var raised = Math.Max(mix, (double)OnMeat(sheet));
        for (var i = 0; i < c.Parts.Length; i++)
        {
            var (share, line) = (c.Parts[i] / c.Parts.Sum(), sheet.Lines[i]);
            Assert.InRange(line.Grams, (mix * share) - (line.Step.Grams * 1.000001), (raised * share) + (line.Step.Grams * 1.000001));
        }

        // Half a step a line from rounding to the nearest, and less than one step from covering the pieces.
        var steps = sheet.Lines.Select(l => l.Step.Grams).ToList();
        Assert.InRange((double)sheet.ToMix - raised, (-steps.Sum() / 2) - 1e-6, Math.Max(steps.Sum() / 2, steps.Max()) + 1e-6);
    });

    // 900.3 and 90.03 g are 900 and 90.03 on their scales, and the pieces take 990.33.
    [Fact]
    public void What_the_coarse_scale_cut_off_is_put_back_on_it_where_the_fine_one_is_exact() => Assert.Equal(
        "901 90.03",
        Lines(Given.Pieces("beef-brisket", 500, 500), Given.Line("salt", "table", 900.3, "g/kg"), Given.Line("paprika", null, 90.03, "g/kg")));

    // Of 750.407 g the lines make 750, and no fine line makes 0.41 g good alone. Of 750.007 the pieces take 750.01: the fine
    // line that was cut down most gets a hundredth, and no gram is added. 750.01 on the lines is enough as it is.
    [Theory]
    [InlineData(600.4, 100.004, 50.003, "601 100 50")]
    [InlineData(600, 100.004, 50.003, "600 100.01 50")]
    [InlineData(600, 100.003, 50.004, "600 100 50.01")]
    [InlineData(600, 100.004, 50.006, "600 100 50.01")]
    public void The_finest_line_cut_down_that_makes_it_good_is_raised(double salt, double paprika, double pepper, string lines) => Assert.Equal(
        lines,
        Lines(
            Given.Pieces("beef-brisket", 500, 500), Given.Line("salt", "table", salt, "g/kg"), Given.Line("paprika", null, paprika, "g/kg"),
            Given.Line("black-pepper", "ground", pepper, "g/kg")));

    // 0.404 g are missing: no hundredth makes that good, and the fine line stays as it is wherever it stands.
    [Fact]
    public void A_fine_line_is_not_raised_where_the_coarse_one_has_to_be() => Assert.Equal(
        "100 601",
        Lines(Given.Pieces("beef-brisket", 500, 500), Given.Line("paprika", null, 100.004, "g/kg"), Given.Line("salt", "table", 600.4, "g/kg")));

    // Of 1901.354 g the lines make 1900, and no step makes 1.35 g good alone: one gram, then another, and no hundredth.
    [Fact]
    public void Where_no_step_does_alone_the_coarsest_is_raised_first() => Assert.Equal(
        "100 601 601 600",
        Lines(
            Given.Pieces("beef-brisket", 200, 200, 200, 200, 200), Given.Line("paprika", null, 100.004, "g/kg"), Given.Line("salt", "table", 600.45, "g/kg"),
            Given.Line("sugar-brown", null, 600.45, "g/kg"), Given.Line("black-pepper", "ground", 600.45, "g/kg")));

    // A fine and a coarse scale; the pieces are on the fine one.
    private static string Lines(PileLine pieces, params FormulaLineDraft[] lines)
    {
        var kitchen = new ScaleSet([new(500, Given.Step(0.01, "g")), new(5000, Given.Step(1, "g"))]);
        var sheet = Given.Sheet(Given.Pile(pieces), kitchen, 0, Given.Draft(lines).Ratios().On(0)).Treatments[0];

        Assert.Equal(kitchen.Finest.Step, sheet.Pieces.Step);
        return string.Join(' ', sheet.Lines.Select(l => l.Value.ToString("0.##", CultureInfo.InvariantCulture)));
    }

    private static decimal OnMeat(TreatmentSheet sheet) => sheet.Pieces.Step.DecimalOf(sheet.Pieces.TotalSteps);

    private sealed record Case(double[] Parts, double[] Grams, double Dose, double Overage, ScaleSet Scales, double? Bowl)
    {
        public TreatmentSheet Sheet() => BatchSheet.Compute(new SheetRequest
        {
            Pile = Given.Pile(Given.Pieces("beef-brisket", Grams)),
            Treatments = [Given.Draft([.. Parts.Select((p, i) => Given.Line(Ids[i], null, p, "parts-by-mass"))]).Dosed(Dose).Ratios().On(0)],
            Scales = Scales,
            OveragePercent = Overage,
            BowlGrams = Bowl,
        }).Treatments[0];
    }
}
