using RubLab.Core.Diffusion;
using RubLab.Core.Quantities;
using RubLab.Core.Tests.Diffusion;
using RubLab.Core.Timing;

namespace RubLab.Core.Tests.Timing;

/// <summary>Figures of an answer and of its findings, held against the closed forms of a plane source and its image (Crank 2.6, 2.17).</summary>
public sealed class SaltingFiguresTests
{
    private static readonly SaltingRequest TwoDays = DryBrined.Slab(48, new Band(2e-10, 3e-10, 4e-10));

    // With l = 25 mm, D t = 34.56 and 69.12 mm2: the middle has 2 l / sqrt(pi D t) exp(-l^2 / 4 D t) of the mean, 5.2 and 35.4 %; half of
    // the mean is at 14.7 and, the far face helping, at 19.2 mm; 95 % of it comes with ln(2 / 0.05) / pi^2 of l^2 / D.
    [Fact]
    public void A_shallow_salting_is_told_with_both_ends_of_all_its_figures()
    {
        var finding = Assert.Single(TwoDays.Findings(), f => f.Code == "salting-shallow");

        Assert.Equal((14.7, 19.2), (finding.Parameters["low"], finding.Parameters["high"]));
        Assert.Equal((5.2, 35.4), (finding.Parameters["centreLow"], finding.Parameters["centreHigh"]));
        Assert.Equal((162.0, 324.0), (finding.Parameters["evenLow"], finding.Parameters["evenHigh"]));
        Assert.Equal((48.0, 25.0, 50.0), (finding.Parameters["hours"], finding.Parameters["reach"], finding.Parameters["share"]));
    }

    // Twenty times as thick takes four hundred times as long: 64 888 and 129 777 h, known to three digits at most.
    [Fact]
    public void Hours_until_even_are_said_as_the_estimate_they_are()
    {
        var finding = Assert.Single((TwoDays with { Body = SaltedBody.Slab(Band.Exact(1000), 2) }).Findings(), f => f.Code == "salting-shallow");

        Assert.EndsWith("Evenness takes 64,900 to 130,000 h.", finding.Message, StringComparison.Ordinal);
        Assert.Equal(129_777, (double)finding.Parameters["evenHigh"], 1.0);
    }

    // Water is 1.519 / 0.314 times as thin at 90 C as at 5 C, and 363.15 / 278.15 times as warm: six hours there are 37.9, of 49.9 in all.
    [Fact]
    public void The_share_of_the_warm_hours_is_told_in_percent()
    {
        var finding = Assert.Single(
            (TwoDays with { Stages = [new(5, 12), new(90, 6)] }).Findings(), f => f.Code == "cooker-hours-count");

        Assert.Equal(76.0, finding.Parameters["share"]);
        Assert.Equal(Seed.Catalogue.Salting.Limits.WarmTemperatureCelsius, finding.Parameters["temperature"]);
    }

    // What is warm at just the temperature that is called warm counts.
    [Fact]
    public void A_stage_at_the_temperature_called_warm_is_a_warm_one()
    {
        var limit = Seed.Catalogue.Salting.Limits.WarmTemperatureCelsius;
        double Share(double celsius) => (TwoDays with { Stages = [new(4, 1), new(celsius, 100)] }).Answer().WarmShare;

        Assert.InRange(Share(limit), 0.99, 1);
        Assert.Equal(0, Share(limit - 0.001));
        var finding = Assert.Single((TwoDays with { Stages = [new(4, 1), new(limit, 100)] }).Findings(), f => f.Code == "cooker-hours-count");
        Assert.Equal((100.0, 1.0), (finding.Parameters["warmHours"], finding.Parameters["coldHours"]));
        // Two warm stages are as warm as one as long.
        Assert.Equal(
            Share(limit), (TwoDays with { Stages = [new(4, 1), new(limit, 40), new(limit, 60)] }).Answer().WarmShare, 1e-12);
    }

