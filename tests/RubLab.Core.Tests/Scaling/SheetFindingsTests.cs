using System.Globalization;
using RubLab.Core.Formulas;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Scaling;

public sealed class SheetFindingsTests
{
    [Theory]
    [InlineData(0.99, "monolayer")]
    [InlineData(1.01, null)]
    [InlineData(3.99, null)]
    [InlineData(4.01, "needs-binder")]
    public void A_coat_is_remarked_on_below_one_grain_and_above_four(double grains, string? code)
    {
        // Grains of 0.5 mm and a density of 1 g/mL: so many grains are half as many millimetres, tenths of a g per cm2.
        var area = Given.Pieces("beef-brisket", 6000).GeometryOf(0, 6000)!.SurfaceSquareCentimetres;
        var draft = Given.Draft(Given.Line(Sand(), grains * 0.05 * area / 6, "g/kg"));

        var findings = Noticed(Request(draft, 0.001, 6000));

        Assert.Equal(code is null ? [] : [code], findings.Select(f => f.Code));
        Assert.All(findings, f => Assert.Equal(grains * 0.5, (double)f.Parameters["layer"], 0.0051));
        Assert.Empty(Noticed(Request(draft with { Kind = FormulaKind.Mop }, 0.001, 6000)));
    }

    [Theory]
    [InlineData(1950, 0)]
    [InlineData(1957, 1)]
    public void Pieces_covered_more_than_a_quarter_unlike_are_named(double heavier, int remarks) =>
        Assert.Equal(remarks, Noticed(Request(TwoGrains(), 0.001, 1000, heavier)).Count(f => f.Code == "coverage-spread"));

    [Theory]
    [InlineData(100, 0)]
    [InlineData(100.1, 2)]
    [InlineData(250, 3)]
    public void A_mix_larger_than_its_bowl_is_split(double mix, int batches)
    {
        var findings = Noticed(Request(TwoGrains(), 0.001, mix / 10 * 1000) with { BowlGrams = 100 });

        Assert.Equal(batches == 0 ? [] : [(double)batches], findings.Where(f => f.Code == "capacity-split").Select(f => f.Parameters["batches"]));
    }

    [Theory]
    [InlineData(1, 1000, 0.3, null)]
    [InlineData(1, 2000, 2, null)]
    [InlineData(0.1, 700, 0.15, null)]
    [InlineData(1, 2000, 2, 9.0)]
    [InlineData(1, 1500, 1.7, 1.2)]
    public void Taking_the_premix_gives_the_small_line_its_amount_and_the_carrier_its_own(double step, double grams, double small, double? bowl)
    {
        var draft = Given.Draft(Given.Line("salt", "table", 9, "g/kg"), Given.Line("cayenne-red-pepper", null, small, "g/kg"));
        var request = Request(draft, step, grams) with { BowlGrams = bowl };
        var sheet = BatchSheet.Compute(request).Treatments[0];

        var premix = Noticed(request).Where(f => f.Code == "premix").ToList();

        var finding = premix.First(f => (string)f.Parameters["ingredient"] == draft.Lines[1].Ingredient!.Name);
        double own = Grams(finding, "amount"), ingredient = Grams(finding, "premixIngredient");
        double carrier = Grams(finding, "premixCarrier"), taken = Grams(finding, "premixAmount");
        var share = ingredient / (ingredient + carrier);

        // Printed to three decimals, or three digits below one gram.
        var printed = 0.006 * taken;
        Assert.Equal(small / (small + 9), share, 0.006);
        Assert.Equal(own, taken * share, printed);
        Assert.Equal(small / 9 * (taken - own), own, printed);
        Assert.True(step / ingredient <= 0.05 + 1e-9, $"{step} of {ingredient}");

        // The carrier in it is what one bowl of the sheet takes of the carrier.
        Assert.Equal(sheet.Lines[0].Grams / sheet.BowlCount, taken * (1 - share), step + printed);
    }

    [Fact]
    public void A_line_that_is_in_some_bowls_and_not_in_others_is_coarse()
    {
        // One step of pepper for two bowls.
        var draft = Given.Draft(Given.Line("salt", "table", 40, "g/kg"), Given.Line("cayenne-red-pepper", null, 1, "g/kg"));

        var findings = Noticed(Request(draft, 1, 1000) with { BowlGrams = 21 });

        Assert.Contains(findings, f => f.Code == "scale-too-coarse" && (string)f.Parameters["amount"] == "0.5 g");
        Assert.All(findings.Where(f => f.Code == "premix"), f => Assert.All(f.Parameters.Values, v => Assert.DoesNotContain("NaN", v.ToString()!, StringComparison.Ordinal)));
    }

    [Fact]
    public void The_largest_line_has_nothing_to_carry_it() => Assert.DoesNotContain(
        Noticed(Request(Given.Draft(Given.Line("salt", "table", 9, "g/kg")), 1, 1000)), f => f.Code == "premix");

    private static double Grams(Finding finding, string name) =>
        double.Parse(((string)finding.Parameters[name]).Split(' ')[0], CultureInfo.InvariantCulture);

    // Two grains deep on a brisket of usual proportions, so that the coat itself is not remarked on.
    private static FormulaDraft TwoGrains() => Given.Draft(Given.Line(Sand(), 10, "g/kg"));

    private static Ingredient Sand()
    {
        var sand = Given.MadeUp("sand", Band.Exact(1), default, 0);
        return sand with { Forms = [sand.Forms[0] with { SizeLowMicrometres = 500, SizeHighMicrometres = 500 }] };
    }

    private static SheetRequest Request(FormulaDraft draft, double step, params double[] grams) => new()
    {
        Pile = Given.Pile(Given.Pieces("beef-brisket", grams)),
        Treatments = [draft.Ratios().On(0)],
        Scales = ScaleSet.Of(Given.Step(step, "g")),
        OveragePercent = 0,
    };

    private static IReadOnlyList<Finding> Noticed(SheetRequest request)
    {
        var findings = new FindingLog(Seed.Catalogue);
        SheetFindings.Notice(BatchSheet.Compute(request), Seed.Catalogue, findings, t => $"/treatments/{t}");
        return findings.Findings;
    }
}
