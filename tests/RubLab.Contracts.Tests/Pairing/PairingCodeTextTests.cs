using RubLab.Contracts.Pairing;

namespace RubLab.Contracts.Tests.Pairing;

public class PairingCodeTextTests
{
    [Theory]
    [InlineData("0ODQ")]
    [InlineData("1IL")]
    [InlineData("2Z")]
    [InlineData("5S")]
    [InlineData("8B")]
    [InlineData("6G")]
    [InlineData("UV")]
    public void Of_signs_that_look_alike_at_most_one_is_used(string group) =>
        Assert.True(group.Count(c => PairingCodeText.Alphabet.Contains(c)) <= 1, group);

    [Fact]
    public void Twenty_different_signs_without_a_vowel()
    {
        Assert.Equal(20, PairingCodeText.Alphabet.Distinct().Count());
        Assert.DoesNotContain(PairingCodeText.Alphabet, c => "AEIOU".Contains(c, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("7KXM-4RTP")]
    [InlineData("7kxm-4rtp")]
    [InlineData("7KXM4RTP")]
    [InlineData(" 7k xm 4r tp ")]
    [InlineData("7-K-X-M-4-R-T-P")]
    public void A_code_is_read_however_it_is_typed(string typed)
    {
        Assert.True(PairingCodeText.TryRead(typed, out var code));
        Assert.Equal("7KXM4RTP", code);
        Assert.Equal("7KXM-4RTP", PairingCodeText.Show(code));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("        ")]
    [InlineData("7KXM-4RT")]
    [InlineData("7KXM-4RTPP")]
    [InlineData("7KXM-4RT0")]
    [InlineData("7KXM_4RTP")]
    [InlineData("7KXM\t4RTP")]
    [InlineData("７KXM4RTP")]
    [InlineData("7\u212AXM4RTP")]
    [InlineData("7KXM4RTP                                                              ")]
    public void What_is_no_code_is_not_read(string? typed) => Assert.False(PairingCodeText.TryRead(typed, out _));

    [Fact]
    public void A_code_is_kept_out_of_logs()
    {
        var order = Pairings.Check(new SessionRequest { Code = "7KXM-4RTP", Name = "Stove phone" }).Value!;

        Assert.Equal("7KXM4RTP", order.Code);
        Assert.DoesNotContain("7KXM", order.ToString(), StringComparison.Ordinal);
    }
}
