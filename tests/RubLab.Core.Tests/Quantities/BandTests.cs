using CsCheck;
using RubLab.Core.Quantities;

namespace RubLab.Core.Tests.Quantities;

public sealed class BandTests
{
    [Theory]
    [InlineData(-0.001, 1, 2)]
    [InlineData(2, 1, 3)]
    [InlineData(1, 3, 2)]
    [InlineData(double.NaN, 1, 2)]
    [InlineData(0, double.NaN, 2)]
    [InlineData(0, 1, double.NaN)]
    [InlineData(0, 1, double.PositiveInfinity)]
    [InlineData(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity)]
    public void Three_figures_that_are_no_band_are_refused(double low, double typical, double high) =>
        Assert.Throws<ArgumentException>(() => new Band(low, typical, high));

    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(1, 1, 1)]
    [InlineData(0, 0, 5)]
    [InlineData(1, 2, 3)]
    public void Ordered_figures_are_a_band(double low, double typical, double high)
    {
        var band = new Band(low, typical, high);

        Assert.Equal((low, typical, high), (band.Low, band.Typical, band.High));
        Assert.Equal(low == high, band.IsExact);
    }

    [Fact]
    public void Default_is_exactly_zero() => Assert.Equal(Band.Exact(0), default);

    [Fact]
    public void Around_gives_the_percentage_either_way()
    {
        var band = Band.Around(50, 10);

        Assert.Equal(45, band.Low, 1e-12);
        Assert.Equal(50, band.Typical);
        Assert.Equal(55, band.High, 1e-12);
    }

    [Fact]
    public void Around_by_more_than_all_of_it_is_refused() =>
        Assert.Throws<ArgumentException>(() => Band.Around(1, 101));

    [Fact]
    public void A_negative_factor_is_refused() =>
        Assert.Throws<ArgumentException>(() => new Band(1, 2, 3).Times(-1));

    [Fact]
    public void A_quotient_that_overflows_is_refused() =>
        Assert.Throws<ArgumentException>(() => Band.Exact(1).Over(new Band(0, 1, 2)));

    [Fact]
    public void Arithmetic_works_end_by_end()
    {
        var two = new Band(1, 2, 4);
        var ten = new Band(8, 10, 16);

        Assert.Equal(new Band(3, 6, 12), two.Times(3));
        Assert.Equal(new Band(8, 20, 64), two.Times(ten));
        Assert.Equal(new Band(0.5, 1, 2), two.Over(2));
        Assert.Equal(new Band(2, 5, 16), ten.Over(two));
        Assert.Equal(new Band(9, 12, 20), two.Plus(ten));
    }

    [Fact]
    public void Spanning_keeps_its_own_typical_value()
    {
        Assert.Equal(new Band(1, 3, 9), new Band(2, 3, 4).Spanning(new Band(1, 8, 9)));
        Assert.Equal(new Band(1, 8, 9), new Band(1, 8, 9).Spanning(new Band(2, 3, 4)));
    }

    [Theory]
    [InlineData(0.99, false)]
    [InlineData(1, true)]
    [InlineData(2.5, true)]
    [InlineData(3, true)]
    [InlineData(3.01, false)]
    public void A_band_holds_its_ends_and_what_lies_between(double value, bool holds) =>
        Assert.Equal(holds, new Band(1, 2, 3).Contains(value));

    [Fact]
    public void Every_operation_on_points_stays_inside_the_operation_on_bands() =>
        Law.Holds(Gen.Select(Gens.BandAboveZero, Gens.Unit, Gens.BandAboveZero, Gens.Unit), 20_000, c =>
        {
            var (a, atA, b, atB) = c;
            var x = Gens.Inside(a, atA);
            var y = Gens.Inside(b, atB);

            Assert.True(a.Times(b).Contains(x * y));
            Assert.True(a.Over(b).Contains(x / y));
            Assert.True(a.Plus(b).Contains(x + y));
            Assert.True(a.Times(y).Contains(x * y));
            Assert.True(a.Over(y).Contains(x / y));
        });
}
