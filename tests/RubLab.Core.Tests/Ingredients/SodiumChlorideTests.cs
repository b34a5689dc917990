using RubLab.Core.Tests.Published;

namespace RubLab.Core.Tests.Ingredients;

public sealed class SodiumChlorideTests
{
    private static readonly List<PublishedCase> Cases = PublishedCase.Read("worked-examples.csv");

    private static double SodiumPercent
    {
        get
        {
            var masses = Cases.Single(c => c.Id == "NaCl-fraction");
            var sodium = masses.Input("sodium_g_per_mol");
            return 100 * sodium / (sodium + masses.Input("chlorine_g_per_mol"));
        }
    }

    [Fact]
    public void The_constant_follows_from_the_atomic_weights()
    {
        Cases.Single(c => c.Id == "NaCl-fraction").AssertIs(SodiumPercent);
        Assert.Equal(SodiumPercent / 100, Seed.Catalogue.Constants.SodiumInSodiumChlorideGramsPerGram, 5e-6);
    }

    [Fact]
    public void Pure_sodium_chloride_carries_the_sodium_of_its_formula() =>
        Assert.Equal(SodiumPercent * 1000, Given.Ingredient("sodium-chloride").SodiumMilligramsPer100Grams, 0.5);

    [Fact]
    public void Table_salt_is_as_much_sodium_chloride_as_its_sodium_says()
    {
        var published = Cases.Single(c => c.Id == "NaCl-in-table-salt");
        var salt = Given.Ingredient("salt");

        Assert.Equal(published.Input("sodium_mg_per_100g"), salt.SodiumMilligramsPer100Grams);
        published.AssertIs(salt.SaltGramsPer100Grams.Typical);
        published.AssertIs(salt.SodiumMilligramsPer100Grams / SodiumPercent / 10);
    }

    [Fact]
    public void What_counts_its_sodium_as_salt_holds_the_salt_of_that_sodium() => Assert.All(
        Seed.Catalogue.Ingredients.Where(i => i.SaltMethod == "sodium-as-sodium-chloride"),
        ingredient =>
        {
            // The table prints four decimals, and its fraction five digits.
            var salt = ingredient.SodiumMilligramsPer100Grams / 1000 / (SodiumPercent / 100);
            Assert.Equal(salt, ingredient.SaltGramsPer100Grams.Typical, 0.002);
        });

    [Fact]
    public void Natural_and_other_sodium_is_not_salt() => Assert.All(
        Seed.Catalogue.Ingredients.Where(i => i.SaltMethod is "natural-sodium" or "not-salt"),
        ingredient => Assert.Equal(0, ingredient.SaltGramsPer100Grams.High));

    [Fact]
    public void Nothing_holds_more_salt_than_its_sodium_allows() => Assert.All(
        Seed.Catalogue.Ingredients,
        ingredient => Assert.True(ingredient.SaltGramsPer100Grams.High * SodiumPercent * 10 <= ingredient.SodiumMilligramsPer100Grams + 1));

    [Fact]
    public void Baking_soda_carries_the_sodium_of_its_formula()
    {
        // NaHCO3 from IUPAC standard atomic weights; the published food is not quite pure.
        const double Bicarbonate = 22.98976928 + 1.008 + 12.011 + (3 * 15.999);

        Assert.Equal(22.98976928 / Bicarbonate * 100_000, Given.Ingredient("baking-soda").SodiumMilligramsPer100Grams, 10d);
    }

    [Theory]
    [InlineData("salt", true)]
    [InlineData("sodium-chloride", true)]
    [InlineData("chili-powder-blend", false)]
    [InlineData("soy-sauce-shoyu", false)]
    public void Only_salt_is_weighed_as_salt(string ingredient, bool isSalt) =>
        Assert.Equal(isSalt, Given.Ingredient(ingredient).IsSalt);
}
