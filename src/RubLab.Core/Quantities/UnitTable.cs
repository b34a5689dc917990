using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace RubLab.Core.Quantities;

/// <summary>
/// The product's own table of unit symbols. Factors are read once from UnitsNet, which nothing else here knows;
/// measures it lacks, and the fluid ounces, which it has only to twelve digits, are entered from their definition.
/// </summary>
public static class UnitTable
{
    private const string International = "international yard and pound agreement, 1959";
    private const string UsGallon = "US gallon = 231 cubic inches";
    private const string Label = "21 CFR 101.9(b)(5)(viii)";
    private const string MetricKitchen = "metric kitchen measure";
    private const string Imperial = "imperial gallon = 4.54609 L";
    private const string Si = "SI";
    private const string Ratio = "ratio to the named base";

    /// <summary>Every unit, in the order a list shows them.</summary>
    public static IReadOnlyList<Unit> All { get; } = Build();

    private static readonly Dictionary<string, Unit> BySymbol = All.ToDictionary(u => u.Symbol, StringComparer.Ordinal);

    /// <summary>The unit with this symbol; symbols are case-sensitive.</summary>
    /// <exception cref="ArgumentException">No unit has this symbol.</exception>
    public static Unit Get(string symbol) =>
        TryFind(symbol, out var unit) ? unit : throw new ArgumentException($"No unit '{symbol}'.", nameof(symbol));

    /// <summary>Looks a symbol up as a person wrote it.</summary>
    public static bool TryFind(string? symbol, [NotNullWhen(true)] out Unit? unit)
    {
        unit = null;
        return symbol is not null && BySymbol.TryGetValue(symbol, out unit);
    }

    /// <summary>The symbols of some dimensions, for the message that lists what is allowed.</summary>
    public static IReadOnlyList<string> SymbolsOf(params ReadOnlySpan<Dimension> dimensions)
    {
        var symbols = new List<string>();
        foreach (var unit in All)
        {
            if (dimensions.Contains(unit.Dimension))
            {
                symbols.Add(unit.Symbol);
            }
        }

        return symbols;
    }

    private static Unit[] Build() =>
    [
        OfMass("mg", Mass.FromMilligrams(1), "milligram", Si),
        OfMass("g", Mass.FromGrams(1), "gram", Si),
        OfMass("kg", Mass.FromKilograms(1), "kilogram", Si),
        OfMass("oz", Mass.FromOunces(1), "ounce, avoirdupois", International),
        OfMass("lb", Mass.FromPounds(1), "pound, avoirdupois", International),

        OfVolume("mL", Volume.FromMilliliters(1), "millilitre", Si),
        OfVolume("L", Volume.FromLiters(1), "litre", Si),
        OfVolume("tsp", Volume.FromUsTeaspoons(1), "US teaspoon", UsGallon),
        OfVolume("tbsp", Volume.FromUsTablespoons(1), "US tablespoon", UsGallon),
        OfVolume("cup", Volume.FromUsCustomaryCups(1), "US cup", UsGallon),
        new("floz", Dimension.Volume, 29.5735295625, 0, "US fluid ounce", UsGallon),
        OfVolume("pt", Volume.FromUsPints(1), "US liquid pint", UsGallon),
        OfVolume("qt", Volume.FromUsQuarts(1), "US liquid quart", UsGallon),
        OfVolume("gal", Volume.FromUsGallons(1), "US gallon", UsGallon),
        OfVolume("metric-tsp", Volume.FromMetricTeaspoons(1), "metric teaspoon", MetricKitchen),
        OfVolume("metric-tbsp", Volume.FromUkTablespoons(1), "metric tablespoon", MetricKitchen),
        OfVolume("metric-cup", Volume.FromMetricCups(1), "metric cup", MetricKitchen),
        OfVolume("au-tbsp", Volume.FromAuTablespoons(1), "Australian tablespoon", MetricKitchen),
        new("label-tsp", Dimension.Volume, 5, 0, "teaspoon on a US label", Label),
        new("label-tbsp", Dimension.Volume, 15, 0, "tablespoon on a US label", Label),
        new("label-cup", Dimension.Volume, 240, 0, "cup on a US label", Label),
        new("imp-floz", Dimension.Volume, 28.4130625, 0, "imperial fluid ounce", Imperial),
        OfVolume("imp-pt", Volume.FromImperialPints(1), "imperial pint", Imperial),
        OfVolume("imp-gal", Volume.FromImperialGallons(1), "imperial gallon", Imperial),

        new("g/kg", Dimension.Ratio, 1, 0, "grams per kilogram of the base", Ratio),
        new("%", Dimension.Ratio, 10, 0, "percent of the base", Ratio),
        new("ppm", Dimension.Ratio, 0.001, 0, "parts per million of the base", Ratio),
        new("%-of-liquid", Dimension.ShareOfLiquid, 1, 0, "percent of the liquid's weight", Ratio),
        new("%-of-water", Dimension.ShareOfWater, 1, 0, "percent of the water's weight", Ratio),
        new("g/100cm2", Dimension.Coverage, 1, 0, "grams per hundred square centimetres", Si),
        new("g/mL", Dimension.Density, 1, 0, "grams per millilitre", Si),
        new("parts-by-mass", Dimension.PartsByMass, 1, 0, "parts by mass", Ratio),
        new("parts-by-volume", Dimension.PartsByVolume, 1, 0, "parts by volume", Ratio),

        new("mm", Dimension.Length, 1, 0, "millimetre", Si),
        new("cm", Dimension.Length, 10, 0, "centimetre", Si),
        new("in", Dimension.Length, AsDefined(Length.FromInches(1).Millimeters), 0, "inch", International),
        new("C", Dimension.Temperature, 1, 0, "degree Celsius", Si),
        new("F", Dimension.Temperature, 5.0 / 9.0, -160.0 / 9.0, "degree Fahrenheit", "C = (F - 32) x 5/9"),
        new("min", Dimension.Time, 1, 0, "minute", Si),
        new("h", Dimension.Time, 60, 0, "hour", Si),
        new("d", Dimension.Time, 1440, 0, "day", Si),
        new("m2/s", Dimension.Diffusivity, 1, 0, "square metres per second", Si),
    ];

    private static Unit OfMass(string symbol, Mass one, string name, string definition) =>
        new(symbol, Dimension.Mass, AsDefined(one.Grams), 0, name, definition);

    private static Unit OfVolume(string symbol, Volume one, string name, string definition) =>
        new(symbol, Dimension.Volume, AsDefined(one.Milliliters), 0, name, definition);

    // The defined factors have at most 15 significant digits; going through decimal drops the last-bit noise of
    // the library's own unit-to-base-to-unit arithmetic.
    private static double AsDefined(double factor) => (double)(decimal)factor;
}
