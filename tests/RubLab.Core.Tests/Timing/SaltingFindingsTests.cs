using RubLab.Core.Quantities;
using RubLab.Core.Timing;

namespace RubLab.Core.Tests.Timing;

public sealed class SaltingFindingsTests
{
    private static readonly SaltingRequest Night = DryBrined.Slab(12, Band.Exact(3e-10));

    [Fact]
    public void Overnight_is_never_said_to_reach_the_middle()
    {
        foreach (var species in Seed.Catalogue.Cuts.Select(c => c.Species).Distinct())
        {
            var shallow = Assert.Single((Night with { Diffusivity = Of(species) }).Findings(), f => f.Code == "salting-shallow");

            Assert.Equal("/x", shallow.Pointer);
            Assert.Equal(12.0, shallow.Parameters["hours"]);
            Assert.Equal(25.0, shallow.Parameters["reach"]);
            Assert.True((double)shallow.Parameters["low"] < (double)shallow.Parameters["high"]);
            Assert.True((double)shallow.Parameters["low"] < 10);
            Assert.Contains("In 12 h the outer", shallow.Message, StringComparison.Ordinal);
        }
    }

    // The middle of 50 mm holds half the mean after 0.138785 of l^2 / D: 80.3 h at 3e-10.
    [Theory]
    [InlineData(80, true)]
    [InlineData(81, false)]
    public void The_middle_is_called_hardly_salted_below_half_the_mean(double hours, bool isShallow) => Assert.Equal(
        isShallow, (Night with { Stages = [new(5, hours)] }).Findings().Any(f => f.Code == "salting-shallow"));

    [Fact]
    public void A_middle_that_may_be_unsalted_is_named_though_the_typical_is_salted() => Assert.Contains(
        (Night with { Stages = [new(5, 100)], Diffusivity = AssumedDiffusivity.Given(new Band(2e-10, 3e-10, 4e-10), 5) }).Findings(),
        f => f.Code == "salting-shallow");

    [Fact]
    public void A_species_s_diffusivity_is_said_to_be_an_estimate()
    {
        var pork = Assert.Single((Night with { Diffusivity = Of("pork") }).Findings(), f => f.Code == "diffusivity-from-estimate");

        Assert.Equal((162.0, 300.0, 1000.0), (pork.Parameters["low"], pork.Parameters["typical"], pork.Parameters["high"]));
        Assert.Equal("salt-diffusivity-spans", pork.SourceId);
        Assert.DoesNotContain(Night.Findings(), f => f.Code.StartsWith("diffusivity-", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("pork", false)]
    [InlineData("beef", false)]
    [InlineData("fish", false)]
    [InlineData("chicken", true)]
    [InlineData("lamb", true)]
    public void A_meat_nobody_measured_says_what_stands_in(string species, bool standsIn) => Assert.Equal(
        standsIn, (Night with { Diffusivity = Of(species) }).Findings().Any(f => f.Code == "diffusivity-stand-in"));

    [Theory]
    [InlineData(5, false)]
    [InlineData(5.0000000001, false)]
    [InlineData(4, true)]
    [InlineData(60, true)]
    public void Another_temperature_than_the_figure_s_is_said_to_be_scaled(double celsius, bool isScaled)
    {
        var request = Night with { Stages = [new(celsius, 12), new(90, 0)] };

        Assert.Equal(isScaled, request.Findings().Any(f => f.Code == "diffusivity-scaled"));
        Assert.DoesNotContain((request with { Diffusivity = AssumedDiffusivity.Given(Band.Exact(3e-10)) }).Findings(), f => f.Code == "diffusivity-scaled");
    }

    // Six hours at 90 C count as 37.9 at 5 C.
    [Theory]
    [InlineData(12, 6, true)]
    [InlineData(37, 6, true)]
    [InlineData(39, 6, false)]
    [InlineData(12, 0, false)]
    [InlineData(0, 6, false)]
    public void Cooker_hours_are_named_where_they_do_most_of_it(double cold, double warm, bool named)
    {
        var finding = (Night with { Stages = [new(5, cold), new(90, warm)] }).Findings().SingleOrDefault(f => f.Code == "cooker-hours-count");

        Assert.Equal(named, finding is not null);
        if (named)
        {
            Assert.Equal((warm, cold), (finding!.Parameters["warmHours"], finding.Parameters["coldHours"]));
        }
    }

    private static AssumedDiffusivity Of(string species) => Seed.Catalogue.Salting.TryFindDiffusivity(species, out var found)
        ? AssumedDiffusivity.Of(found)
        : throw new ArgumentException($"No diffusivity of {species}.", nameof(species));
}
