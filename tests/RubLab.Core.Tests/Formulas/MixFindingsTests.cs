using RubLab.Core.Formulas;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;

namespace RubLab.Core.Tests.Formulas;

public sealed class MixFindingsTests
{
    [Theory]
    [InlineData(299, FormulaKind.Rub, false)]
    [InlineData(300, FormulaKind.Rub, false)]
    [InlineData(301, FormulaKind.Rub, true)]
    [InlineData(301, FormulaKind.DryBrine, true)]
    [InlineData(301, FormulaKind.Slather, false)]
    [InlineData(301, FormulaKind.Mop, false)]
    public void Grains_more_than_three_times_as_coarse_part_in_a_dry_mix(double coarse, FormulaKind kind, bool noted)
    {
        var findings = Noticed(Given.Draft(
            Given.Line(Grain("dust", 100), 1, "g/kg"), Given.Line("salt", null, 0.001, "g/kg") with { Ingredient = Grain("middle", 150) },
            Given.Line(Grain("grit", coarse), 1, "g/kg")) with { Kind = kind }, null);

        Assert.Equal(noted, findings.Any(f => f.Code == "coarse-with-fine"));
        Assert.All(findings, f => Assert.Equal(Given.Draft().Name, f.Parameters["treatment"]));
        Assert.All(findings, f => Assert.Equal(("grit, one", "dust, one", 3d), (f.Parameters["coarse"], f.Parameters["fine"], f.Parameters["ratio"])));
    }

    [Fact]
    public void A_line_of_nothing_does_not_part() => Assert.Empty(
        Noticed(Given.Draft(Given.Line(Grain("grit", 5000), 0, "g/kg"), Given.Line(Grain("dust", 100), 1, "g/kg")), null));

    [Fact]
    public void Lines_without_a_size_do_not_part() => Assert.Empty(
        Noticed(Given.Draft(Given.Line(Grain("grit", 5000), 1, "g/kg"), Given.Line(Given.MadeUp("paste", Band.Exact(1), default, 0), 1, "g/kg")), null));

    [Theory]
    [InlineData(150, 20.1, false)]
    [InlineData(150.1, 20.1, true)]
    [InlineData(150.1, 19.9, false)]
    [InlineData(260, 60, true)]
    public void Sugar_scorches_above_its_temperature_in_a_mix_with_more_than_a_fifth_of_it(double celsius, double percent, bool noted)
    {
        var draft = Given.Draft(
            Given.Line(Given.MadeUp("sugar", Band.Exact(0.8), default, 0) with { SugarsGramsPer100Grams = 100 }, percent, "parts-by-mass"),
            Given.Line(Given.MadeUp("rest", Band.Exact(0.5), default, 0), 100 - percent, "parts-by-mass")).Dosed(20);

        var findings = Noticed(draft, celsius);

        Assert.Equal(noted, findings.Any(f => f.Code == "sugar-scorch"));
        Assert.All(findings, f => Assert.Equal((Severity.Warning, percent), (f.Severity, f.Parameters["share"])));
        Assert.Empty(Noticed(draft, null));
    }

    [Theory]
    [InlineData("flake-dense", "tbsp", true)]
    [InlineData("flake-hollow", "tbsp", true)]
    [InlineData("flake-dense", "g", false)]
    [InlineData("table", "tbsp", false)]
    [InlineData(null, "tbsp", false)]
    public void Flakes_by_the_spoon_are_named_and_flakes_by_weight_are_not(string? form, string unit, bool noted)
    {
        var findings = Noticed(Given.Draft(Given.Line("salt", form, 2, unit)).WrittenFor(1, "kg"), null);

        Assert.Equal(noted, findings.Any(f => f.Code == "rub-by-volume-on-flake"));
    }

    [Fact]
    public void What_a_spoon_of_flakes_may_hold_is_the_spoon_at_the_ends_of_its_density()
    {
        Assert.True(Given.Ingredient("salt").TryFindForm("flake-hollow", out var flake));

        var finding = Assert.Single(
            Noticed(Given.Draft(Given.Line("salt", "flake-hollow", 2, "tbsp")).WrittenFor(1, "kg"), null), f => f.Code == "rub-by-volume-on-flake");

        Assert.Equal(Math.Round(flake.Density!.GramsPerMillilitre.Low * 14.78676478125, 1), finding.Parameters["low"]);
        Assert.Equal(Math.Round(flake.Density.GramsPerMillilitre.High * 14.78676478125, 1), finding.Parameters["high"]);
    }

    private static Ingredient Grain(string id, double micrometres)
    {
        var grain = Given.MadeUp(id, Band.Exact(0.5), default, 0);
        return grain with { Forms = [grain.Forms[0] with { SizeLowMicrometres = micrometres, SizeHighMicrometres = micrometres }] };
    }

    private static IReadOnlyList<Finding> Noticed(FormulaDraft draft, double? celsius)
    {
        var findings = new FindingLog(Seed.Catalogue);
        MixFindings.Notice(draft.Ratios(), celsius, Seed.Catalogue, findings, "/formula");
        return findings.Findings;
    }
}
