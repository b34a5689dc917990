using RubLab.Core.Ingredients;

namespace RubLab.Core.Tests.Ingredients;

public sealed class PowderFlowTests
{
    // USP <1174>, compressibility index and Hausner ratio: the printed ends of each class, and the gaps the house decided
    // midway between the printed whole percents.
    [Theory]
    [InlineData(1.00, "excellent")]
    [InlineData(1.11, "excellent")]
    [InlineData(1.12, "good")]
    [InlineData(1.18, "good")]
    [InlineData(1.19, "fair")]
    [InlineData(1.25, "fair")]
    [InlineData(1.26, "passable")]
    [InlineData(1.34, "passable")]
    [InlineData(1.35, "poor")]
    [InlineData(1.45, "poor")]
    [InlineData(1.46, "very poor")]
    [InlineData(1.59, "very poor")]
    [InlineData(1.61, "very, very poor")]
    public void A_printed_hausner_ratio_falls_in_its_own_class(double hausner, string name) =>
        Assert.Equal(name, PowderFlow.Of(0.5, 0.5 * hausner, Seed.Catalogue.PowderFlows)!.Name);

    [Theory]
    [InlineData(10, "excellent")]
    [InlineData(11, "good")]
    [InlineData(15, "good")]
    [InlineData(16, "fair")]
    [InlineData(20, "fair")]
    [InlineData(21, "passable")]
    [InlineData(26, "poor")]
    [InlineData(31, "poor")]
    [InlineData(32, "very poor")]
    [InlineData(37, "very poor")]
    [InlineData(38, "very, very poor")]
    [InlineData(10.4, "excellent")]
    [InlineData(10.6, "good")]
    public void A_printed_index_falls_in_its_own_class(double carr, string name) =>
        Assert.Equal(name, PowderFlow.Of(1 - (carr / 100), 1, Seed.Catalogue.PowderFlows)!.Name);

    // Singh, Ghodki and Goswami 2018 (abstract): 0.483 loose, 0.556 tapped give Hausner 1.15 and Carr 13 %.
    [Fact]
    public void The_indices_of_a_published_powder_come_out()
    {
        Assert.Equal(1.15, PowderFlow.Hausner(0.483, 0.556), 0.005);
        Assert.Equal(13, PowderFlow.CarrPercent(0.483, 0.556), 0.5);
        Assert.Equal("good", PowderFlow.Of(0.483, 0.556, Seed.Catalogue.PowderFlows)!.Name);
    }

    [Fact]
    public void Tapping_makes_nothing_looser() => Assert.Null(PowderFlow.Of(0.6, 0.5, Seed.Catalogue.PowderFlows));
}
