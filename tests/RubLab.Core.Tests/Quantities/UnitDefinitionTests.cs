using RubLab.Core.Quantities;
using RubLab.Core.Tests.Published;
using UnitsNet;

namespace RubLab.Core.Tests.Quantities;

public sealed class UnitDefinitionTests
{
    // The library has its fluid ounces to twelve digits only; the table enters those two from their definition.
    private const double LibraryNoise = 2e-12;

    private static readonly List<PublishedCase> Definitions = PublishedCase.Read("units.csv");

    public static TheoryData<string> Symbols => new(Definitions.Select(d => d.Id));

    [Fact]
    public void Every_unit_has_a_definition_and_every_definition_a_unit() =>
        Assert.Equal(Definitions.Select(d => d.Id).Order(StringComparer.Ordinal), UnitTable.All.Select(u => u.Symbol).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Symbols))]
    public void A_factor_is_its_definition_to_the_last_bit(string symbol)
    {
        var definition = Definitions.Single(d => d.Id == symbol);
        var unit = UnitTable.Get(symbol);

        Assert.Equal(BitConverter.DoubleToInt64Bits(definition.Answer), BitConverter.DoubleToInt64Bits(unit.Factor));
        Assert.Equal(symbol == "F" ? definition.Input("offset") : 0, unit.Offset);
        Assert.NotEmpty(unit.Name);
        Assert.NotEmpty(unit.Definition);
    }

    [Theory]
    [MemberData(nameof(Symbols))]
    public void A_definition_counts_in_the_base_unit_of_its_dimension(string symbol)
    {
        var definition = Definitions.Single(d => d.Id == symbol);
        var unit = UnitTable.Get(symbol);
        var baseUnit = UnitTable.Get(definition.Unit);

        Assert.Equal(1, baseUnit.Factor);
        Assert.Equal(baseUnit.Dimension, unit.Dimension);
    }

    [Theory]
    [InlineData("gal", 1)]
    [InlineData("qt", 4)]
    [InlineData("pt", 8)]
    [InlineData("cup", 16)]
    [InlineData("floz", 128)]
    [InlineData("tbsp", 256)]
    [InlineData("tsp", 768)]
    public void US_measures_follow_from_231_cubic_inches(string symbol, int perGallon)
    {
        const decimal Inch = 2.54m;
        const decimal Gallon = 231m * Inch * Inch * Inch;

        Assert.Equal((double)(Gallon / perGallon), UnitTable.Get(symbol).Factor);
    }

    [Theory]
    [InlineData("imp-gal", 1)]
    [InlineData("imp-pt", 8)]
    [InlineData("imp-floz", 160)]
    public void Imperial_measures_follow_from_the_gallon_of_4_54609_litres(string symbol, int perGallon) =>
        Assert.Equal((double)(4546.09m / perGallon), UnitTable.Get(symbol).Factor);

    [Fact]
    public void An_ounce_is_a_sixteenth_of_a_pound() =>
        Assert.Equal((double)(453.59237m / 16), UnitTable.Get("oz").Factor);

    [Fact]
    public void The_unit_library_agrees_with_the_definitions()
    {
        var library = new Dictionary<string, double>
        {
            ["oz"] = Mass.FromOunces(1).Grams,
            ["lb"] = Mass.FromPounds(1).Grams,
            ["tsp"] = Volume.FromUsTeaspoons(1).Milliliters,
            ["tbsp"] = Volume.FromUsTablespoons(1).Milliliters,
            ["cup"] = Volume.FromUsCustomaryCups(1).Milliliters,
            ["floz"] = Volume.FromUsOunces(1).Milliliters,
            ["pt"] = Volume.FromUsPints(1).Milliliters,
            ["qt"] = Volume.FromUsQuarts(1).Milliliters,
            ["gal"] = Volume.FromUsGallons(1).Milliliters,
            ["metric-tsp"] = Volume.FromMetricTeaspoons(1).Milliliters,
            ["metric-cup"] = Volume.FromMetricCups(1).Milliliters,
            ["au-tbsp"] = Volume.FromAuTablespoons(1).Milliliters,
            ["imp-floz"] = Volume.FromImperialOunces(1).Milliliters,
            ["imp-pt"] = Volume.FromImperialPints(1).Milliliters,
            ["imp-gal"] = Volume.FromImperialGallons(1).Milliliters,
            ["label-cup"] = Volume.FromUsLegalCups(1).Milliliters,
            ["in"] = Length.FromInches(1).Millimeters,
        };

        Assert.All(library, pair =>
        {
            var defined = Definitions.Single(d => d.Id == pair.Key).Answer;
            Assert.InRange(pair.Value, defined * (1 - LibraryNoise), defined * (1 + LibraryNoise));
        });
    }

    [Theory]
    [InlineData(32, 0)]
    [InlineData(212, 100)]
    [InlineData(-40, -40)]
    public void Fahrenheit_meets_Celsius_at_its_fixed_points(double fahrenheit, double celsius)
    {
        var unit = UnitTable.Get("F");

        Assert.Equal(celsius, unit.ToBase(fahrenheit), 1e-12);
        Assert.Equal(fahrenheit, unit.FromBase(celsius), 1e-12);
    }
}
