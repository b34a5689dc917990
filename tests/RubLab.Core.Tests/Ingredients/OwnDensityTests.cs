using CsCheck;
using RubLab.Core.Ingredients;
using RubLab.Core.Sources;

namespace RubLab.Core.Tests.Ingredients;

public sealed class OwnDensityTests
{
    private const double General = 10;

    private static readonly Gen<(double Grams, double Millilitres)[]> Fillings = Gen.Select(
        Gen.Double[50, 400], Gen.Double[14, 500], (grams, millilitres) => (grams, millilitres)).Array[1, 20];

    [Fact]
    public void One_filling_has_the_spread_of_filling_in_general()
    {
        var own = OwnDensity.From([150], [236.5882365], General);

        Assert.Equal(150 / 236.5882365, own.MeanGramsPerMillilitre, 1e-15);
        Assert.Null(own.SpreadPercent);
        Assert.Equal(0.9 * own.MeanGramsPerMillilitre, own.GramsPerMillilitre.Low, 1e-12);
        Assert.Equal(1.1 * own.MeanGramsPerMillilitre, own.GramsPerMillilitre.High, 1e-12);
        Assert.Equal(("own-weighing", "one filling", Confidence.Good), (OwnDensity.SourceId, own.AsBulkDensity(null).Citation.Locator, own.AsBulkDensity(null).Citation.Confidence));
    }

    [Theory]
    [InlineData(4)]
    [InlineData(25)]
    [InlineData(100)]
    public void Fillings_that_agree_narrow_the_spread_with_the_root_of_their_number(int count)
    {
        var own = OwnDensity.From(Enumerable.Repeat(150.0, count).ToArray(), Enumerable.Repeat(240.0, count).ToArray(), General);

        Assert.Equal(0, own.SpreadPercent!.Value, 1e-9);
        Assert.Equal(General / Math.Sqrt(count), ((own.GramsPerMillilitre.High / own.MeanGramsPerMillilitre) - 1) * 100, 1e-9);
        Assert.Equal(($"{count} fillings", Confidence.High), (own.AsBulkDensity(null).Citation.Locator, own.AsBulkDensity(null).Citation.Confidence));
    }

    [Fact]
    public void Many_fillings_have_their_own_spread()
    {
        // Half of them 4 % below the mean and half above: a standard deviation of 4 %, of which the band takes two.
        var own = OwnDensity.From(
            Enumerable.Range(0, 1000).Select(i => i % 2 == 0 ? 96.0 : 104.0).ToArray(), Enumerable.Repeat(100.0, 1000).ToArray(), General);

        Assert.Equal(4, own.SpreadPercent!.Value, 0.01);
        Assert.Equal(0.92, own.GramsPerMillilitre.Low, 0.001);
    }

    [Fact]
    public void The_mean_is_all_that_was_weighed_over_all_that_was_filled() => Law.Holds(Fillings, 5_000, fillings =>
    {
        var own = Of(fillings);

        Assert.Equal(fillings.Sum(f => f.Grams) / fillings.Sum(f => f.Millilitres), own.MeanGramsPerMillilitre, 1e-9);
        Assert.Equal(own.MeanGramsPerMillilitre, own.GramsPerMillilitre.Typical);
        Assert.Equal(fillings.Length, own.Count);
        Assert.True(own.GramsPerMillilitre.Low > 0);
    });

    [Fact]
    public void The_order_of_the_fillings_does_not_matter() =>
        Law.Holds(Fillings.SelectMany(f => Gen.Shuffle(f).Select(s => (f, s))), 5_000, pair =>
        {
            Assert.Equal(Of(pair.f).MeanGramsPerMillilitre, Of(pair.s).MeanGramsPerMillilitre, 1e-9);
            Assert.Equal(Of(pair.f).GramsPerMillilitre.Low, Of(pair.s).GramsPerMillilitre.Low, 1e-9);
            Assert.Equal(Of(pair.f).SpreadPercent ?? -1, Of(pair.s).SpreadPercent ?? -1, 1e-7);
        });

    [Fact]
    public void A_weight_without_a_volume_is_refused()
    {
        Assert.Throws<ArgumentException>(() => OwnDensity.From([], [], General));
        Assert.Throws<ArgumentException>(() => OwnDensity.From([1, 2], [1], General));
    }

    private static OwnDensity Of((double Grams, double Millilitres)[] fillings) =>
        OwnDensity.From(fillings.Select(f => f.Grams).ToArray(), fillings.Select(f => f.Millilitres).ToArray(), General);
}
