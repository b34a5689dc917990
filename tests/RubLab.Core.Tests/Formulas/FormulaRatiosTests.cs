using CsCheck;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;

namespace RubLab.Core.Tests.Formulas;

public sealed class FormulaRatiosTests
{
    private const double Exact = 1e-12;

    [Fact]
    public void Amounts_stand_on_the_weight_they_were_written_for()
    {
        var ratios = Given.Draft(Given.Line("salt", "table", 30, "g"), Given.Line("paprika", "ground", 10, "g")).WrittenFor(2, "kg").Ratios();

        Assert.Equal([15, 5], ratios.Lines.Select(l => Math.Round(l.RatioGramsPerKilogram.Typical, 12)));
        Assert.Equal(20, ratios.DoseGramsPerKilogram, Exact);
        Assert.All(ratios.Lines, l => Assert.True(l.RatioGramsPerKilogram.IsExact));
        Assert.Equal(WeightBasis.Green, ratios.RatiosAreOf);
    }

    [Fact]
    public void Amounts_with_a_dose_are_shares_of_the_dose()
    {
        var ratios = Given.Draft(Given.Line("salt", "table", 30, "g"), Given.Line("paprika", "ground", 10, "g")).Dosed(12).Ratios();

        Assert.Equal([9, 3], ratios.Lines.Select(l => Math.Round(l.RatioGramsPerKilogram.Typical, 12)));
        Assert.Equal(12, ratios.DoseGramsPerKilogram);
    }

    [Fact]
    public void Ratios_add_up_to_their_own_dose()
    {
        var ratios = Given.Draft(Given.Line("salt", "table", 1, "%"), Given.Line("paprika", "ground", 5, "g/kg"), Given.Line("cloves-ground", "ground", 500, "ppm")).Ratios();

        Assert.Equal(15.5, ratios.DoseGramsPerKilogram, Exact);
        Assert.Equal([10, 5, 0.5], ratios.Lines.Select(l => Math.Round(l.RatioGramsPerKilogram.Typical, 12)));
        Assert.Equal(10 / 15.5, ratios.Lines[0].Share.Typical, Exact);
    }

    [Fact]
    public void Ratios_with_a_dose_are_shares_of_the_dose()
    {
        var ratios = Given.Draft(Given.Line("salt", "table", 1, "%"), Given.Line("paprika", "ground", 1, "%")).Dosed(30).Ratios();

        Assert.Equal([15, 15], ratios.Lines.Select(l => Math.Round(l.RatioGramsPerKilogram.Typical, 12)));
    }

    [Fact]
    public void A_card_written_for_meat_as_bought_says_so_unless_it_has_a_dose()
    {
        var draft = Given.Draft(Given.Line("salt", "table", 30, "g")).WrittenFor(2, "kg", WeightBasis.Purchase);

        Assert.Equal(WeightBasis.Purchase, draft.Ratios().RatiosAreOf);
        Assert.Equal(WeightBasis.Green, draft.Dosed(10).Ratios().RatiosAreOf);
    }

    [Fact]
    public void A_volume_gives_its_ratio_a_band_around_its_density()
    {
        var ratios = Given.Draft(Given.Line("black-pepper", "whole", 2, "tsp")).WrittenFor(1, "kg").Ratios();

        Assert.Equal(5.8, ratios.Lines[0].RatioGramsPerKilogram.Typical, Exact);
        Assert.Equal(5.8 * 0.9, ratios.Lines[0].RatioGramsPerKilogram.Low, Exact);
        Assert.Equal(5.8 * 1.1, ratios.Lines[0].RatioGramsPerKilogram.High, Exact);
        Assert.Equal(5.8, ratios.DoseGramsPerKilogram, Exact);
    }

    [Fact]
    public void A_volume_at_a_fixed_dose_gives_the_share_a_band_and_not_the_whole()
    {
        var ratios = Given.Draft(Given.Line("black-pepper", "whole", 1, "parts-by-volume")).Dosed(8).Ratios();

        Assert.Equal(Band.Exact(8), ratios.Lines[0].RatioGramsPerKilogram);
        Assert.Equal(Band.Exact(1), ratios.Lines[0].Share);
    }

