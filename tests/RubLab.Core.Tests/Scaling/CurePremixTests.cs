using System.Globalization;
using CsCheck;
using RubLab.Core.Formulas;
using RubLab.Core.Remarks;
using RubLab.Core.Scaling;
using Mixes = RubLab.Core.Tests.Curing.Cures;

namespace RubLab.Core.Tests.Scaling;

/// <summary>A premix never brings more of a cure than is due, nor less by more than a hundredth; otherwise there is none.</summary>
public sealed class CurePremixTests
{
    private static readonly ScaleSet[] Kitchens =
    [
        ScaleSet.Of(Given.Step(1, "g")), ScaleSet.Of(Given.Step(0.1, "g")), ScaleSet.Of(Given.Step(0.5, "g")), ScaleSet.Of(Given.Step(0.05, "g")),
        ScaleSet.Of(Given.Step(0.005, "lb")), new([new(200, Given.Step(0.1, "g")), new(3000, Given.Step(1, "g")), new(30_000, Given.Step(5, "g"))]),
    ];

    private static readonly Gen<Case> Cases = Gen.Select(
        Gen.Select(Gen.Double[100, 20_000], Gen.Int[0, Kitchens.Length - 1], Gen.OneOf(Gen.Const(0.0625), Gen.Const(0.006), Gen.Const(0.1)), Gen.Double[20, 700]),
        Gen.Select(Gen.Double[5, 30], Gen.OneOf(Gen.Const(0.0), Gen.Double[0.05, 5]), Gen.OneOf(Gen.Const(0.0), Gen.Double[0.05, 0.5]), Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 40])),
        Gen.Bool.Select(isSplit => isSplit ? 500 : (double?)null),
        (a, b, bowl) => new Case(a.Item1, Kitchens[a.Item2], a.Item3, a.Item4, b.Item1, b.Item2, b.Item3, b.Item4, bowl));

    // 1.5675 g of cure and 9.5 g of salt on whole grams: the nearest premix brought 16 % too much.
    [Theory]
    [InlineData(627, 2.5, 15.1, 1)]
    [InlineData(395, 2.5, 17, 1)]
    [InlineData(1234, 3.2, 17.3, 1)]
    public void On_too_coarse_a_scale_there_is_none_and_the_sheet_says_so(double meat, double cure, double salt, double step)
    {
        var findings = Noticed(Of(meat, ScaleSet.Of(Given.Step(step, "g")), 0.0625, cure * 62.5, salt));

        Assert.DoesNotContain(findings, f => f.Code == "premix");
        var none = Assert.Single(findings, f => f.Code == "no-premix");
        Assert.Equal(meat * cure / 1000, Read(none, "amount"), 0.006);
        Assert.InRange(meat * cure / 1000 / Read(none, "suggestedStep"), 100 * (1 - 1e-9), 250);
    }

    [Theory]
    [InlineData(777, 3.2, 17.3)]
    [InlineData(1360.77711, 2, 18)]
    public void On_tenths_of_a_gram_a_premix_brings_no_more_than_the_due(double meat, double cure, double salt)
    {
        var findings = Noticed(Of(meat, ScaleSet.Of(Given.Step(0.1, "g")), 0.0625, cure * 62.5, salt));

        Assert.InRange(Held(Assert.Single(findings, f => f.Code == "premix")) / (meat * cure / 1000), 0.99, 1 + 1e-12);
    }

    [Fact]
    public void No_premix_brings_more_than_the_level_nor_misses_it_by_more_than_a_hundredth()
    {
        var given = 0;
        Law.Holds(Cases, 10_000, c =>
        {
            var sheet = BatchSheet.Compute(c.Request());
            foreach (var premix in Noticed(c.Request()).Where(f => f.Code == "premix"))
            {
                var line = sheet.Treatments[0].Treatment.Ratios.Lines.Select((l, i) => (l.Line, Index: i)).Single(l => l.Line.Ingredient.Name == (string)premix.Parameters["ingredient"]);
                if (line.Line.CarriesLimited)
                {
                    var due = c.Meat / 1000 * (1 + (c.Overage / 100)) * line.Line.Amount / sheet.Treatments[0].BowlCount;
                    Assert.InRange(Held(premix) / due, 0.99 - 1e-12, 1 + 1e-12);
                    Assert.Equal(((Held(premix) / due) - 1) * 100, (double)premix.Parameters["error"], 0.0501);
                    Interlocked.Increment(ref given);
                }

                Assert.False(sheet.Treatments[0].Treatment.Ratios.Lines.Single(l => l.Line.Ingredient.Name == (string)premix.Parameters["carrier"]).Line.CarriesLimited);
            }
        });
        Assert.InRange(given, 500, int.MaxValue);
    }

    // What the premixes leave of the mix still covers the pieces, so that on none of them is more of a limited line than its due.
    [Fact]
    public void With_every_premix_followed_the_mix_is_no_less_than_without() => Law.Holds(Cases, 3_000, c =>
    {
        var sheet = BatchSheet.Compute(c.Request()).Treatments[0];
        foreach (var premix in Noticed(c.Request()).Where(f => f.Code == "premix"))
        {
            var replaced = sheet.Lines.Where((_, i) => Named(premix, sheet.Treatment.Ratios.Lines[i].Line)).Sum(l => l.Grams) / sheet.BowlCount;
            Assert.InRange(Grams(premix, "premixAmount"), replaced * (1 - 1e-9), double.MaxValue);
        }
    });

    private static bool Named(Finding premix, FormulaLine line) =>
        line.Ingredient.Name == (string)premix.Parameters["ingredient"] || line.Ingredient.Name == (string)premix.Parameters["carrier"];

    private static double Held(Finding premix)
    {
        double cure = Grams(premix, "premixIngredient"), carrier = Grams(premix, "premixCarrier");
        return Grams(premix, "premixAmount") * cure / (cure + carrier);
    }

    private static double Grams(Finding finding, string name) =>
        Given.Step(Read(finding, name), ((string)finding.Parameters[name]).Split(' ')[1]).Grams;

    private static double Read(Finding finding, string name) =>
        double.Parse(((string)finding.Parameters[name]).Split(' ')[0], CultureInfo.InvariantCulture);

    private static SheetRequest Of(double meat, ScaleSet scales, double nitrite, double ppm, double salt) =>
        new Case(meat, scales, nitrite, ppm, salt, 0, 0, 0, null).Request();

    private static IReadOnlyList<Finding> Noticed(SheetRequest request)
    {
        var findings = new FindingLog(Seed.Catalogue);
        SheetFindings.Notice(BatchSheet.Compute(request), Seed.Catalogue, findings, t => $"/treatments/{t}");
        return findings.Findings;
    }

    private sealed record Case(
        double Meat, ScaleSet Scales, double Nitrite, double Ppm, double Salt, double Pepper, double Erythorbate, double Overage, double? Bowl)
    {
        public SheetRequest Request()
        {
            List<FormulaLineDraft> lines = [Given.Line(Mixes.Declared(Nitrite), Ppm / Nitrite / 1000, "g/kg"), Given.Line("sodium-chloride", null, Salt, "g/kg")];
            if (Pepper > 0)
            {
                lines.Add(Given.Line("black-pepper", "ground", Pepper, "g/kg"));
            }

            if (Erythorbate > 0)
            {
                lines.Add(Given.Line("sodium-erythorbate", null, Erythorbate, "g/kg"));
            }

            return new SheetRequest
            {
                Pile = Given.Pile(Given.Pieces("pork-loin", Meat)),
                Treatments = [Given.Draft([.. lines]).Ratios().On(0)],
                Scales = Scales,
                OveragePercent = Overage,
                BowlGrams = Bowl,
            };
        }
    }
}
