using RubLab.Core.Catalogues;

namespace RubLab.Core.Tests.Catalogues;

/// <summary>A fault in the reference data stops the reading and says where it stands.</summary>
public sealed class CatalogueFaultTests
{
    public static TheoryData<string> Files => new(SeedFiles.Names);

    [Theory]
    [MemberData(nameof(Files))]
    public void A_missing_file_is_named(string file)
    {
        var files = Seed.Files();
        files.Remove(file);

        Assert.Contains(file, FaultOf(files), StringComparison.Ordinal);
    }

    [Fact]
    public void A_blank_edition_is_no_edition()
    {
        var files = Seed.Files();
        files["VERSION"] = " \n";

        Assert.Contains("VERSION", FaultOf(files), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ingredients.csv", "salt,Salt,salt,38758,", "salt,Salt,salt,lots,", "ingredients.csv line 4: sodium_mg_per_100g is not a number.")]
    [InlineData("ingredients.csv", "salt,Salt,salt,38758,", "salt,Salt,salt,1e999,", "ingredients.csv line 4: sodium_mg_per_100g is not a number.")]
    [InlineData("ingredients.csv", "salt,Salt,salt,38758,", "salt,Salt,salt,,", "ingredients.csv line 4: sodium_mg_per_100g is blank.")]
    [InlineData("ingredients.csv", "salt,Salt,salt,38758,", "salt,,salt,38758,", "ingredients.csv line 4: name is blank.")]
    [InlineData("ingredients.csv", "98.5281,98.5281,98.5281", "98.5281,98.5281,98", "ingredients.csv line 4: salt Not a band: 98.5281, 98.5281, 98..")]
    [InlineData("ingredients.csv", "7.19,,true", "7.19,,yes", "ingredients.csv line 9: generic_compound is neither true nor false.")]
    [InlineData("measures.csv", "salt,table,3,1,cup,", "salt,table,3,1,bucket,", "measures.csv line 6: unit is not a unit of volume.")]
    [InlineData("measures.csv", "salt,table,3,1,cup,", "salt,table,3,1,lb,", "measures.csv line 6: unit is not a unit of volume.")]
    [InlineData("piece-measures.csv", "garlic-raw,3,1,clove,3,", "garlic-raw,3,1,clove,0,", "piece-measures.csv line 45: weight_g is not above zero.")]
    [InlineData("piece-measures.csv", "garlic-raw,3,1,clove,3,", "garlic-raw,3,0,clove,3,", "piece-measures.csv line 45: amount is not above zero.")]
    [InlineData("piece-measures.csv", "garlic-raw,3,1,clove,3,", "garlic-raw,3,1,,3,", "piece-measures.csv line 45: measure is blank.")]
    [InlineData("forms.csv", "salt,table,\"Table, granulated\",true,2,", "salt,table,\"Table, granulated\",true,9,", "forms.csv line 4: measure_sequence names no measure of this form.")]
    [InlineData("forms.csv", "black-pepper,whole,Whole,false,3,", "black-pepper,whole,Whole,false,2,", "forms.csv line 18: measure_sequence names no measure of this form.")]
    [InlineData("forms.csv", "black-pepper,whole,Whole,false,3,", "black-pepper,whole,Whole,true,3,", "ingredients.csv line 5: ingredient_id black-pepper must have exactly one default form.")]
    [InlineData("forms.csv", "black-pepper,ground,Ground,true,2,", "black-pepper,ground,Ground,false,2,", "ingredients.csv line 5: ingredient_id black-pepper must have exactly one default form.")]
    [InlineData("findings.csv", "form-unnamed,advice,", "form-unnamed,urgent,", "findings.csv line 2: severity is not a severity.")]
    [InlineData("salt-ranges.csv", "1.5 lb per 100 lb,low,", "1.5 lb per 100 lb,certain,", "salt-ranges.csv line 2: confidence is not a confidence.")]
    [InlineData("constants.csv", "coarse-step-percent,", "coarse-steps-percent,", "constants.csv has no coarse-step-percent.")]
    [InlineData("constants.csv", "raw-meat-density-kg-per-m3,", "raw-meat-density,", "constants.csv has no raw-meat-density-kg-per-m3.")]
    [InlineData("cut-shapes.csv", "beef-brisket,brick,", "beef-brisket,cube,", "cut-shapes.csv line 2: shape is not a shape.")]
    [InlineData("cut-shapes.csv", "beef-brisket,brick,6.667,4.167,45,60,", "beef-brisket,brick,6.667,4.167,65,60,", "cut-shapes.csv line 2: thickness Not a band: 65, 60, 80..")]
    [InlineData("reference-amounts.csv", "\nmeat-cooked,", "\nmeat-done,", "reference-amounts.csv has no meat-cooked.")]
    [InlineData("added-solution.csv", "chicken-breast-skinless,173,", "chicken-breast-skinless,,", "added-solution.csv line 2: sodium_mg_per_100g is blank.")]
    [InlineData("cooking-yields.csv", "pork-leg,roasted,true,65.0,65.0,65.0,edible-portion,usda-sr28-derived,yield-spread-estimate,", "pork-leg,roasted,true,65.0,65.0,65.0,edible-portion,usda-sr28-derived,,", "cooking-yields.csv line 25: width_source_id is blank, and the yield has no width of its own.")]
    [InlineData("cooking-yields.csv", "pork-leg,roasted,true,65.0,65.0,65.0,edible-portion,usda-sr28-derived,yield-spread-estimate,", "pork-leg,roasted,true,65.0,65.0,65.0,edible-portion,usda-sr28-derived,memory,", "cooking-yields.csv line 25: width_source_id names no estimate of a yield's width.")]
    [InlineData("cooking-yields.csv", "pork-leg,roasted,true,65.0,65.0,65.0,edible-portion,", "pork-leg,roasted,true,65.0,65.0,65.0,purchase,", "cooking-yields.csv line 25: basis is not a basis.")]
    [InlineData("cooking-yields.csv", "pork-leg,roasted,true,65.0,65.0,65.0,edible-portion,", "pork-leg,roasted,true,65.0,65.0,65.0,,", "cooking-yields.csv line 25: basis is blank.")]
    [InlineData("constants.csv", "cook-yield-spread-points,", "cook-yield-spread,", "constants.csv has no cook-yield-spread-points.")]
    [InlineData("sieves.csv", "us_mesh,opening_um", "us_mesh,opening", "sieves.csv has no column opening_um.")]
    public void A_wrong_cell_is_named_by_file_line_and_column(string file, string was, string becomes, string fault) =>
        Assert.Equal(fault, FaultOf(Reading.With(file, was, becomes)));

    [Fact]
    public void A_row_of_too_few_cells_names_its_file() => Assert.StartsWith(
        "sieves.csv: ", FaultOf(Reading.With("sieves.csv", "10,2000,astm-e11,No. 10\n", "10,2000,astm-e11\n")), StringComparison.Ordinal);

    [Fact]
    public void A_column_named_twice_names_its_file() => Assert.StartsWith(
        "sieves.csv: ", FaultOf(Reading.With("sieves.csv", "us_mesh,opening_um", "opening_um,opening_um")), StringComparison.Ordinal);

    [Fact]
    public void A_cell_over_several_lines_does_not_shift_the_line_numbers()
    {
        var files = Reading.With("findings.csv", "Which kind of {ingredient}?", "\"Which kind\nof\n{ingredient}?\"");
        files["findings.csv"] = files["findings.csv"].Replace("density-low-confidence,advice", "density-low-confidence,urgent", StringComparison.Ordinal);

        Assert.Equal("findings.csv line 5: severity is not a severity.", FaultOf(files));
    }

    private static string FaultOf(Dictionary<string, string> files) =>
        Assert.Throws<InvalidDataException>(() => Reading.Of(files)).Message;
}
