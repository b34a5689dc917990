using System.Text.Json;
using System.Text.Json.Nodes;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Json;
using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Tests.Ingredients;

public class ConversionTests
{
    [Fact]
    public void Two_tablespoons_of_ground_pepper_give_the_printed_answer()
    {
        var answer = Answer(Item("black-pepper", "ground", 2, "tbsp", "g"));
        Assert.Equal("black-pepper", (string)answer["ingredient"]!);
        Assert.Equal("ground", (string)answer["form"]!);
        Assert.Equal("""{"value":2,"unit":"tbsp"}""", answer["amount"]!.ToJsonString());
        Assert.Equal("""{"low":12.4,"typical":13.8,"high":15.2,"unit":"g"}""", answer["result"]!.ToJsonString());
        var density = answer["density"]!;
        Assert.Equal((0.42, 0.467, "g/mL"), ((double)density["low"]!, (double)density["typical"]!, (string)density["unit"]!));
        // 6.9 g in 14.787 mL and a tenth more.
        Assert.Equal(0.513, (double)density["high"]!);
        Assert.Equal(
            ("usda-sr28", "02030", "high", "reference"),
            ((string)density["sourceId"]!, (string)density["locator"]!, (string)density["confidence"]!, (string)density["origin"]!));
        Assert.Empty(answer["findings"]!.AsArray());
        Assert.Equal("2026.3", (string)answer["dataVersion"]!);
    }

    [Theory]
    [InlineData("salt", 0.5, "cup")]
    [InlineData("sugar-brown", 1, "cup")]
    [InlineData("black-pepper", 1, "tsp")]
    public void A_measure_without_its_form_spans_the_forms_and_asks(string ingredient, double value, string unit)
    {
        var open = Converted(Item(ingredient, null, value, unit, "g"));
        var finding = Assert.Single(open.Findings);
        Assert.Equal(("form-unnamed", "/form"), (finding.Code, finding.Pointer));
        Assert.True(Seed.Catalogue.TryFindIngredient(ingredient, out var known));
        var named = known.Forms.Where(f => f.Density is not null)
            .Select(f => Converted(Item(ingredient, f.Id, value, unit, "g")).Result).ToList();
        Assert.Equal(named.Min(b => b.Low), open.Result.Low);
        Assert.Equal(named.Max(b => b.High), open.Result.High);
        Assert.Equal(known.Forms.Where(f => f.Density is not null).Select(f => f.Id), Assert.IsType<string[]>(finding.Parameters["forms"]));
    }

