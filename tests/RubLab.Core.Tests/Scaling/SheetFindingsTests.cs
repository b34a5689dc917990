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

    // Pieces of one size, or of 1 kg and 1.8 kg, whose coverage at one dose is as the cube root of 1.8, 1.216.
    [Theory]
    [InlineData(1000, 1, 1, null)]
    [InlineData(1000, 1, 1.24, null)]
    [InlineData(1000, 1, 1.26, "coverage-by-factor")]
    [InlineData(1800, 1, 1, null)]
    [InlineData(1800, 1, 1.1, "coverage-by-factor")]
    [InlineData(8000, 1, 1, "coverage-spread")]
    [InlineData(8000, 0.5, 0.5, "coverage-spread")]
    [InlineData(8000, 4, 1, "coverage-by-factor")]
    [InlineData(8000, 1, 2, "coverage-by-factor")]
    [InlineData(8000, 1, 0.5, null)]
    [InlineData(8000, 1, 0, null)]
    public void An_uneven_coat_is_put_down_to_the_pieces_factors_or_to_their_size(double heavier, double first, double second, string? code)
    {
        var request = Request(TwoGrains(), 0.001, 1000, heavier);
        request = request with { Pile = Given.Pile(request.Pile.Lines[0] with { DoseFactors = [first, second] }) };

        Assert.Equal(code is null ? [] : [code], Noticed(request).Where(f => f.Code.StartsWith("coverage", StringComparison.Ordinal)).Select(f => f.Code));
    }

    [Fact]
    public void A_coat_uneven_by_factors_tells_what_the_full_dose_would_give()
    {
        var request = Request(TwoGrains(), 0.001, 1000, 1000);
        var finding = Assert.Single(
            Noticed(request with { Pile = Given.Pile(request.Pile.Lines[0] with { DoseFactors = [1, 2] }) }), f => f.Code == "coverage-by-factor");
        var even = 10 / request.Pile.Lines[0].GeometryOf(0, 1000)!.SurfaceSquareCentimetres * 100;

        Assert.Equal([even, even, even, even * 2], new[] { "fullLow", "fullHigh", "low", "high" }.Select(n => (double)finding.Parameters[n]), (a, b) => Math.Abs(a - b) < 0.0051);
    }

    [Fact]
    public void A_dose_by_area_is_never_called_uneven_by_size()
    {
        // 0.247 and 0.323 g come to three tenths each: rounding alone makes three tenths of a difference.
        var draft = Given.Draft(Given.Line(Sand(), 1, "parts-by-mass")) with { Base = RatioBase.Area };

        Assert.DoesNotContain(
            Noticed(Request(draft.Dosed(0.03, "g/100cm2"), 0.1, 1000, 1500)), f => f.Code.StartsWith("coverage", StringComparison.Ordinal));
    }

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
    [InlineData(1, 10_000, 0.3, null)]
    [InlineData(1, 2000, 2, null)]
    [InlineData(0.1, 7000, 0.15, null)]
    [InlineData(1, 2000, 2, 9.0)]
    [InlineData(1, 1500, 1.7, 1.2)]
    public void Taking_the_premix_gives_the_small_line_and_its_carrier_their_amounts_but_for_the_errors_told(double step, double grams, double small, double? bowl)
    {
        var draft = Given.Draft(Given.Line("salt", "table", 9, "g/kg"), Given.Line("cayenne-red-pepper", null, small, "g/kg"));
        var request = Request(draft, step, grams) with { BowlGrams = bowl };
        var sheet = BatchSheet.Compute(request).Treatments[0];

        var finding = Noticed(request).First(f => f.Code == "premix" && (string)f.Parameters["ingredient"] == draft.Lines[1].Ingredient!.Name);

        double ingredient = Grams(finding, "premixIngredient"), carrier = Grams(finding, "premixCarrier"), taken = Grams(finding, "premixAmount");
        Assert.All([ingredient, carrier, taken], amount => Assert.Equal(Math.Round(amount / step), amount / step, 1e-9));
        Assert.InRange(step / ingredient, 0, 0.05 + 1e-9);

        // The due of one bowl before any rounding.
        var salt = grams * 9 / 1000 / sheet.BowlCount;
        var held = taken * ingredient / (ingredient + carrier);
        Assert.Equal((double)finding.Parameters["error"], ((held / (salt * small / 9)) - 1) * 100, 0.0501);
        Assert.Equal((double)finding.Parameters["carrierError"], (((taken - held) / salt) - 1) * 100, 0.0501);
    }

    // 20 steps of the small line are ten batches of two steps.
    [Theory]
    [InlineData(1990, false)]
    [InlineData(2010, true)]
    public void A_premix_is_for_ten_batches_at_most(double grams, bool isGiven)
    {
        var draft = Given.Draft(Given.Line("salt", "table", 49, "g/kg"), Given.Line("cayenne-red-pepper", null, 1, "g/kg"));

        Assert.Equal(isGiven, Noticed(Request(draft, 1, grams)).Any(f => f.Code == "premix"));
    }

    [Theory]
    [InlineData(FormulaKind.Injection, "Water")]
    [InlineData(FormulaKind.Soak, "Water")]
    [InlineData(FormulaKind.Mop, null)]
    public void Water_carries_what_dissolves_in_a_pickle_and_nothing_else(FormulaKind kind, string? carrier)
    {
        var draft = Given.Draft(Given.Line("water", null, 90, "g/kg"), Given.Line("sugar-granulated", null, 1, "g/kg")) with { Kind = kind };

        Assert.Equal(carrier is null ? [] : [carrier], Noticed(Request(draft, 1, 6000)).Where(f => f.Code == "premix").Select(f => (string)f.Parameters["carrier"]));
    }

    [Fact]
    public void No_liquid_carries_a_spice()
    {
        var draft = Given.Draft(Given.Line("vinegar-cider", null, 300, "g/kg"), Given.Line("sugar-granulated", null, 40, "g/kg"), Given.Line("cayenne-red-pepper", null, 1, "g/kg"))
            with { Kind = FormulaKind.Mop };

        Assert.Equal("White sugar", Assert.Single(Noticed(Request(draft, 1, 6000)), f => f.Code == "premix").Parameters["carrier"]);
    }

    // All advice may be followed at once: a premix is weighed in place of both its lines.
    [Fact]
    public void No_line_goes_into_two_premixes()
    {
        var draft = Given.Draft(
            Given.Line("salt", "table", 9, "g/kg"), Given.Line("paprika", null, 6, "g/kg"), Given.Line("garlic-powder", null, 1.6, "g/kg"),
            Given.Line("onion-powder", null, 1.1, "g/kg"), Given.Line("white-pepper", null, 0.6, "g/kg"), Given.Line("oregano-dried", null, 0.5, "g/kg"));
        var findings = Noticed(Request(draft, 1, 10_000));
        string[] Said(string code, string name) => [.. findings.Where(f => f.Code == code).Select(f => (string)f.Parameters[name])];

        Assert.Equal(["Garlic powder", "Onion powder", "Oregano, dried"], Said("premix", "ingredient"));
        Assert.Equal(["Salt", "Paprika", "White pepper"], Said("premix", "carrier"));
        Assert.Equal(["Garlic powder", "Onion powder", "White pepper", "Oregano, dried"], Said("scale-too-coarse", "what"));
    }

    [Fact]
    public void A_line_that_is_in_some_bowls_and_not_in_others_is_coarse()
    {
        // One step of pepper for two bowls.
        var draft = Given.Draft(Given.Line("salt", "table", 40, "g/kg"), Given.Line("cayenne-red-pepper", null, 1, "g/kg"));

        var findings = Noticed(Request(draft, 1, 1000) with { BowlGrams = 21 });

        Assert.Contains(findings, f => f.Code == "scale-too-coarse" && (string)f.Parameters["amount"] == "0.5 g" && (string)f.Parameters["what"] == "Cayenne pepper");
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
