using System.Globalization;
using RubLab.Contracts.Quantities;
using RubLab.Core.Faults;
using RubLab.Core.Quantities;

namespace RubLab.Contracts.Reading;

/// <summary>Reads the parts requests share. What cannot be read is noted where it stands and comes back absent.</summary>
internal static class Reader
{
    // Far below anything that is weighed, far above where a quotient overflows.
    private const double SmallestNumber = 1e-30;

    /// <summary>A quantity in its dimension's base unit, within bounds.</summary>
    public static double? Amount(QuantityRequest? quantity, Place at, Bounds bounds, bool isRequired, params ReadOnlySpan<Dimension> dimensions)
    {
        if (quantity is null)
        {
            if (isRequired)
            {
                Missing(at);
            }

            return null;
        }

        var unit = Unit(quantity.Unit, at.At("unit"), dimensions);
        if (quantity.Value is not { } value)
        {
            Missing(at.At("value"));
            return null;
        }

        if (unit is null)
        {
            Finite(value, at.At("value"));
            return null;
        }

        return Within(value, unit, bounds, at.At("value"));
    }

    /// <summary>A quantity kept as sent: its number, checked in base units, and its unit.</summary>
    public static double? Authored(
        QuantityRequest quantity, Place at, Func<Unit, Bounds> boundsOf, out Unit? unit, params ReadOnlySpan<Dimension> dimensions)
    {
        unit = Unit(quantity.Unit, at.At("unit"), dimensions);
        if (quantity.Value is not { } value)
        {
            Missing(at.At("value"));
            return null;
        }

        if (unit is null)
        {
            Finite(value, at.At("value"));
            return null;
        }

        return Within(value, unit, boundsOf(unit), at.At("value")) is null ? null : value;
    }

    /// <summary>A percentage: a ratio, whose base unit is g/kg, as percent.</summary>
    public static double? Percent(QuantityRequest? quantity, Place at, Bounds bounds)
    {
        if (quantity is null)
        {
            return null;
        }

        PercentUnit(quantity.Unit, at.At("unit"));
        if (quantity.Value is not { } value)
        {
            Missing(at.At("value"));
            return null;
        }

        return Within(value, bounds, at.At("value"));
    }

    /// <summary>An exact percentage or a band of percentages.</summary>
    public static Band? PercentBand(EstimateRequest? estimate, Place at, Bounds bounds)
    {
        if (estimate is null)
        {
            return null;
        }

        PercentUnit(estimate.Unit, at.At("unit"));
        if (estimate.Value is { } exact)
        {
            if (estimate is { Low: null, Typical: null, High: null })
            {
                return Within(exact, bounds, at.At("value")) is { } value ? Band.Exact(value) : null;
            }

            at.Fault("one-or-the-other", "Give either a value or a band of low, typical and high.");
            return null;
        }

        var low = BandMember(estimate.Low, "low", at, bounds);
        var typical = BandMember(estimate.Typical, "typical", at, bounds);
        var high = BandMember(estimate.High, "high", at, bounds);
        if (low is not { } l || typical is not { } t || high is not { } h)
        {
            return null;
        }

        if (l <= t && t <= h)
        {
            return new Band(l, t, h);
        }

        at.Fault("band-order", "A band runs from low over typical to high.");
        return null;
    }

    /// <summary>A unit symbol of one of the dimensions.</summary>
    public static Unit? Unit(string? symbol, Place at, params ReadOnlySpan<Dimension> dimensions)
    {
        if (symbol is null)
        {
            Missing(at);
            return null;
        }

        var isKnown = UnitTable.TryFind(symbol, out var unit);
        if (isKnown && dimensions.Contains(unit!.Dimension))
        {
            return unit;
        }

        var allowed = UnitTable.SymbolsOf(dimensions).ToArray();
        if (isKnown)
        {
            at.Fault(
                "unit-not-allowed", $"{symbol} does not fit here. Allowed: {string.Join(", ", allowed)}.",
                ("value", symbol), ("allowed", allowed));
        }
        else
        {
            at.Fault(
                "unknown-unit", $"'{Shown.Text(symbol)}' is not a unit. Here: {string.Join(", ", allowed)}.",
                ("value", Shown.Text(symbol)), ("allowed", allowed));
        }

        return null;
    }

