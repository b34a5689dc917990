using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Salt;

/// <summary>What the trade does every day. Common practice: no published source stands behind any of it.</summary>
public sealed class TradeFactsTests
{
    [Theory]
    [InlineData("flake-dense")]
    [InlineData("flake-hollow")]
    [InlineData("coarse-moist-sea")]
    public void Coarse_salt_and_coarse_pepper_alone_make_a_whole_rub(string salt)
    {
        var findings = new FindingLog(Seed.Catalogue);
        var ratios = Given.Draft(Given.Line("salt", salt, 9, "g/kg"), Given.Line("black-pepper", "coarse", 6, "g/kg")).Ratios(findings);
        var pile = Given.Pile(Given.Pieces("beef-brisket", 6200, 5900) with { PortionGrams = 150 });
        var treatment = ratios.On(0) with { Stage = Stage.Before, RetainedPercent = new Band(90, 95, 100) };

        var sheet = Given.Sheet(pile, WeighingStep.Default, 5, treatment);
        SheetFindings.Notice(sheet, Seed.Catalogue, findings, t => $"/treatments/{t}");
        var checks = SaltCheck.Of(SaltLedger.Of(pile, 0, [treatment], isWeighed: true), Seed.Catalogue);

        Assert.Equal([93, 89], sheet.Treatments[0].Pieces.Steps);
        Assert.Equal([115, 76], sheet.Treatments[0].Lines.Select(l => l.Steps));
        Assert.Equal(100 * 0.985281 * 9 / 15, ratios.SaltSharePercent.Typical, 1e-9);
        Assert.Equal(AuthoringMode.Ratios, ratios.Formula.Mode);
        var bare = Assert.Single(findings.Findings);
        Assert.Equal(("monolayer", Severity.Info), (bare.Code, bare.Severity));
        Assert.Equal((Verdict.Within, "Nothing to change."), OfRoast(checks));
    }

    [Fact]
    public void By_equal_parts_it_resolves_too_and_only_asks_to_be_weighed()
    {
        var findings = new FindingLog(Seed.Catalogue);

        Given.Draft(Given.Line("salt", "flake-dense", 1, "parts-by-volume"), Given.Line("black-pepper", "coarse", 1, "parts-by-volume")).Dosed(14).Ratios(findings);

        Assert.All(findings.Findings, f => Assert.Contains(f.Code, new[] { "density-low-confidence", "density-spread" }));
    }

    [Fact]
    public void Seasoned_the_evening_before_and_held_cold()
    {
        var evening = Given.Draft(Given.Line("salt", "table", 10, "g/kg")).Ratios().On(0) with { Stage = Stage.Before };
        var cold = Assert.Single(Seed.Catalogue.Cautions, c => c.Id == "cold-holding");

        Assert.Equal(Stage.Before, evening.Stage);
        Assert.Equal("any", cold.AppliesTo);
        Assert.Contains("41 F (5 C)", cold.Text, StringComparison.Ordinal);
    }

    private static (Verdict, string) OfRoast(IReadOnlyList<SaltCheck> checks)
    {
        var roast = Assert.Single(checks, c => c.Id == "S25");
        return (roast.Verdict, roast.Advice);
    }
}
