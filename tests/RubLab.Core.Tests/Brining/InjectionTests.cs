using CsCheck;
using RubLab.Core.Brining;
using RubLab.Core.Quantities;

namespace RubLab.Core.Tests.Brining;

public sealed class InjectionTests
{
    [Fact]
    public void Strip_loins_pumped_to_110_percent_hold_what_was_published()
    {
        // D07, Lowder 2013: 3.6 % salt and 4.5 % phosphate at 10 % pump are 0.327 and 0.409 % of the injected weight.
        var pumped = new Injection(10, Band.Exact(100));

        Assert.Equal(3.27, pumped.GramsPerKilogramInjected(Band.Exact(0.036)).Typical, 0.005);
        Assert.Equal(4.09, pumped.GramsPerKilogramInjected(Band.Exact(0.045)).Typical, 0.005);
    }

    [Fact]
    public void A_loin_pumped_by_13_percent_holds_what_was_published()
    {
        // Brine of 2.17 % salt: 0.282 % of the loin, 0.250 % of its pumped weight.
        var pumped = new Injection(13, Band.Exact(100));

        Assert.Equal(2.82, pumped.GramsPerKilogramGreen(Band.Exact(0.0217)).Typical, 0.005);
        Assert.Equal(2.50, pumped.GramsPerKilogramInjected(Band.Exact(0.0217)).Typical, 0.005);
    }

    [Fact]
    public void Phosphate_at_five_percent_and_ten_percent_pump_is_half_a_percent_of_green()
    {
        // 9 CFR 424.21(c): 0.5 % of the green weight is 0.4545 % of the injected one.
        var pumped = new Injection(10, Band.Exact(100));

        Assert.Equal(5000, pumped.IngoingPartsPerMillion(0.05), 1e-9);
        Assert.Equal(4.545, pumped.GramsPerKilogramInjected(Band.Exact(0.05)).Typical, 0.0005);
    }

    [Fact]
    public void What_drains_does_not_change_what_was_put_in() => Law.Holds(
        Gen.Select(Gen.Double[0.1, 100], Gens.BandOf(0, 100), Gen.Double[0, 0.26]), 300, c =>
        {
            var (pump, retained, share) = c;
            var injection = new Injection(pump, retained);
            Assert.Equal(new Injection(pump, Band.Exact(100)).IngoingPartsPerMillion(share), injection.IngoingPartsPerMillion(share));
            Assert.Equal(1000 * share * pump / 100 * retained.Typical / 100, injection.GramsPerKilogramGreen(Band.Exact(share)).Typical, 1e-9);
        });

    [Fact]
    public void The_share_for_a_level_reaches_it() => Law.Holds(
        Gen.Select(Gen.Double[1, 50], Gens.BandOf(1, 100), Gen.Double[0.1, 30]), 300, c =>
        {
            var (pump, retained, level) = c;
            var injection = new Injection(pump, retained);
            Assert.Equal(level, injection.GramsPerKilogramGreen(Band.Exact(injection.ShareFor(level))).Typical, 1e-9);
        });

    [Fact]
    public void A_pump_is_above_nothing_and_no_more_stays_than_went_in()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Injection(0, Band.Exact(100)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Injection(10, Band.Exact(101)));
    }
}
