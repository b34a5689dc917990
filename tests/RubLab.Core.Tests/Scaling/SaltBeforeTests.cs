using RubLab.Core.Quantities;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Scaling;

public sealed class SaltBeforeTests
{
    // A kilogram of meat with 0.7 kg of water and 12 g of salt in 2.1 kg of water: three times as much.
    private static readonly SaltBefore Meat = new(12, 12 * 0.39337, 3);

    // Conservation of salt: what both hold together is spread evenly over all the water.
    [Theory]
    [InlineData(60)]
    [InlineData(4)]
    [InlineData(0)]
    public void At_its_end_the_meat_holds_its_share_of_all_the_salt(double putOn)
    {
        const double ofAllWater = 0.7 / (0.7 + 2.1);

        Assert.Equal((putOn + 12) * ofAllWater, Meat.SaltWith(Band.Exact(putOn), Band.Exact(ofAllWater)).Typical, 1e-12);
    }

    [Fact]
    public void Before_it_has_begun_the_meat_holds_what_it_held()
    {
        Assert.Equal(Band.Exact(12), Meat.SaltWith(Band.Exact(60), Band.Exact(0)));
        Assert.Equal(Band.Exact(12 * 0.39337), Meat.SodiumWith(Band.Exact(60), Band.Exact(0)));
    }

    // Of a strong liquid the meat gains the more the further it gets, of a weak one it loses: both ends are of one and the same part.
    [Theory]
    [InlineData(60, 12, 15, 18)]
    [InlineData(4, 4, 8, 12)]
    public void The_ends_of_a_band_lie_where_the_soak_has_got(double putOn, double low, double typical, double high)
    {
        var band = Meat.SaltWith(Band.Exact(putOn), new Band(0, 0.125, 0.25));

        Assert.Equal((low, typical, high), (band.Low, band.Typical, band.High));
    }

    [Fact]
    public void Sodium_goes_by_the_sodium_of_that_salt()
    {
        var salt = Meat.SaltWith(Band.Exact(60), Band.Exact(0.2));
        var sodium = Meat.SodiumWith(Band.Exact(60 * 0.39337), Band.Exact(0.2));

        Assert.Equal(salt.Typical * 0.39337, sodium.Typical, 1e-12);
    }

    // A part beyond evenness cannot draw out more than was there.
    [Fact]
    public void No_more_is_drawn_out_than_was_there() => Assert.Equal(30, Meat.SaltWith(Band.Exact(60), Band.Exact(0.5)).Typical);
}
