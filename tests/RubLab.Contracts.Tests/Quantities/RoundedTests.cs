using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Tests.Quantities;

public class RoundedTests
{
    [Theory]
    [InlineData(13.200000000000001, 13.2)]
    [InlineData(8.799999999999999, 8.8)]
    [InlineData(0.1 + 0.2, 0.3)]
    [InlineData(123456789012.4, 123456789012)]
    [InlineData(1234567890125, 1234567890130)]
    [InlineData(0.000013200000000000001, 0.0000132)]
    [InlineData(1.3200000000000001e-7, 1.32e-7)]
    [InlineData(1, 1)]
    [InlineData(1000, 1000)]
    [InlineData(0.001, 0.001)]
    [InlineData(0, 0)]
    public void An_exact_figure_loses_only_binary_noise(double value, double written) => Assert.Equal(written, Rounded.Exact(value));

    [Theory]
    [InlineData(13.8235, 13.8)]
    [InlineData(0.46662, 0.467)]
    [InlineData(0.0004666, 0.000467)]
    [InlineData(0.125, 0.125)]
    [InlineData(99.95, 100)]
    [InlineData(1234, 1230)]
    [InlineData(1235, 1240)]
    [InlineData(1e12, 1e12)]
    [InlineData(1.2345e-20, 1.23e-20)]
    public void An_estimate_keeps_three_digits(double value, double written) => Assert.Equal(written, Rounded.Estimate(value));

    [Theory]
    [InlineData(8.2369, 8.24)]
    [InlineData(0.125, 0.13)]
    [InlineData(12.3449, 12.34)]
    [InlineData(0.002514, 0.00251)]
    [InlineData(0.09994, 0.0999)]
    [InlineData(0.1, 0.1)]
    [InlineData(0, 0)]
    public void A_ledger_figure_is_written_in_hundredths_and_small_ones_in_three_digits(double value, double written) =>
        Assert.Equal(written, Rounded.Ledger(value));

    [Theory]
    [InlineData(628.5, 629)]
    [InlineData(0.49, 0)]
    public void Milligrams_in_a_portion_are_whole(double value, double written) => Assert.Equal(written, Rounded.Whole(value));

    [Theory]
    [InlineData(double.Epsilon)]
    [InlineData(1e-310)]
    [InlineData(1e300)]
    [InlineData(double.MaxValue)]
    public void Rounding_never_leaves_the_range_of_numbers(double value)
    {
        Assert.True(double.IsFinite(Rounded.Exact(value)));
        Assert.True(double.IsFinite(Rounded.Estimate(value)));
    }
}
