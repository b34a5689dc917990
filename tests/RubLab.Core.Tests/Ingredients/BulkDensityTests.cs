using RubLab.Core.Ingredients;
using RubLab.Core.Sources;

namespace RubLab.Core.Tests.Ingredients;

public sealed class BulkDensityTests
{
    [Theory]
    [InlineData("salt", "table", "filling")]
    [InlineData("thyme-dried", "leaves", "measures")]
    [InlineData("salt", "fine-sea", "source-range")]
    [InlineData("salt", "finishing-flake", "estimate")]
    [InlineData("salt", "pretzel", "filling")]
    public void A_band_says_what_made_it_so_wide(string ingredient, string form, string cause) =>
        Assert.Equal(cause, Of(ingredient, form).WidenedBy);

    [Fact]
    public void A_band_from_one_measure_is_as_wide_as_filling_a_spoon_varies()
    {
        var band = Of("black-pepper", "whole").GramsPerMillilitre;
        const double Typical = 2.9 / 4.92892159375;

        Assert.Equal(Typical, band.Typical, 1e-12);
        Assert.Equal(Typical * 0.9, band.Low, 1e-12);
        Assert.Equal(Typical * 1.1, band.High, 1e-12);
    }

    [Fact]
    public void A_band_reaches_to_the_other_measure_where_that_lies_further_off_than_filling()
    {
        var band = Of("catsup", "liquid").GramsPerMillilitre;
        const double Typical = 17 / 14.78676478125;
        const double Cup = 240 / 236.5882365;

        Assert.Equal(Typical, band.Typical, 1e-12);
        Assert.Equal(Cup, band.Low, 1e-12);
        Assert.Equal((2 * Typical) - Cup, band.High, 1e-12);
        Assert.Equal("measures", Of("catsup", "liquid").WidenedBy);
    }

    [Fact]
    public void Rounding_makes_the_width_where_one_gram_is_all_that_is_printed()
    {
        var files = Seed.Files();
        files["measures.csv"] = "ingredient_id,form_id,sequence,amount,unit,weight_g,weight_rounding_g,source_id,locator\nwater,liquid,1,1,tsp,2,0.5,usda-sr28,x\n";
        files["forms.csv"] = OneForm("1,,,,,");
        files["ingredients.csv"] = OneIngredient;

        var density = Catalogues.Reading.Of(files).Ingredients[0].Forms[0].Density!;

        Assert.Equal("rounding", density.WidenedBy);
        Assert.Equal(1.5 / 4.92892159375, density.GramsPerMillilitre.Low, 1e-12);
        Assert.Equal(2.5 / 4.92892159375, density.GramsPerMillilitre.High, 1e-12);
    }

    [Theory]
    [InlineData(",0.5,1,1.05,source-range,", 0.5, 1.1, "source-range")]
    [InlineData(",0.95,1,2,source-range,", 0.9, 2, "source-range")]
    [InlineData(",0.95,1,1.05,source-range,", 0.9, 1.1, "filling")]
    [InlineData(",0.5,1,2,estimate,", 0.5, 2, "estimate")]
    public void A_stated_band_is_never_narrower_than_filling_a_spoon(string cells, double low, double high, string cause)
    {
        var files = Seed.Files();
        files["measures.csv"] = "ingredient_id,form_id,sequence,amount,unit,weight_g,weight_rounding_g,source_id,locator\n";
        files["forms.csv"] = OneForm(cells);
        files["ingredients.csv"] = OneIngredient;

        var density = Catalogues.Reading.Of(files).Ingredients[0].Forms[0].Density!;

        Assert.Equal(low, density.GramsPerMillilitre.Low, 1e-12);
        Assert.Equal(1, density.GramsPerMillilitre.Typical);
        Assert.Equal(high, density.GramsPerMillilitre.High, 1e-12);
        Assert.Equal(cause, density.WidenedBy);
    }

    [Theory]
    [InlineData("1,,,,,", 29.55 / 29.5735295625, 29.65 / 29.5735295625, "rounding")]
    [InlineData(",0.98,1,1.05,estimate,", 0.98, 1.05, "estimate")]
    public void A_liquid_that_fills_level_is_as_sure_as_its_figures(string cells, double low, double high, string cause)
    {
        var files = Seed.Files();
        files["measures.csv"] = "ingredient_id,form_id,sequence,amount,unit,weight_g,weight_rounding_g,source_id,locator\nwater,liquid,1,1,floz,29.6,0.05,usda-sr28,x\n";
        files["forms.csv"] = OneForm(cells, "true");
        files["ingredients.csv"] = OneIngredient;

        var density = Catalogues.Reading.Of(files).Ingredients[0].Forms[0].Density!;

        Assert.Equal(low, density.GramsPerMillilitre.Low, 1e-12);
        Assert.Equal(high, density.GramsPerMillilitre.High, 1e-12);
        Assert.Equal(cause, density.WidenedBy);
    }

    [Fact]
    public void No_form_fills_level_whose_printed_weights_contradict_each_other_or_its_composition() => Assert.All(
        Seed.Catalogue.Ingredients.SelectMany(i => i.Forms).Where(f => f.FillsLevel),
        form =>
        {
            var band = form.Density!.GramsPerMillilitre;
            // Inside what filling a spoon of anything else is taken to vary by.
            Assert.InRange(band.High / band.Typical, 1, 1.1);
            Assert.True(form.Density.Citation.Confidence < Confidence.Low);
        });

    [Fact]
    public void A_form_nobody_measured_has_no_density() =>
        Assert.Null(Given.Ingredient("ancho-dried").DefaultForm.Density);

    [Fact]
    public void A_recollected_density_is_of_low_confidence() => Assert.All(
        Seed.Catalogue.Ingredients.SelectMany(i => i.Forms).Where(f => f.Density?.Citation.SourceId == "memory"),
        form => Assert.True(form.Density!.Citation.Confidence >= Confidence.Low));

    private const string OneIngredient =
        "ingredient_id,name,group,sodium_mg_per_100g,salt_low_g_per_100g,salt_typical_g_per_100g,salt_high_g_per_100g,salt_method,water_g_per_100g,sugars_g_per_100g,allergens,generic_compound,source_id,locator,fat_g_per_100g,salt_confidence,sodium_nitrite_g_per_100g,sodium_nitrate_g_per_100g\n"
        + "water,Water,liquid,0,0,0,0,natural-sodium,100,0,,false,usda-sr28,x,,high,,\n";

    private static string OneForm(string cells, string fillsLevel = "") =>
        "ingredient_id,form_id,name,is_default,measure_sequence,density_low_g_per_ml,density_typical_g_per_ml,density_high_g_per_ml,band_from,size_low_um,size_high_um,source_id,locator,confidence,tapped_g_per_ml,fills_level\n"
        + $"water,liquid,Liquid,true,{cells},,usda-sr28,x,high,,{fillsLevel}\n";

    private static BulkDensity Of(string ingredient, string form)
    {
        Assert.True(Given.Ingredient(ingredient).TryFindForm(form, out var found));
        return found.Density!;
    }
}
