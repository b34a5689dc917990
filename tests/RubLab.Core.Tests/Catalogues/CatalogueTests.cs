using RubLab.Core.Remarks;
using RubLab.Core.Sources;

namespace RubLab.Core.Tests.Catalogues;

public sealed class CatalogueTests
{
    [Fact]
    public void An_id_finds_its_ingredient_and_its_cut_and_no_other()
    {
        Assert.True(Seed.Catalogue.TryFindIngredient("soy-sauce-shoyu", out var soy));
        Assert.Equal("Soy sauce", soy.Name);
        Assert.True(Seed.Catalogue.TryFindCut("turkey-breast", out var turkey));
        Assert.Equal("poultry", turkey.Class);
        Assert.False(Seed.Catalogue.TryFindIngredient("Salt", out _));
        Assert.False(Seed.Catalogue.TryFindCut("salt", out _));
    }

    [Fact]
    public void The_edition_is_named() => Assert.Matches("^20[0-9]{2}[.][0-9]+$", Seed.Catalogue.Version);

    [Fact]
    public void A_list_in_a_cell_is_parted_by_semicolons()
    {
        Assert.Equal(["soybeans", "wheat"], Given.Ingredient("soy-sauce-shoyu").Allergens);
        Assert.Empty(Given.Ingredient("salt").Allergens);
    }

    [Fact]
    public void A_blank_figure_is_no_figure_and_not_zero()
    {
        Assert.Null(Given.Ingredient("white-pepper").SugarsGramsPer100Grams);
        Assert.Equal(0, Given.Ingredient("salt").SugarsGramsPer100Grams);
    }

    [Fact]
    public void A_cut_with_no_trim_of_its_own_takes_the_one_for_any()
    {
        Assert.Contains("brisket", Given.Cut("beef-brisket").TrimLossPercent!.Citation.Locator, StringComparison.Ordinal);
        Assert.Contains("any cut", Given.Cut("lamb-leg").TrimLossPercent!.Citation.Locator, StringComparison.Ordinal);
        Assert.Equal(Confidence.VeryLow, Given.Cut("lamb-leg").TrimLossPercent!.Citation.Confidence);
    }

    [Fact]
    public void The_default_way_of_cooking_comes_first() => Assert.All(Seed.Catalogue.Cuts.Where(c => c.CookYields.Count > 0), cut =>
    {
        Assert.True(cut.CookYields[0].IsDefault);
        Assert.All(cut.CookYields.Skip(1), y => Assert.False(y.IsDefault));
    });

    [Fact]
    public void A_default_written_second_still_comes_first()
    {
        var files = Reading.With("cooking-yields.csv", "beef-brisket,smoked,true,", "beef-brisket,smoked,false,");
        files["cooking-yields.csv"] = files["cooking-yields.csv"].Replace("beef-brisket,braised,false,", "beef-brisket,braised,true,", StringComparison.Ordinal);

        Assert.Equal("braised", Reading.Of(files).Cuts.Single(c => c.Id == "beef-brisket").CookYields[0].Method);
    }

    [Fact]
    public void Meat_whose_density_nobody_gave_has_that_of_raw_meat_in_general()
    {
        Assert.Equal(1035, Given.Cut("beef-brisket").Shape!.DensityKilogramsPerCubicMetre);
        Assert.Equal(1050, Given.Cut("salmon-fillet").Shape!.DensityKilogramsPerCubicMetre);
    }

    [Fact]
    public void A_cut_has_its_bone_and_its_twin_with_added_solution_where_they_are_listed()
    {
        Assert.Equal(18, Given.Cut("beef-rib-roast").BonePercent!.Band.Typical);
        Assert.Null(Given.Cut("beef-brisket").BonePercent);
        Assert.Equal(180, Given.Cut("turkey-whole").WithAddedSolution!.SodiumMilligramsPer100Grams);
        Assert.Null(Given.Cut("beef-brisket").WithAddedSolution);
    }

    [Fact]
    public void A_row_keeps_its_cells()
    {
        var range = Seed.Catalogue.SaltRanges.Single(r => r.Id == "S11");
        Assert.Equal((4.5, null, "green", "coppa", true), (range.LowPercent, range.HighPercent, range.Base, range.AppliesTo, range.IsPublished));
        Assert.NotEmpty(range.Note);
        Assert.False(Seed.Catalogue.SaltRanges.Single(r => r.Id == "S25").IsPublished);

        var text = Seed.Catalogue.FindingTexts["density-spread"];
        Assert.Equal(Severity.Warning, text.Severity);
        Assert.NotEmpty(text.Cause);
        Assert.NotEmpty(text.Cure);
    }
}