    [Fact]
    public void A_volume_at_a_fixed_dose_gives_its_line_the_corners_of_its_share()
    {
        var ratio = Given.Draft(
            Given.Line("salt", "table", 1, "parts-by-volume"), Given.Line("black-pepper", "ground", 1, "parts-by-volume")).Dosed(20).Ratios()
            .Lines[0].RatioGramsPerKilogram;

        Assert.Equal(20 * 5.4 / (5.4 + 2.53), ratio.Low, 1e-9);
        Assert.Equal(20 * 6.0 / 8.3, ratio.Typical, 1e-9);
        Assert.Equal(20 * 6.6 / (6.6 + 2.07), ratio.High, 1e-9);
    }

    [Fact]
    public void The_salt_share_counts_sodium_chloride_in_every_line()
    {
        var ratios = Given.Draft(Given.Line("salt", "table", 1, "parts-by-mass"), Given.Line("soy-sauce-shoyu", "liquid", 1, "parts-by-mass")).Dosed(20).Ratios();

        Assert.Equal((98.5281 + 13.964) / 2, ratios.SaltSharePercent.Typical, Exact);
        Assert.True(ratios.SaltSharePercent.IsExact);
    }

    [Fact]
    public void Masses_are_resolved_without_remark()
    {
        var findings = new FindingLog(Seed.Catalogue);

        Given.Draft(Given.Line("salt", "flake-hollow", 10, "g"), Given.Line("sugar-brown", null, 10, "g")).WrittenFor(1, "kg").Ratios(findings);

        Assert.Empty(findings.Findings);
    }

    [Fact]
    public void A_volume_without_a_form_asks_which_and_lists_those_that_have_a_density()
    {
        var findings = new FindingLog(Seed.Catalogue);

        Given.Draft(Given.Line("sugar-brown", null, 1, "cup"), Given.Line("paprika", null, 1, "cup")).WrittenFor(5, "kg").Ratios(findings);

        var finding = Assert.Single(findings.Findings, f => f.Code == "form-unnamed");
        Assert.Equal("/formula/lines/0", finding.Pointer);
        Assert.Equal("Brown sugar", finding.Parameters["ingredient"]);
        Assert.Equal(["packed", "unpacked", "free-flowing"], Assert.IsType<string[]>(finding.Parameters["forms"]));
        Assert.Equal("usda-sr28", finding.SourceId);
    }

    [Fact]
    public void A_recollected_density_is_remarked_on()
    {
        var findings = new FindingLog(Seed.Catalogue);

        Given.Draft(Given.Line("paprika", "ground", 1, "tbsp"), Given.Line("salt", "flake-dense", 1, "tbsp")).WrittenFor(1, "kg").Ratios(findings);

        var finding = Assert.Single(findings.Findings, f => f.Code == "density-low-confidence");
        Assert.Equal("/formula/lines/1", finding.Pointer);
        Assert.Equal("Coarse flake, dense rolled", finding.Parameters["form"]);
        Assert.Equal("Salt", finding.Parameters["ingredient"]);
    }

    [Fact]
    public void A_card_in_volumes_says_how_far_its_salt_may_lie_apart()
    {
        var findings = new FindingLog(Seed.Catalogue);

        var ratios = Given.Draft(Given.Line("salt", "table", 1, "parts-by-volume"), Given.Line("black-pepper", "ground", 1, "parts-by-volume")).Dosed(20).Ratios(findings);

        var finding = Assert.Single(findings.Findings);
        Assert.Equal("density-spread", finding.Code);
        Assert.Equal("/formula", finding.Pointer);
        Assert.Equal(ratios.SaltSharePercent.Low, finding.Parameters["low"]);
        Assert.Equal(ratios.SaltSharePercent.High, finding.Parameters["high"]);
    }

    [Theory]
    [InlineData("g", 0)]
    [InlineData("mL", 1)]
    public void Only_a_card_in_volumes_speaks_of_its_density_though_its_salt_be_uncertain(string unit, int remarks)
    {
        var findings = new FindingLog(Seed.Catalogue);
        var bouillon = Given.MadeUp("bouillon", Band.Exact(1), new Band(30, 40, 50), 20_000);

        Given.Draft(Given.Line(bouillon, 10, unit), Given.Line("paprika", "ground", 10, "g")).WrittenFor(1, "kg").Ratios(findings);

        Assert.Equal(remarks, findings.Findings.Count(f => f.Code == "density-spread"));
    }

