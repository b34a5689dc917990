using CsCheck;
using RubLab.Core.Quantities;

namespace RubLab.Core.Tests.Quantities;

public sealed class UnitTableTests
{
    [Fact]
    public void Symbols_are_unique() =>
        Assert.Equal(UnitTable.All.Count, UnitTable.All.Select(u => u.Symbol).Distinct(StringComparer.Ordinal).Count());

    [Theory]
    [InlineData("G")]
    [InlineData("Tbsp")]
    [InlineData("ml")]
    [InlineData(" g")]
    [InlineData("")]
    [InlineData(null)]
    public void A_symbol_is_found_only_exactly_as_written(string? symbol)
    {
        Assert.False(UnitTable.TryFind(symbol, out var unit));
        Assert.Null(unit);
    }

    [Fact]
    public void An_unknown_symbol_is_named_when_asked_for_outright() =>
        Assert.Contains("'stone'", Assert.Throws<ArgumentException>(() => UnitTable.Get("stone")).Message, StringComparison.Ordinal);

    [Fact]
    public void The_symbols_of_a_dimension_come_in_the_order_of_the_table() =>
        Assert.Equal(["mg", "g", "kg", "oz", "lb"], UnitTable.SymbolsOf(Dimension.Mass));

    [Fact]
    public void The_symbols_of_two_dimensions_are_those_of_both() =>
        Assert.Equal(["g/kg", "%", "ppm", "g/100cm2"], UnitTable.SymbolsOf(Dimension.Coverage, Dimension.Ratio));

    [Fact]
    public void Converting_to_the_base_unit_and_back_gives_the_number_again() =>
        Law.Holds(Gen.Select(Gen.Int[0, UnitTable.All.Count - 1], Gen.Double[-1e6, 1e6]), 20_000, c =>
        {
            var unit = UnitTable.All[c.Item1];
            var back = unit.FromBase(unit.ToBase(c.Item2));

            // Three roundings of a last bit, taken on the offset too where there is one.
            Assert.Equal(c.Item2, back, 1e-15 * 4 * (Math.Abs(c.Item2) + (Math.Abs(unit.Offset) * 2)));
        });
}
