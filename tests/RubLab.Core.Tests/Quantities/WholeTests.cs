using CsCheck;
using RubLab.Core.Quantities;

namespace RubLab.Core.Tests.Quantities;

public sealed class WholeTests
{
    [Fact]
    public void What_is_whole_by_hand_is_whole()
    {
        // Each quotient lies a last bit beside the whole number it is by hand.
        Assert.NotEqual(3, 0.3 / 0.1);
        Assert.Equal((3, 3), (Whole.Up(0.3 / 0.1), Whole.Down(0.3 / 0.1)));
        Assert.NotEqual(3, (0.1 + 0.2) / 0.1);
        Assert.Equal((3, 3), (Whole.Up((0.1 + 0.2) / 0.1), Whole.Down((0.1 + 0.2) / 0.1)));
    }

    [Theory]
    [InlineData(2.000001, 3, 2)]
    [InlineData(2.999999, 3, 2)]
    [InlineData(0, 0, 0)]
    [InlineData(1e-6, 1, 0)]
    public void What_is_not_whole_goes_the_way_it_must(double exact, long up, long down) =>
        Assert.Equal((up, down), (Whole.Up(exact), Whole.Down(exact)));

    [Fact]
    public void Steps_put_together_come_apart_again() => Law.Holds(Gen.Select(Gen.Long[1, 100_000], Gen.Double[0.001, 1000]), 1000, put =>
    {
        var (count, step) = put;
        Assert.Equal((count, count), (Whole.Up(count * step / step), Whole.Down(count * step / step)));
    });
}