    /// <summary>A value in a unit, as base units within bounds.</summary>
    public static double? Within(double value, Unit unit, Bounds bounds, Place at)
    {
        if (!Finite(value, at))
        {
            return null;
        }

        if (IsTooSmall(value, unit.Symbol, at))
        {
            return null;
        }

        var inBase = unit.ToBase(value);
        if (bounds.Holds(inBase))
        {
            return inBase;
        }

        OutOfRange(value, unit.Symbol, bounds, at);
        return null;
    }

    /// <summary>A plain number within bounds.</summary>
    public static double? Within(double value, Bounds bounds, Place at)
    {
        if (!Finite(value, at))
        {
            return null;
        }

        if (IsTooSmall(value, bounds.Unit, at))
        {
            return null;
        }

        if (bounds.Holds(value))
        {
            return value;
        }

        OutOfRange(value, bounds.Unit, bounds, at);
        return null;
    }

    public static void Missing(Place at) => at.Fault("required", "This is needed.");

    private static double? BandMember(double? value, string name, Place at, Bounds bounds)
    {
        if (value is { } given)
        {
            return Within(given, bounds, at.At(name));
        }

        Missing(at.At(name));
        return null;
    }

    private static void PercentUnit(string? unit, Place at)
    {
        if (unit is null)
        {
            Missing(at);
        }
        else if (unit != "%")
        {
            at.Fault("unit-not-allowed", $"'{Shown.Text(unit)}' does not fit here. Allowed: %.", ("value", Shown.Text(unit)), ("allowed", new[] { "%" }));
        }
    }

    private static bool Finite(double value, Place at)
    {
        if (double.IsFinite(value))
        {
            return true;
        }

        at.Fault("not-finite", "This is no number, or too large a one to be read.");
        return false;
    }

    private static bool IsTooSmall(double value, string unit, Place at)
    {
        if (value == 0 || Math.Abs(value) >= SmallestNumber)
        {
            return false;
        }

        var shown = string.Create(CultureInfo.InvariantCulture, $"{value} {unit}").TrimEnd();
        at.Fault("out-of-range", $"{shown} is too small to be reckoned with.", ("value", value), ("unit", unit));
        return true;
    }

    // The bounds are said in the unit that was written; the parameters carry them in the base unit.
    private static void OutOfRange(double value, string unit, Bounds bounds, Place at)
    {
        var shownUnit = bounds.Unit;
        var (lowest, highest) = (bounds.Lowest, bounds.Highest);
        if (UnitTable.TryFind(unit, out var written) && UnitTable.TryFind(bounds.Unit, out var ownUnit)
            && written.Dimension == ownUnit.Dimension && written.Symbol != ownUnit.Symbol)
        {
            shownUnit = unit;
            (lowest, highest) = (Readable(written.FromBase(ownUnit.ToBase(lowest))), Readable(written.FromBase(ownUnit.ToBase(highest))));
        }

        var given = $"{Shown.Number(value)} {unit}".TrimEnd();
        var range = $"{(bounds.LowestIsAllowed ? "from" : "above")} {Shown.Number(lowest)} up to {Shown.Number(highest)} {shownUnit}".TrimEnd();
        at.Fault(
            "out-of-range", $"{given} is out of range: {(bounds.OrNothing ? "0, or " : "")}{range}.",
            ("value", value), ("lowest", bounds.Lowest), ("highest", bounds.Highest), ("unit", bounds.Unit));
    }

    private static double Readable(double value) => double.Parse(value.ToString("G6", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
