using RubLab.Core.Remarks;

namespace RubLab.Core.Tests.Remarks;

public sealed class FiguresTests
{
    [Theory]
    [InlineData(0, "0")]
    [InlineData(0.0000123456, "0.0000123")]
    [InlineData(0.012345, "0.0123")]
    [InlineData(1.185, "1.19")]
    [InlineData(27.625, "27.6")]
    [InlineData(36.248, "36.2")]
    [InlineData(207.425, "207")]
    [InlineData(999.6, "1000")]
    [InlineData(2015, "2015")]
    [InlineData(9999.4, "9999")]
    [InlineData(9999.6, "10,000")]
    [InlineData(124_819, "124,819")]
    [InlineData(1_234_567.8, "1,234,568")]
    [InlineData(-0.5, "-0.5")]
    public void A_figure_is_read_in_three_digits_and_whole_where_it_is_large(double value, string read) => Assert.Equal(read, Figures.Read(value));

    [Theory]
    [InlineData(200.2, 200, "200.2")]
    [InlineData(199.99, 200, "199.99")]
    [InlineData(200, 200, "200")]
    [InlineData(547.2, 546.875, "547")]
    [InlineData(546.9, 546.875, "547")]
    [InlineData(546.8751, 546.875, "547")]
    [InlineData(546.8, 546.875, "546.8")]
    [InlineData(1062.4, 120, "1062")]
    [InlineData(4.0003, 4, "4.0003")]
    public void A_figure_above_a_bound_never_reads_as_the_bound_nor_one_below_it(double value, double bound, string read) =>
        Assert.Equal(read, Figures.Read(value, bound));

    [Theory]
    [InlineData(2.5, "2.5")]
    [InlineData(15 - 12.5 + 1e-13, "2.5")]
    [InlineData(2.2501, "2.26")]
    [InlineData(0.0012301, "0.00124")]
    [InlineData(862.1, "863")]
    [InlineData(9.999, "10")]
    [InlineData(0, "0")]
    public void What_must_be_made_up_for_is_never_written_as_less(double value, string read) => Assert.Equal(read, Figures.AtLeast(value));

    [Theory]
    [InlineData(124_819, "125,000")]
    [InlineData(36.248, "36.2")]
    public void An_estimate_has_three_digits_however_large(double value, string read) => Assert.Equal(read, Figures.Estimated(value));

    [Theory]
    [InlineData(546.875, "546.875")]
    [InlineData(2187.5, "2187.5")]
    [InlineData(200_000, "200,000")]
    [InlineData(0.1 + 0.2, "0.3")]
    [InlineData(12_345.678, "12,345.678")]
    public void A_bound_keeps_every_digit(double value, string read) => Assert.Equal(read, Figures.Exact(value));
}