    [Fact]
    public void A_diffusivity_that_stands_in_names_what_was_measured_and_where_it_holds()
    {
        Assert.True(Seed.Catalogue.Salting.TryFindDiffusivity("chicken", out var chicken));
        var findings = (TwoDays with { Stages = [new(20, 12)], Diffusivity = AssumedDiffusivity.Of(chicken) }).Findings();

        var standIn = Assert.Single(findings, f => f.Code == "diffusivity-stand-in");
        Assert.Equal(("chicken", chicken.MeasuredOn), (standIn.Parameters["species"], standIn.Parameters["measuredOn"]));
        Assert.Equal(chicken.TemperatureCelsius, Assert.Single(findings, f => f.Code == "diffusivity-scaled").Parameters["temperature"]);
    }

    // Hours inside a stage count at its own temperature, and those after the last at the last one's.
    [Fact]
    public void A_course_through_several_stages_is_that_of_their_travel()
    {
        var request = TwoDays with { Diffusivity = AssumedDiffusivity.Given(Band.Exact(3e-10), 5), Stages = [new(5, 10), new(60, 4), new(20, 10)] };
        double warm = Seed.Catalogue.Salting.Speeding(60, 5), mild = Seed.Catalogue.Salting.Speeding(20, 5);
        double[] hours = [6, 12, 20, 40];
        double[] equivalent = [6, 10 + (2 * warm), 10 + (4 * warm) + (6 * mild), 10 + (4 * warm) + (26 * mild)];

        var course = request.Answer().Course(hours);

        for (var i = 0; i < hours.Length; i++)
        {
            var cold = (request with { Stages = [new(5, equivalent[i])] }).Answer();
            Assert.Equal(hours[i], course[i].Hours);
            Assert.Equal(cold.CentreToMean.Typical, course[i].CentreToMean.Typical, 1e-12);
        }
    }

    [Fact]
    public void A_course_begins_where_its_figures_begin_to_mean_something()
    {
        var earliest = Seed.Catalogue.Salting.Limits.LowestHours * 1e-4;

        Assert.Single(TwoDays.Answer().Course([earliest]));
        Assert.Throws<ArgumentOutOfRangeException>(() => TwoDays.Answer().Course([1, earliest * 0.999]));
    }

    // A brick whose dimensions all grow together is similar to itself: the largest takes as much longer as the square of its size.
    [Fact]
    public void A_brick_s_hours_end_where_its_smallest_and_its_largest_do()
    {
        SaltedBody Of(Band thickness) => SaltedBody.Brick(new(thickness, 2), new(thickness.Times(2), 2), new(thickness.Times(3), 1));
        SaltingTimes Answer(Band thickness) => (TwoDays with { Body = Of(thickness), Diffusivity = AssumedDiffusivity.Given(Band.Exact(3e-10)) }).Answer();

        var wide = Answer(new Band(30, 40, 60)).HoursToEven95;

        Assert.Equal(Answer(Band.Exact(30)).HoursToEven95.Typical, wide.Low, 1e-6);
        Assert.Equal(Answer(Band.Exact(60)).HoursToEven95.Typical, wide.High, 1e-6);
        Assert.Equal(4, wide.High / wide.Low, 1e-6);
        Assert.Equal(20, Of(Band.Exact(40)).Nearest.ReachMillimetres.Typical);
    }

    // Between two rows of the table viscosity has one energy of activation: its logarithm is straight in 1 / T.
    [Theory]
    [InlineData(31)]
    [InlineData(34)]
    [InlineData(39.5)]
    [InlineData(40)]
    public void Between_two_temperatures_viscosity_keeps_its_activation(double celsius)
    {
        double Activation(double warm) =>
            Math.Log(Seed.Catalogue.Salting.Speeding(warm, 30) * 303.15 / (warm + 273.15)) / ((1 / 303.15) - (1 / (warm + 273.15)));

        Assert.Equal(Activation(35), Activation(celsius), Activation(35) * 1e-9);
    }
}
