using RubLab.Contracts.Pairing;

namespace RubLab.Contracts.Tests.Pairing;

public class PairingsTests
{
    [Fact]
    public void A_device_may_read_and_write_unless_it_is_said_otherwise() =>
        Assert.Equal(["read", "write"], Pairings.Check(new PairingCodeRequest()).Value!.Scopes);

    [Fact]
    public void Scopes_come_in_one_order_and_once() =>
        Assert.Equal(["read", "pair"], Pairings.Check(new PairingCodeRequest { Scopes = ["pair", "read", "pair"] }).Value!.Scopes);

    [Fact]
    public void Every_fault_is_told_at_once()
    {
        var log = Pairings.Check(new PairingCodeRequest { Scopes = ["read", "cook", null], Name = "\u0007" }).Log;

        Assert.Equal(
            [("/scopes/1", "unknown-word"), ("/scopes/2", "required"), ("/name", "bad-text")], log.Faults.Select(f => (f.Pointer, f.Code)));
    }

    [Fact]
    public void A_code_that_is_none_is_not_repeated()
    {
        var fault = Assert.Single(Pairings.Check(new SessionRequest { Code = "7KXM-4RT" }).Log.Faults);

        Assert.Equal(("/code", "bad-code"), (fault.Pointer, fault.Code));
        Assert.DoesNotContain("7KXM", fault.Detail, StringComparison.Ordinal);
        Assert.Equal(["alphabet"], fault.Parameters.Keys);
    }

    [Fact]
    public void Names_have_the_bounds_of_all_names()
    {
        Assert.True(Pairings.Check(new SessionRequest { Code = "7KXM4RTP", Name = new string('x', 200) }).IsGood);
        Assert.Equal("too-long", Pairings.Check(new SessionRequest { Code = "7KXM4RTP", Name = new string('x', 201) }).Log.Faults.Single().Code);
    }
}
