using CsCheck;
using RubLab.Core.Quantities;
using RubLab.Core.Tests.Published;

namespace RubLab.Core.Tests.Quantities;

public sealed class BlendsTests
{
    // Sums of a handful of doubles in another order differ by a few last bits.
    private const double LastBits = 1e-12;

    private static readonly Gen<(Band[] Amounts, Band[] Properties)> Mixes =
        Gen.Int[1, 6].SelectMany(n => Gen.Select(Gens.Part.Array[n], Gens.BandOf(0, 100).Array[n]))
            .Where(mix => mix.Item1.Any(a => a.Typical > 0));

    [Fact]
    public void Equal_volumes_hold_what_the_corners_hold()
    {
        Band[] amounts = [new(0.54, 0.58, 0.62), new(0.44, 0.49, 0.54)];

        var percent = Blends.Share(amounts, 0).Times(100);

        PublishedCase.Read("worked-examples.csv").Single(c => c.Id == "E12-low").AssertIs(percent.Low);
        PublishedCase.Read("worked-examples.csv").Single(c => c.Id == "E12-high").AssertIs(percent.High);
    }

    [Fact]
    public void The_only_part_is_the_whole_whatever_its_amount() =>
        Assert.Equal(Band.Exact(1), Blends.Share([new Band(0.5, 1, 2)], 0));

    [Fact]
    public void A_part_of_nothing_has_no_share() =>
        Assert.Equal(Band.Exact(0), Blends.Share([Band.Exact(0), new Band(0, 1, 2)], 0));

    [Fact]
    public void A_part_may_be_all_where_the_others_may_be_absent() =>
        Assert.Equal(new Band(0, 0.5, 1), Blends.Share([new Band(0, 1, 2), new Band(0, 1, 2)], 0));

    [Fact]
    public void A_share_is_bounded_by_the_corners_and_attains_them() => Law.Holds(Mixes, 5_000, mix =>
    {
        for (var part = 0; part < mix.Amounts.Length; part++)
        {
            var asked = part;
            var (low, high) = OverCorners(mix.Amounts, amounts => amounts[asked] == 0 ? 0 : amounts[asked] / amounts.Sum());
            var share = Blends.Share(mix.Amounts, part);

            Assert.Equal(low, share.Low, LastBits);
            Assert.Equal(high, share.High, LastBits);
            Assert.Equal(mix.Amounts[part].Typical / mix.Amounts.Sum(a => a.Typical), share.Typical, LastBits);
        }
    });

    [Fact]
    public void A_mean_is_bounded_by_the_corners_and_attains_them() => Law.Holds(Mixes, 5_000, mix =>
    {
        // Without an amount there is no mean, so corners where nothing is left are no corners.
        var low = OverCorners(mix.Amounts, amounts => Mean(amounts, mix.Properties, p => p.Low)).Low;
        var high = OverCorners(mix.Amounts, amounts => Mean(amounts, mix.Properties, p => p.High)).High;
        var mean = Blends.WeightedMean(mix.Amounts, mix.Properties);

        Assert.Equal(low, mean.Low, LastBits * 100);
        Assert.Equal(high, mean.High, LastBits * 100);
        Assert.Equal(Mean(mix.Amounts.Select(a => a.Typical).ToArray(), mix.Properties, p => p.Typical)!.Value, mean.Typical, LastBits * 100);
    });

    [Fact]
    public void Every_sampled_mix_lies_inside() =>
        Law.Holds(Gen.Select(Mixes, Gens.Unit.Array[12]), 5_000, c =>
        {
            var ((amounts, properties), at) = c;
            var sampled = amounts.Select((a, i) => Gens.Inside(a, at[i])).ToArray();
            var carried = properties.Select((p, i) => Gens.Inside(p, at[i + 6])).ToArray();
            if (sampled.Sum() is not (> 0 and var sum))
            {
                return;
            }

            Assert.InRange(
                sampled.Zip(carried, (a, p) => a * p).Sum() / sum,
                Blends.WeightedMean(amounts, properties).Low - 1e-10, Blends.WeightedMean(amounts, properties).High + 1e-10);
            Assert.InRange(sampled[0] / sum, Blends.Share(amounts, 0).Low - LastBits, Blends.Share(amounts, 0).High + LastBits);
        });

    [Fact]
    public void A_trace_beside_a_bulk_of_little_doubt_is_still_a_band() =>
        Law.Holds(Gen.Select(Gen.Double[0.5, 2], Gen.Double[0, 4e-16], Gen.Double[0, 0.2]), 20_000, c =>
        {
            var (bulk, trace, doubt) = c;
            var share = Blends.Share([new Band(bulk * (1 - doubt), bulk, bulk * (1 + doubt)), Band.Exact(trace)], 0);

            Assert.InRange(share.Low, 1 - 1e-15, 1);
        });

    [Fact]
    public void A_mean_needs_a_property_for_each_amount()
    {
        Assert.Throws<ArgumentException>(() => Blends.WeightedMean([Band.Exact(1)], []));
        Assert.Throws<ArgumentException>(() => Blends.WeightedMean([], []));
    }

    [Fact]
    public void There_is_no_mean_over_nothing() =>
        Assert.Throws<ArgumentException>(() => Blends.WeightedMean([default, default], [Band.Exact(1), Band.Exact(2)]));

    private static double? Mean(double[] amounts, Band[] properties, Func<Band, double> end) =>
        amounts.Sum() is > 0 and var sum ? amounts.Zip(properties, (a, p) => a * end(p)).Sum() / sum : null;

    private static (double Low, double High) OverCorners(Band[] amounts, Func<double[], double?> value)
    {
        double low = double.MaxValue, high = double.MinValue;
        for (var corner = 0; corner < 1 << amounts.Length; corner++)
        {
            var at = amounts.Select((a, i) => (corner >> i & 1) == 0 ? a.Low : a.High).ToArray();
            if (value(at) is { } one)
            {
                low = Math.Min(low, one);
                high = Math.Max(high, one);
            }
        }

        return (low, high);
    }
}
