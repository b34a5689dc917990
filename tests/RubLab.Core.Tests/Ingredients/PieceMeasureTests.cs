using System.Globalization;
using RubLab.Core.Tests.Catalogues;

namespace RubLab.Core.Tests.Ingredients;

/// <summary>Weights of pieces as USDA SR28 prints them.</summary>
public sealed class PieceMeasureTests
{
    [Fact]
    public void A_clove_of_garlic_has_the_weight_printed_for_it()
    {
        var clove = Assert.Single(Given.Ingredient("garlic-raw").PieceMeasures, m => m.Measure == "clove");

        Assert.Equal((3, 1.0, 3.0), (clove.Sequence, clove.Amount, clove.WeightGrams));
        Assert.Equal(("usda-sr28", "NDB 11215 seq 3"), (clove.Citation.SourceId, clove.Citation.Locator));
    }

    // Three cloves are printed as 9 g and one as 3 g, each to the gram: one weight of a clove has to fit both.
    [Fact]
    public void The_weight_of_one_predicts_that_of_several_within_the_printed_gram()
    {
        var garlic = Given.Ingredient("garlic-raw").PieceMeasures;
        var one = garlic.Single(m => m.Measure == "clove");
        var several = garlic.Single(m => m.Measure == "cloves");

        Assert.InRange(several.WeightGrams, several.Amount * (one.WeightGrams - 0.5) - 0.5, several.Amount * (one.WeightGrams + 0.5) + 0.5);
    }

    [Fact]
    public void Every_row_of_the_table_is_read_and_none_under_another_ingredient() => Assert.Equal(
        SeedFilesOnDisk.Tables["piece-measures.csv"].Select(row =>
            $"{row["ingredient_id"]} {row["sequence"]} {row["amount"]} {row["measure"]} {row["weight_g"]}").Order(StringComparer.Ordinal),
        Seed.Catalogue.Ingredients.SelectMany(i => i.PieceMeasures.Select(m => string.Create(
            CultureInfo.InvariantCulture, $"{i.Id} {m.Sequence} {m.Amount} {m.Measure} {m.WeightGrams}"))).Order(StringComparer.Ordinal));

    [Fact]
    public void What_is_sold_by_no_piece_has_no_weight_of_one() => Assert.Empty(Given.Ingredient("water").PieceMeasures);
}
