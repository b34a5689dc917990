using System.Net;
using RubLab.Api.Callers;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Pairing;

public sealed class PairingTriesTests
{
    private static readonly IPAddress Stove = IPAddress.Parse("192.0.2.7");

    private readonly FixedClock _clock = new(new DateTimeOffset(2026, 3, 14, 8, 30, 0, TimeSpan.Zero));
    private readonly PairingTries _tries;

    public PairingTriesTests()
    {
        _tries = new PairingTries(_clock);
    }

    [Fact]
    public void Five_tries_in_a_window_and_the_sixth_waits_for_its_end()
    {
        Take(Stove, 2);
        _clock.Now += TimeSpan.FromMinutes(3);
        Take(Stove, 3);

        Assert.Equal(TimeSpan.FromMinutes(2), _tries.Take(Stove));
        _clock.Now += TimeSpan.FromMinutes(2);
        Take(Stove, 5);
        Assert.Equal(TimeSpan.FromMinutes(5), _tries.Take(Stove));
    }

    [Fact]
    public void A_right_try_is_given_back()
    {
        Take(Stove, 5);
        _tries.GiveBack(Stove);

        Take(Stove, 1);
        Assert.NotNull(_tries.Take(Stove));
    }

    [Fact]
    public void A_try_given_back_after_its_window_gives_nothing_away()
    {
        Take(Stove, 1);
        _clock.Now += PairingTries.Window;
        Take(IPAddress.Loopback, 1);
        _tries.GiveBack(Stove);

        Take(Stove, 5);
        Assert.NotNull(_tries.Take(Stove));
    }

    [Fact]
    public void All_addresses_together_have_a_hundred()
    {
        for (var i = 0; i < 100; i++)
        {
            Take(new IPAddress([192, 0, 2, (byte)i]), 1);
        }

        Assert.Equal(TimeSpan.FromMinutes(5), _tries.Take(IPAddress.Parse("198.51.100.1")));
    }

    [Theory]
    [InlineData("192.0.2.7", "192.0.2.8", false)]
    [InlineData("192.0.2.7", "::ffff:192.0.2.7", true)]
    [InlineData("2001:db8::1", "2001:db8::ffff:1", true)]
    [InlineData("2001:db8::1", "2001:db8:0:1::1", false)]
    public void An_IPv6_network_counts_as_one_address(string one, string other, bool isSame)
    {
        Take(IPAddress.Parse(one), 5);

        Assert.Equal(isSame, _tries.Take(IPAddress.Parse(other)) is not null);
    }

    [Fact]
    public void Without_an_address_tries_are_counted_too()
    {
        Take(null, 5);

        Assert.NotNull(_tries.Take(null));
    }

    [Fact]
    public void A_clock_set_back_does_not_lock_anybody_out_for_long()
    {
        Take(Stove, 5);
        _clock.Now -= TimeSpan.FromDays(1);

        Assert.Null(_tries.Take(Stove));
    }

    private void Take(IPAddress? from, int times)
    {
        for (var i = 0; i < times; i++)
        {
            Assert.Null(_tries.Take(from));
        }
    }
}