    [Theory]
    [InlineData("water", "L", 2)]
    [InlineData("vinegar-cider", "cup", 2)]
    [InlineData("soy-sauce-shoyu", "tbsp", 3)]
    public void A_thin_liquid_by_volume_leaves_no_doubt_worth_a_remark(string liquid, string unit, double amount)
    {
        var findings = new FindingLog(Seed.Catalogue);

        var ratios = Given.Draft(Given.Line(liquid, null, amount, unit), Given.Line("salt", null, 120, "g")).WrittenFor(1, "kg").Ratios(findings);

        Assert.DoesNotContain(findings.Findings, f => f.Code == "density-spread");
        // A cup is printed to the gram and a fluid ounce to a tenth of one: less than half a percent.
        Assert.InRange(ratios.SaltSharePercent.High / ratios.SaltSharePercent.Low, 1, 1.01);
    }

    [Theory]
    [InlineData("honey", "tbsp")]
    [InlineData("salt", "cup")]
    public void What_clings_or_heaps_is_remarked_on_beside_water_by_volume(string other, string unit)
    {
        var findings = new FindingLog(Seed.Catalogue);

        Given.Draft(Given.Line("water", null, 2, "L"), Given.Line(other, other == "salt" ? "table" : null, 1, unit), Given.Line("salt", "table", 60, "g"))
            .WrittenFor(1, "kg").Ratios(findings);

        Assert.Single(findings.Findings, f => f.Code == "density-spread");
    }

    [Fact]
    public void A_stored_formula_s_lines_are_not_pointed_at()
    {
        var findings = new FindingLog(Seed.Catalogue);

        FormulaRatios.Of(
            Given.Draft(Given.Line("sugar-brown", null, 1, "cup")).WrittenFor(5, "kg").Sound(),
            Seed.Catalogue, findings, "/treatments/0/formulaId", isInline: false);

        Assert.Equal("/treatments/0/formulaId", Assert.Single(findings.Findings, f => f.Code == "form-unnamed").Pointer);
    }

    [Theory]
    [InlineData("g")]
    [InlineData("%")]
    [InlineData("parts-by-mass")]
    [InlineData("parts-by-volume")]
    public void Shares_sum_to_one_and_ratios_to_the_dose(string unit) =>
        Law.Holds(Gen.Double[0.01, 50].Array[2, 4], 2_000, amounts =>
        {
            string[] ingredients = ["salt", "paprika", "garlic-powder", "sugar-brown"];
            var ratios = Given.Draft([.. amounts.Select((a, i) => Given.Line(ingredients[i], null, a, unit))]).Dosed(25).Ratios();

            Assert.Equal(1, ratios.Lines.Sum(l => l.Share.Typical), Exact);
            Assert.Equal(25, ratios.Lines.Sum(l => l.RatioGramsPerKilogram.Typical), 1e-11);
            Assert.All(ratios.Lines, l => Assert.InRange(l.RatioGramsPerKilogram.High, l.RatioGramsPerKilogram.Low, 25 * (1 + 1e-15)));
        });

    [Fact]
    public void Twice_the_parts_are_the_same_mix() => Law.Holds(Gen.Double[0.01, 50].Array[3], 2_000, amounts =>
    {
        var once = Mix(1);
        var twice = Mix(2);

        Assert.Equal(once.Lines.Select(l => l.RatioGramsPerKilogram), twice.Lines.Select(l => l.RatioGramsPerKilogram));

        FormulaRatios Mix(double factor) => Given.Draft(
            Given.Line("salt", "table", amounts[0] * factor, "parts-by-volume"),
            Given.Line("paprika", "ground", amounts[1] * factor, "parts-by-volume"),
            Given.Line("sugar-brown", null, amounts[2] * factor, "parts-by-volume")).Dosed(25).Ratios();
    });
}
