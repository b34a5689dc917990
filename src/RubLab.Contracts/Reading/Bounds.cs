using RubLab.Core.Formulas;
using RubLab.Core.Quantities;

namespace RubLab.Contracts.Reading;

/// <summary>The range a number must lie in, in the dimension's base unit.</summary>
/// <param name="Lowest">The lowest value.</param>
/// <param name="Highest">The highest value, allowed itself.</param>
/// <param name="LowestIsAllowed">Whether the lowest value itself is allowed.</param>
/// <param name="Unit">The base unit's symbol, for the message.</param>
public readonly record struct Bounds(double Lowest, double Highest, bool LowestIsAllowed, string Unit)
{
    // Below this an amount is no amount, and quotients of such figures leave the range of numbers.
    private const double Least = 1e-6;

    /// <summary>A piece, a pile, a card's meat: from a milligram to a tonne.</summary>
    public static readonly Bounds MeatGrams = new(0.001, 1e6, true, "g");

    /// <summary>A portion of cooked meat, from a gram to five kilograms.</summary>
    public static readonly Bounds PortionGrams = new(1, 5000, true, "g");

    /// <summary>A weighing step, from a milligram to a kilogram.</summary>
    public static readonly Bounds StepGrams = new(0.001, 1000, true, "g");

    /// <summary>A dose: from a thousandth of a part per million up to the weight of the meat itself.</summary>
    public static readonly Bounds DoseGramsPerKilogram = new(Least, 1000, true, "g/kg");

    /// <summary>A dose by surface.</summary>
    public static readonly Bounds CoverageGrams = new(Least, 1000, true, "g/100cm2");

    /// <summary>A line written as a ratio.</summary>
    public static readonly Bounds LineRatio = new(Least, 1000, true, "g/kg") { OrNothing = true };

    /// <summary>The liquid of a soak: up to twenty times the weight of the meat; more brine than that no kitchen makes.</summary>
    public static readonly Bounds SoakGramsPerKilogram = new(Least, 20_000, true, "g/kg");

    /// <summary>A line of a liquid in percent of its weight.</summary>
    public static readonly Bounds PercentOfLiquid = new(Least, 100, true, "%-of-liquid") { OrNothing = true };

    /// <summary>A line in percent of the water: water at the boil holds about five times its weight of sugar.</summary>
    public static readonly Bounds PercentOfWater = new(Least, 1000, true, "%-of-water") { OrNothing = true };

    /// <summary>An amount on a card.</summary>
    public static readonly Bounds CardAmount = new(Least, 1e7, true, "") { OrNothing = true };

    /// <summary>Percent that may be none or all.</summary>
    public static readonly Bounds Percent = new(0, 100, true, "%");

    /// <summary>Percent of a part that must leave something.</summary>
    public static readonly Bounds PercentOfPart = new(0, 99, true, "%");

    /// <summary>Cooked over green weight, percent.</summary>
    public static readonly Bounds YieldPercent = new(1, 100, true, "%");

    /// <summary>Weight left of a sauce boiled down, percent.</summary>
    public static readonly Bounds PercentLeft = new(1, 100, true, "%");

    /// <summary>Overage in the mix.</summary>
    public static readonly Bounds OveragePercent = new(0, 100, true, "%");

    /// <summary>A plain share, of none or of all.</summary>
    public static readonly Bounds Fraction = new(0, 1, true, "");

    /// <summary>The part of a cure that is nitrite or nitrate: some, or all of it.</summary>
    public static readonly Bounds CureContent = new(0, 1, false, "");

    /// <summary>A factor on the doses of one piece.</summary>
    public static readonly Bounds DoseFactor = new(0, 10, true, "");

    /// <summary>Anything a kitchen might convert.</summary>
    public static readonly Bounds Conversion = new(0, 1e9, true, "");

    /// <summary>Zero is allowed too, below the lowest value.</summary>
    public bool OrNothing { get; init; }

    /// <summary>What a scale or a bowl takes.</summary>
    public static readonly Bounds CapacityGrams = new(0.1, 1e7, true, "g");

    /// <summary>A piece's thickness, and a slice's.</summary>
    public static readonly Bounds ThicknessMillimetres = new(1, 1000, true, "mm");

    /// <summary>Sodium in 100 g of raw meat; sodium chloride itself is 39 %.</summary>
    public static readonly Bounds PackSodiumMilligrams = new(0, 5, true, "g");

    /// <summary>A cooker, from a cold smoker to a furnace.</summary>
    public static readonly Bounds CookerCelsius = new(-20, 600, true, "C");

    /// <summary>A finished sauce: lighter than oil none is, heavier than a heavy syrup none.</summary>
    public static readonly Bounds SauceDensity = new(0.5, 2, true, "g/mL");

    /// <summary>What one portion gets of a sauce, in g or mL.</summary>
    public static readonly Bounds SaucePortion = new(0.1, 2000, true, "");
    /// <summary>The dose of a kind of formula on a base of weight.</summary>
    public static Bounds DoseOf(FormulaKind? kind) => kind == FormulaKind.Soak ? SoakGramsPerKilogram : DoseGramsPerKilogram;

    /// <summary>A line of a kind of formula in a unit it may be written in.</summary>
    public static Bounds LineOf(Unit unit, FormulaKind? kind) => unit.Dimension switch
    {
        Dimension.Ratio => kind == FormulaKind.Soak ? SoakGramsPerKilogram with { OrNothing = true } : LineRatio,
        Dimension.ShareOfLiquid => PercentOfLiquid,
        Dimension.ShareOfWater => PercentOfWater,
        _ => CardAmount,
    };
    /// <summary>A part of a portion, percent.</summary>
    public static readonly Bounds SharePercent = new(0.1, 100, true, "%");

    /// <summary>What a pack or a shelf holds, from a gram to a tonne.</summary>
    public static readonly Bounds PackGrams = new(1, 1e6, true, "g");

    /// <summary>The weight a price is for.</summary>
    public static readonly Bounds PriceGrams = new(1, 1e6, true, "g");

    /// <summary>A piece as bought, from a gram to a tonne.</summary>
    public static readonly Bounds PieceGrams = new(1, 1e6, true, "g");

    public bool Holds(double value) =>
        value <= Highest && ((LowestIsAllowed ? value >= Lowest : value > Lowest) || (OrNothing && value == 0));
}
