using CsCheck;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Scaling;

public sealed class WholeStepsTests
{
    private static readonly Gen<double> Amount = Gen.OneOf(
        Gen.Double[0, 1000],
        Gen.Int[0, 1000].Select(i => (double)i),
        Gen.Int[0, 4000].Select(i => i / 4.0),
        Gen.Int[0, 1000].Select(i => Math.BitIncrement(i)),
        Gen.Int[1, 1000].Select(i => Math.BitDecrement(i)),
        Gen.Const(double.Epsilon),
        Gen.Const(0.0),
        Gen.Const(-0.0));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.49, 0)]
    [InlineData(0.5, 1)]
    [InlineData(1.5, 2)]
    [InlineData(2.5, 3)]
    [InlineData(2.51, 3)]
    [InlineData(0.49999999999999994, 0)]
    [InlineData(4503599627370497, 4503599627370497)]
    [InlineData(9007199254740993, 9007199254740992)]
    public void The_nearest_step_is_found_half_up(double exact, long nearest) =>
        Assert.Equal(nearest, WholeSteps.Nearest(exact));

    [Fact]
    public void The_largest_remainder_gets_the_step() => Assert.Equal([1, 3, 2], Split([1.2, 2.7, 2.1], 6));

    [Fact]
    public void A_tie_goes_to_the_lower_number() => Assert.Equal([2, 2, 1, 1], Split([1.5, 1.5, 1.5, 1.5], 6));

    [Fact]
    public void A_tie_goes_to_the_lower_number_after_a_larger_remainder() =>
        Assert.Equal([1, 0, 0, 1], Split([0.25, 0.25, 0.25, 0.75], 2));

    [Fact]
    public void Whole_amounts_stay_as_they_are() => Assert.Equal([3, 0, 7], Split([3, 0, 7], 10));

    [Fact]
    public void Nothing_to_split_is_split_into_nothing() => Assert.Empty(Split([], 0));

    [Fact]
    public void Remainders_that_differ_in_the_last_bit_alone_are_told_apart() =>
        Assert.Equal([0, 0, 1, 0], Split([0.25, 0.25, Math.BitIncrement(0.25), 0.25], 1));

    [Fact]
    public void A_remainder_of_the_smallest_number_there_is_counts_before_none() =>
        Assert.Equal([0, 1], Split([0, double.Epsilon], 1));

    [Theory]
    [InlineData(3)]
    [InlineData(9)]
    public void A_total_that_does_not_belong_is_refused(long total) =>
        Assert.Throws<ArgumentException>(() => WholeSteps.Split([1.5, 2.5, 1.2], total, new long[3]));

    [Theory]
    [InlineData(4)]
    [InlineData(7)]
    public void A_total_within_a_step_per_amount_is_taken(long total) =>
        Assert.Equal(total, Split([1.5, 2.5, 1.2], total).Sum());

    [Fact]
    public void The_split_is_that_of_sorting_the_remainders() => Law.Holds(Amount.Array[0, 60], 20_000, Compare);

    [Fact]
    public void The_split_of_equal_amounts_is_that_of_sorting() =>
        Law.Holds(Gen.Select(Amount, Gen.Int[1, 200]), 5_000, c => Compare([.. Enumerable.Repeat(c.Item1, c.Item2)]));

    [Fact]
    public void The_split_of_amounts_in_one_octave_is_that_of_sorting() =>
        Law.Holds(Gen.Int[0, 3].Array[1, 60], 5_000, bits => Compare([.. bits.Select(b => BitConverter.UInt64BitsToDouble(0x3FD5_5555_5555_5555 + (ulong)b))]));

    [Fact]
    public void The_split_gives_out_any_total_as_sorting_does() =>
        Law.Holds(Gen.Select(Amount.Array[1, 40], Gens.Unit), 10_000, c =>
        {
            var (exact, at) = c;
            var total = exact.Sum(e => (long)Math.Floor(e)) + (long)(at * exact.Length);

            Assert.Equal(LargestRemainder.Split(exact, total), Split(exact, total));
        });

    [Theory]
    [InlineData("random")]
    [InlineData("equal")]
    [InlineData("whole")]
    [InlineData("last-bits")]
    [InlineData("powers")]
    public void A_hundred_thousand_amounts_split_as_by_sorting(string kind)
    {
        var random = new Random(1959);
        var exact = Enumerable.Range(0, 100_000).Select(i => kind switch
        {
            "random" => random.NextDouble() * 500,
            "equal" => 17.3,
            "whole" => random.Next(500),
            "last-bits" => BitConverter.UInt64BitsToDouble(BitConverter.DoubleToUInt64Bits(0.3) + (ulong)random.Next(3)),
            _ => random.Next(9) + Math.ScaleB(random.NextDouble(), -random.Next(1000)),
        }).ToArray();

        Compare(exact);
    }

    private static void Compare(double[] exact)
    {
        var total = WholeSteps.Nearest(exact.Sum());
        var whole = Split(exact, total);

        Assert.Equal(LargestRemainder.Split(exact, total), whole);
        Assert.Equal(total, whole.Sum());
        for (var i = 0; i < exact.Length; i++)
        {
            if (!(Math.Abs(whole[i] - exact[i]) < 1))
            {
                Assert.Fail($"Amount {i}: {whole[i]} for {exact[i]:R}.");
            }
        }
    }

    private static long[] Split(double[] exact, long total)
    {
        var whole = new long[exact.Length];
        WholeSteps.Split(exact, total, whole);
        return whole;
    }
}
