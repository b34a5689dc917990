using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Tests.Reading;

/// <summary>How long a list may be, asked through what is read.</summary>
public sealed class ListedTests
{
    [Theory]
    [InlineData(0, "required", "Give at least one weighing.")]
    [InlineData(51, "too-many", "At most 50 weighings; this has 51.")]
    public void A_list_that_is_empty_or_too_long_says_how_long_it_may_be(int count, string code, string detail)
    {
        var fault = Assert.Single(OwnDensities.Check(new OwnDensityRequest { Weighings = new WeighingRequest?[count] }, Seed.Catalogue).Log.Faults);

        Assert.Equal((code, detail, "/weighings"), (fault.Code, fault.Detail, fault.Pointer));
    }

    [Fact]
    public void A_list_of_the_most_is_not_too_long()
    {
        var cup = new WeighingRequest { Volume = new QuantityRequest { Value = 250, Unit = "mL" }, Weight = new QuantityRequest { Value = 300, Unit = "g" } };

        Assert.True(OwnDensities.Check(new OwnDensityRequest { Weighings = Enumerable.Repeat(cup, 50).ToList() }, Seed.Catalogue).IsGood);
    }
}