    [Fact]
    public void A_question_of_the_form_gives_the_names_with_the_ids()
    {
        var finding = Assert.Single(Converted(Item("sugar-brown", null, 1, "cup", "g")).Findings);

        Assert.Contains(
            "comes as Packed (packed); Loose, not packed (unpacked); Free-flowing granules (free-flowing), and a spoon", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("sugar-brown", "wet", null, "It has: Packed (packed); Loose, not packed (unpacked); Free-flowing granules (free-flowing).")]
    [InlineData("black-pepper", null, 3.7, "US mesh numbers are 3.5; 4; 5; 6;")]
    public void A_refusal_lists_forms_by_name_and_meshes_apart(string ingredient, string? form, double? mesh, string words)
    {
        var result = Conversions.Compute(Item(ingredient, form, 1, "cup", "g") with { Mesh = mesh }, Seed.Catalogue);

        Assert.Contains(words, Assert.Single(result.Log.Faults).Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void An_ingredient_of_one_form_does_not_ask() =>
        Assert.Empty(Converted(Item("paprika", null, 1, "tbsp", "g")).Findings);

    [Fact]
    public void Naming_the_form_of_brown_sugar_tells_packed_from_loose_by_USDAs_cups()
    {
        // USDA SR28 19334: 220 g a packed cup, 145 g an unpacked one; the tsp of each must agree within its printed rounding.
        var packed = Converted(Item("sugar-brown", "packed", 1, "tsp", "g")).Result;
        var loose = Converted(Item("sugar-brown", "unpacked", 1, "cup", "g")).Result;
        Assert.Equal(220, Converted(Item("sugar-brown", "packed", 1, "cup", "g")).Result.Typical);
        Assert.InRange(packed.Typical, 4.55, 4.65);
        Assert.Equal(145, loose.Typical, 0.5);
    }

    [Fact]
    public void A_density_recollected_is_answered_with_a_request_to_weigh_a_cup()
    {
        var finding = Assert.Single(Converted(Item("black-pepper", "coarse", 1, "cup", "g")).Findings);
        Assert.Equal(("density-low-confidence", "memory"), (finding.Code, finding.SourceId));
    }

    [Theory]
    [InlineData(1, "lb", "g", 453.59237)]
    [InlineData(453.59237, "g", "lb", 1)]
    [InlineData(0.1, "kg", "g", 100)]
    [InlineData(16, "oz", "lb", 1)]
    [InlineData(250, "mg", "g", 0.25)]
    [InlineData(1, "cup", "tbsp", 16)]
    [InlineData(1, "cup", "mL", 236.588236500)]
    [InlineData(1, "gal", "L", 3.785411784)]
    [InlineData(3, "tsp", "tbsp", 1)]
    [InlineData(1, "metric-cup", "metric-tbsp", 16.6666666667)]
    [InlineData(1, "au-tbsp", "mL", 20)]
    [InlineData(1, "imp-pt", "mL", 568.26125)]
    [InlineData(1, "label-cup", "label-tbsp", 16)]
    [InlineData(0, "cup", "g", 0)]
    public void Mass_to_mass_and_volume_to_volume_are_exact(double value, string from, string to, double expected)
    {
        var converted = Converted(Item("salt", "table", value, from, to));
        Assert.Equal(new QuantityBand(expected, expected, expected, to), converted.Result);
        Assert.Equal(value == 0, converted.Density is not null);
    }

    [Fact]
    public void An_exact_conversion_needs_no_form_and_no_density()
    {
        var converted = Converted(Item("sodium-chloride", null, 1, "kg", "oz"));
        Assert.Equal(35.2739619496, converted.Result.Typical);
        Assert.Empty(converted.Findings);
    }

    [Theory]
    [InlineData("sodium-chloride", "crystal", "/form no-density")]
    [InlineData("sodium-chloride", null, "/form no-density")]
    [InlineData("ancho-dried", "whole", "/form no-density")]
    [InlineData("slat", null, "/ingredient unknown-ingredient")]
    [InlineData("salt", "dust", "/form unknown-form")]
    [InlineData(null, null, "/ingredient required")]
    public void What_has_no_density_or_is_unknown_is_refused(string? ingredient, string? form, string expected)
    {
        Assert.Equal([expected], FaultsOf(Item(ingredient, form, 1, "cup", "g")));
        Assert.Equal([expected], FaultsOf(Item(ingredient, form, 1, "g", "cup")));
    }

    [Theory]
    [InlineData(-1, "cup", "g", "/amount/value out-of-range")]
    [InlineData(1e10, "cup", "g", "/amount/value out-of-range")]
    [InlineData(double.PositiveInfinity, "cup", "g", "/amount/value not-finite")]
    [InlineData(1, "g/kg", "g", "/amount/unit unit-not-allowed")]
    [InlineData(1, "Cup", "g", "/amount/unit unknown-unit")]
    [InlineData(1, "cup", "mm", "/to unit-not-allowed")]
    [InlineData(1, "cup", null, "/to required")]
    public void An_amount_that_is_none_is_refused(double value, string unit, string? to, string expected) =>
        Assert.Equal([expected], FaultsOf(Item("salt", "table", value, unit, to)));

    [Fact]
    public void Volume_to_mass_and_back_holds_the_typical_value()
    {
        var grams = Converted(Item("salt", "table", 3, "tbsp", "g")).Result.Typical;
        Assert.Equal(3, Converted(Item("salt", "table", grams, "g", "tbsp")).Result.Typical, 0.02);
    }

    private static ConversionItemRequest Item(string? ingredient, string? form, double value, string unit, string? to) =>
        new() { Ingredient = ingredient, Form = form, Amount = QuantityRequest.Of(value, unit), To = to };

    private static ConversionResponse Converted(ConversionItemRequest item)
    {
        var result = Conversions.Compute(item, Seed.Catalogue);
        Assert.True(result.IsGood, string.Join(", ", Document.Faults(result.Log)));
        return result.Value;
    }

    private static JsonNode Answer(ConversionItemRequest item) =>
        JsonNode.Parse(JsonSerializer.Serialize(Converted(item), RubLabJson.Default.ConversionResponse))!;

    private static IReadOnlyList<string> FaultsOf(ConversionItemRequest item) => Document.Faults(Conversions.Compute(item, Seed.Catalogue).Log);
}
