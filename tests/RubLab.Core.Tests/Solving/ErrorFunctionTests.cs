using CsCheck;
using MathNet.Numerics;
using RubLab.Core.Solving;

namespace RubLab.Core.Tests.Solving;

public sealed class ErrorFunctionTests
{
    // That library squares the number in one go, which costs it the square's share of the last bit.
    [Fact]
    public void The_complement_is_that_of_another_library() => Law.Holds(
        Gen.Double[-6, 26], 20_000, x => AssertClose(SpecialFunctions.Erfc(x), ErrorFunction.Erfc(x), 4e-15 + (x * x * 2.3e-16)));

    // Worked to 40 digits from the definition, at the double nearest to the number.
    [Theory]
    [InlineData(-3, 1.9999779095030014146)]
    [InlineData(0.4999, 0.47958800483861340972)]
    [InlineData(0.5, 0.47950012218695346232)]
    [InlineData(1.7, 0.016209541409225439159)]
    [InlineData(3.3, 3.0577097964381651988e-6)]
    [InlineData(5, 1.5374597944280348502e-12)]
    [InlineData(10, 2.088487583762544757e-45)]
    [InlineData(20, 5.3958656116079009289e-176)]
    [InlineData(20.85, 4.3076262581888376821e-191)]
    [InlineData(25.9, 1.0202833184732667196e-293)]
    public void The_complement_is_right_to_the_last_bits(double x, double complement) => AssertClose(complement, ErrorFunction.Erfc(x), 1e-15);

    [Fact]
    public void The_function_is_that_of_another_library() => Law.Holds(
        Gen.OneOf(Gen.Double[-6, 6], Gen.Double[-1e-3, 1e-3]), 20_000, x => AssertClose(SpecialFunctions.Erf(x), ErrorFunction.Erf(x), 2e-15));

    // Abramowitz and Stegun 7.1.13: 2 / (x + sqrt(x^2 + 2)) <= sqrt(pi) exp(x^2) erfc x < 2 / (x + sqrt(x^2 + 4 / pi)).
    [Fact]
    public void The_scaled_complement_lies_between_its_bounds() => Law.Holds(Gen.Double[-3, 300].Select(e => Math.Exp(e)), 20_000, x =>
    {
        var scaled = ErrorFunction.Scaled(x) * Math.Sqrt(Math.PI);
        Assert.InRange(scaled, 2 / (x + Math.Sqrt((x * x) + 2)) * (1 - 1e-15), 2 / (x + Math.Sqrt((x * x) + (4 / Math.PI))) * (1 + 1e-15));
    });

    [Fact]
    public void Its_shortfall_from_one_is_not_lost_for_small_numbers() => Law.Holds(Gen.Double[-60, -1].Select(e => Math.Exp(e)), 5_000, x =>
        AssertClose((2 / Math.Sqrt(Math.PI) * x) - (x * x) + (4 / (3 * Math.Sqrt(Math.PI)) * x * x * x) - (x * x * x * x / 2), ErrorFunction.ScaledComplement(x), Math.Max(1e-14, x * x * x * x)));

    [Theory]
    [InlineData(0, 1.0)]
    [InlineData(double.PositiveInfinity, 0)]
    public void The_ends_are_exact(double x, double complement)
    {
        Assert.Equal(complement, ErrorFunction.Erfc(x));
        Assert.Equal(complement, ErrorFunction.Scaled(x));
        Assert.Equal(1 - complement, ErrorFunction.ScaledComplement(x));
        Assert.Equal(2, ErrorFunction.Erfc(double.NegativeInfinity));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void The_scaled_complement_is_of_zero_or_more(double x) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ErrorFunction.Scaled(x));

    private static void AssertClose(double expected, double found, double relative) =>
        Assert.True(Math.Abs(found - expected) <= relative * Math.Abs(expected), $"{found:R} for {expected:R}.");
}
