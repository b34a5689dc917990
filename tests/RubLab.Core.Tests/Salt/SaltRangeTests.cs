using RubLab.Core.Salt;

namespace RubLab.Core.Tests.Salt;

public sealed class SaltRangeTests
{
    [Theory]
    [InlineData("green", "green meat")]
    [InlineData("bone-in", "green meat with its bone")]
    [InlineData("injected", "meat as injected")]
    [InlineData("wet-formulation", "the whole mixture before drying")]
    [InlineData("finished", "cooked meat")]
    [InlineData("meat-and-water", "meat and water")]
    public void A_base_is_told_in_words(string saltBase, string words) => Assert.Equal(words, (Of(1, 2) with { Base = saltBase }).BaseInWords);

    [Theory]
    [InlineData(1.5, 1.5, true)]
    [InlineData(1.5, 2.0, false)]
    [InlineData(1.5, null, false)]
    [InlineData(null, 1.5, false)]
    [InlineData(null, null, false)]
    public void Only_two_equal_ends_are_one_level(double? low, double? high, bool isOne) => Assert.Equal(isOne, Of(low, high).IsOneLevel);

    private static SaltRange Of(double? low, double? high) => Seed.Catalogue.SaltRanges[0] with { LowPercent = low, HighPercent = high };
}
