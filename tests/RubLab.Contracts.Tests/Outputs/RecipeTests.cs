using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Json;
using RubLab.Contracts.Outputs;

namespace RubLab.Contracts.Tests.Outputs;

public class RecipeTests
{
    // Properties of https://schema.org/Recipe: its own, and those it has from CreativeWork and Thing.
    private static readonly string[] Terms =
        ["identifier", "version", "dateModified", "name", "recipeCategory", "recipeYield", "recipeIngredient"];

    private const string Parts = """
        {"name":"Lockside <rub> 🐖","kind":"dry-brine","dose":{"value":2.2,"unit":"%"},"lines":[
          {"ingredient":"salt","form":"table","amount":{"value":9,"unit":"parts-by-mass"}},
          {"ingredient":"paprika","amount":{"value":5,"unit":"parts-by-mass"}},
          {"ingredient":"garlic-powder","amount":{"value":1,"unit":"parts-by-mass"}}]}
        """;

    private const string Card = """
        {"name":"The old card","kind":"rub","writtenFor":{"value":12,"unit":"lb"},"writtenForIs":"purchase","lines":[
          {"ingredient":"salt","form":"table","amount":{"value":3,"unit":"tbsp"}},
          {"ingredient":"paprika","amount":{"value":0.25,"unit":"cup"}}]}
        """;

    private const string Liquid = """
        {"name":"Pump","kind":"injection","dose":{"value":100,"unit":"g/kg"},"lines":[
          {"ingredient":"water"},{"ingredient":"salt","form":"table","amount":{"value":8,"unit":"%-of-liquid"}}]}
        """;

    [Fact]
    public void The_line_that_makes_up_a_liquid_says_so()
    {
        var lines = Recipe(Liquid)["recipeIngredient"]!.AsArray().Select(line => (string)line!).ToList();
        Assert.StartsWith("92 g ", lines[0], StringComparison.Ordinal);
        Assert.EndsWith("(as authored: the rest)", lines[0], StringComparison.Ordinal);
        Assert.EndsWith("(as authored: 8 % of liquid)", lines[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Parts)]
    [InlineData(Card)]
    public void It_says_nothing_but_terms_of_a_schema_org_recipe(string formula)
    {
        var recipe = Recipe(formula).AsObject();
        Assert.Equal(["@context", "@type", .. Terms], recipe.Select(m => m.Key));
        Assert.Equal(("https://schema.org", "Recipe"), ((string)recipe["@context"]!, (string)recipe["@type"]!));
        Assert.Equal(("some-id", 7), ((string)recipe["identifier"]!, (int)recipe["version"]!));
        Assert.Equal("2026-01-01T00:00:00Z", (string)recipe["dateModified"]!);
    }

    [Theory]
    [InlineData(Parts)]
    [InlineData(Card)]
    public void The_grams_of_each_ingredient_are_the_ratios_of_the_JSON_to_four_digits(string formula)
    {
        var ratios = Formula(formula).Lines.Select(l => l.Ratio.Typical).ToList();
        var grams = Ingredients(formula).Select(i => double.Parse(i[..i.IndexOf(" g ", StringComparison.Ordinal)], CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(ratios.Count, grams.Count);
        Assert.All(ratios.Zip(grams), r => Assert.InRange(r.Second / r.First, 0.9995, 1.0005));
    }

    [Fact]
    public void Ingredients_read_like_a_recipe_and_name_what_was_authored() => Assert.Equal(
        [
            "13.2 g Salt (table, granulated) for 1 kg of green meat (as authored: 9 parts by mass)",
            "7.333 g Paprika for 1 kg of green meat (as authored: 5 parts by mass)",
            "1.467 g Garlic powder for 1 kg of green meat (as authored: 1 part by mass)",
        ],
        Ingredients(Parts));

    [Fact]
    public void A_ratio_from_spoons_has_its_band_and_stands_on_the_weight_it_was_written_for()
    {
        var formula = Formula(Card);
        var salt = formula.Lines[0].Ratio;
        Assert.Equal(
            string.Create(CultureInfo.InvariantCulture, $"{salt.Typical} g ({salt.Low} to {salt.High} g) Salt (table, granulated) for 1 kg of meat as bought (as authored: 3 tbsp)"),
            Ingredients(Card)[0]);
        Assert.StartsWith("For 1 kg of meat as bought: ", (string)Recipe(Card)["recipeYield"]!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("green", "For 1 kg of green meat: 22 g")]
    [InlineData("cooked", "For 1 kg of cooked meat: 22 g")]
    [InlineData("portion", "For 1 kg of served meat: 22 g")]
    public void The_yield_says_what_the_ingredients_are_for(string ratioBase, string words) => Assert.Equal(
        words, (string)Recipe(Parts.Replace("\"kind\"", $"\"base\":\"{ratioBase}\",\"kind\"", StringComparison.Ordinal))["recipeYield"]!);

    [Fact]
    public void A_formula_by_surface_is_for_its_surface() => Assert.Equal(
        "For 100 cm2 of surface: 4 g",
        (string)Recipe(Parts.Replace("\"dose\":{\"value\":2.2,\"unit\":\"%\"}", "\"base\":\"area\",\"dose\":{\"value\":4,\"unit\":\"g/100cm2\"}", StringComparison.Ordinal))["recipeYield"]!);

    [Fact]
    public void Names_and_kinds_are_in_words()
    {
        Assert.Equal(("Lockside <rub> 🐖", "Dry brine"), ((string)Recipe(Parts)["name"]!, (string)Recipe(Parts)["recipeCategory"]!));
        Assert.Equal("Rub", (string)Recipe(Card)["recipeCategory"]!);
    }

    private static FormulaResponse Formula(string json)
    {
        var authored = JsonSerializer.Deserialize(json, RubLabJson.Default.FormulaRequest)!;
        var formula = FormulaAnswers.Check(authored, Seed.Catalogue).Value!;
        return FormulaAnswers.From(formula, authored, "some-id", 7, "2026-01-01T00:00:00Z", Seed.Catalogue);
    }

    private static JsonNode Recipe(string json) =>
        JsonNode.Parse(JsonSerializer.Serialize(Recipes.From(Formula(json), Seed.Catalogue), RecipeJson.Default.RecipeResponse))!;

    private static List<string> Ingredients(string json) => Recipe(json)["recipeIngredient"]!.AsArray().Select(i => (string)i!).ToList();
}
