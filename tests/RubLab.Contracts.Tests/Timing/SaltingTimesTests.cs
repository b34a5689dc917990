using CsCheck;
using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Tests.Timing;

public class SaltingTimesTests
{
    // Hours in which T goes up by one: 25 mm squared over 3e-10 m2/s.
    private const double HoursPerUnit = 0.025 * 0.025 / 3e-10 / 3600;

    [Fact]
    public void Fifty_millimetres_of_dry_brine_take_nine_days_and_the_middle_has_hardly_any_after_one()
    {
        var answer = Salting.Answer(Salting.Slab);

        // Crank 2.17 by its first two terms, 1 - 2 exp(-a) + 2 exp(-4a), a = 9.8696 T; 95 % where the first is 1/40.
        Assert.Equal(Math.Log(40) / (Math.PI * Math.PI) * HoursPerUnit, answer.TimeTo.Even95.Typical, 0.001);
        Assert.Equal(216.3, answer.TimeTo.Even95.Typical, 0.05);
        Assert.Equal(1.3, answer.CentreToMean.Typical, 0.05);
        Assert.Equal(100, answer.Uptake.Typical);
        Assert.Null(answer.TimeTo.Half);
        Assert.Equal(21, answer.Profile.Count);
        Assert.Equal(answer.CentreToMean.Typical / 100, answer.Profile[0].Relative.Typical, 1e-9);
        Assert.Equal((0.0, 1.0), (answer.Profile[0].Position, answer.Profile[^1].Position));
        Assert.Equal(new QuantityBand(3e-10, 3e-10, 3e-10, "m2/s"), answer.Diffusivity.Value);
        Assert.Null(answer.Diffusivity.SourceId);
    }

    [Fact]
    public void Half_of_what_a_salt_bed_gives_is_in_after_the_tabulated_time()
    {
        var answer = Salting.Answer(Salting.Slab, "/method = \"salt-bed\"");

        Assert.Equal(0.19673074 * HoursPerUnit, answer.TimeTo.Half!.Value.Typical, 1e-5);
        // Crank 4.20 early on: 2 sqrt(T / pi), T = 24 h.
        Assert.Equal(200 * Math.Sqrt(24 / HoursPerUnit / Math.PI), answer.Uptake.Typical, 1e-4);
        Assert.Null(answer.LiquidStrength);
    }

    [Fact]
    public void An_exact_diffusivity_on_a_measured_piece_gives_no_bands()
    {
        var answer = Salting.Answer(Salting.Slab, "/method = \"soak\" & /liquidRatio = 2");
        QuantityBand[] bands = [answer.Uptake, answer.Depth, answer.CentreToMean, answer.TimeTo.Half!.Value, answer.TimeTo.Even50, answer.TimeTo.Even95, answer.LiquidStrength!.Value];

        Assert.All(bands, band => Assert.True(band.Low == band.Typical && band.Typical == band.High));
        Assert.All(answer.Profile, point => Assert.True(point.Relative.Low == point.Relative.High && point.Layer is null));
        Assert.DoesNotContain(answer.Findings, f => f.Code.StartsWith("diffusivity", StringComparison.Ordinal));
        // What the meat takes the liquid loses: 1 - uptake / (1 + ratio).
        Assert.Equal(100 - (answer.Uptake.Typical / 3), answer.LiquidStrength.Value.Typical, 1e-6);
    }

    [Fact]
    public void By_species_every_figure_is_a_band_around_the_exact_answer_of_its_typical_diffusivity()
    {
        var band = Salting.Answer(Salting.Pork);
        var exact = Salting.Answer(Salting.Pork, """/diffusivity = {"value":3e-10,"unit":"m2/s"}""");

        Assert.Equal(new QuantityBand(1.62e-10, 3e-10, 1e-9, "m2/s"), band.Diffusivity.Value);
        Assert.Equal("salt-diffusivity-spans", band.Diffusivity.SourceId);
        foreach (var (wide, one) in ((QuantityBand, QuantityBand)[])[(band.Depth, exact.Depth), (band.CentreToMean, exact.CentreToMean), (band.TimeTo.Even95, exact.TimeTo.Even95)])
        {
            Assert.True(wide.Low < one.Typical && one.Typical < wide.High, $"{wide} {one}");
            Assert.Equal(one.Typical, wide.Typical, Math.Abs(one.Typical) * 0.005);
        }

        Assert.Contains(band.Findings, f => f.Code == "diffusivity-from-estimate" && f.SourceId == "salt-diffusivity-spans");
    }

    [Fact]
    public void The_profile_of_a_slab_averages_to_the_mean() => Gen.Select(Gen.Double[0.5, 240], Gen.Double[10, 120], Gen.Int[0, 2]).Sample(
        (hours, thickness, method) =>
        {
            var edits = $$"""/method = "{{(method == 0 ? "dry-brine" : method == 1 ? "soak" : "salt-bed")}}" & /thickness/value = {{Text(thickness)}} & /stages/0/time/value = {{Text(hours)}}""";
            var answer = Salting.Answer(Salting.Slab, method == 1 ? edits + " & /liquidRatio = 1.5" : edits);
            var relative = answer.Profile.Select(p => p.Relative.Typical).ToArray();
            var mean = 0.0;
            for (var i = 1; i < relative.Length; i++)
            {
                mean += (relative[i] + relative[i - 1]) / 2 * 0.05;
            }

            // The trapezoid is off by at most h2/12 times the greatest curvature, here seen in the second differences; in a grid too coarse
            // for the front that bound is wide, and says so.
            var bend = Enumerable.Range(1, relative.Length - 2).Max(i => Math.Abs(relative[i + 1] - (2 * relative[i]) + relative[i - 1]));
            Assert.InRange(mean, 1 - 0.002 - (bend / 6), 1 + 0.002 + (bend / 6));
        },
        seed: "0001SaltMean00", iter: 200);

    [Fact]
    public void Stages_add_up_as_diffusivity_times_time()
    {
        var whole = Salting.Answer(Salting.Slab);
        var split = Salting.Answer(Salting.Slab,
            """/stages = [{"temperature":{"value":5,"unit":"C"},"time":{"value":9,"unit":"h"}},{"temperature":{"value":70,"unit":"C"},"time":{"value":900,"unit":"min"}}]""");
        // Held for 5 C it is 6.3162 times as fast at 90 C (T over viscosity, worked on the science page): 6 h there are 37.9 h in the cold.
        var scaled = Salting.Answer(Salting.Slab,
            """/diffusivityAt = {"value":5,"unit":"C"} & /stages = [{"temperature":{"value":5,"unit":"C"},"time":{"value":12,"unit":"h"}},{"temperature":{"value":90,"unit":"C"},"time":{"value":6,"unit":"h"}}]""");

        Assert.Equal(whole.CentreToMean, split.CentreToMean);
        Assert.Equal(whole.TimeTo, split.TimeTo);
        Assert.Equal(21.2, scaled.CentreToMean.Typical, 0.1);
        Assert.Equal(17.2, scaled.Depth.Typical, 0.05);
        Assert.Contains(scaled.Findings, f => f.Code == "diffusivity-scaled");
        Assert.DoesNotContain(split.Findings, f => f.Code == "diffusivity-scaled");
    }

    [Fact]
    public void One_face_is_half_of_twice_the_thickness()
    {
        var both = Salting.Answer(Salting.Slab);

        foreach (var edits in (string[])["/facesTreated = 1", "- /facesTreated & /blockedFaces = [\"thickness\"]", "/facesTreated = 1 & /blockedFaces = [\"thickness\"]"])
        {
            var one = Salting.Answer(Salting.Slab, edits + " & /thickness/value = 25");
            Assert.Equal(1, one.FacesTreated);
            Assert.Equal(both.CentreToMean, one.CentreToMean);
            Assert.Equal(both.TimeTo, one.TimeTo);
        }
    }

    [Fact]
    public void A_brick_treated_across_its_thickness_alone_is_a_slab()
    {
        const string brick = """/shape = "brick" & /width = {"value":90,"unit":"mm"} & /length = {"value":12,"unit":"cm"}""";
        var slab = Salting.Answer(Salting.Slab);
        var closed = Salting.Answer(Salting.Slab, brick + """ & /blockedFaces = ["width","length","width","length"]""");
        var open = Salting.Answer(Salting.Slab, brick);

        Assert.Equal(slab.CentreToMean.Typical, closed.CentreToMean.Typical, 1e-8);
        Assert.Equal(slab.TimeTo.Even95.Typical, closed.TimeTo.Even95.Typical, 1e-6);
        Assert.NotEqual(slab.TimeTo.Even95.Typical, open.TimeTo.Even95.Typical, 1.0);
        Assert.Equal(120, open.Length!.Value.Typical);
        Assert.All(open.Profile, point => Assert.NotNull(point.Layer));
    }

    [Fact]
    public void A_cut_and_its_weight_stand_for_species_shape_and_thickness()
    {
        var answer = Salting.Answer(Salting.Shoulder);

        Assert.Equal(("pork", "brick", "pork-shoulder"), (answer.Species, answer.Shape, answer.Cut));
        Assert.True(answer.Thickness.Low < answer.Thickness.Typical && answer.Thickness.Typical < answer.Thickness.High);
        // 3.4 kg at 1050 kg/m3, 2.083 x 1.5 thicknesses long and wide.
        Assert.Equal(10 * Math.Cbrt(3400 / 1.05 / (2.083 * 1.5)), answer.Thickness.Typical, 3.0);
        var finding = Assert.Single(answer.Findings, f => f.Code == "thickness-from-weight");
        Assert.Equal((answer.Thickness.Low, answer.Thickness.High), ((double)finding.Parameters["low"], (double)finding.Parameters["high"]));
        Assert.DoesNotContain(answer.Cautions, c => c.Id == "brine-cold-and-short");
        var measured = Salting.Answer(Salting.Shoulder, """/thickness = {"value":100,"unit":"mm"}""");
        Assert.Equal(new QuantityBand(100, 100, 100, "mm"), measured.Thickness);
        Assert.DoesNotContain(measured.Findings, f => f.Code == "thickness-from-weight");
    }

    [Theory]
    [InlineData("chicken", "temperature-poultry")]
    [InlineData("fish", "temperature-fish")]
    [InlineData("beef", "temperature-red-meat")]
    public void The_caution_is_that_of_the_animal(string species, string caution) => Assert.Equal(
        [caution], Salting.Answer(Salting.Pork, $"/species = \"{species}\"").Cautions.Select(c => c.Id).Where(id => id.StartsWith("temperature", StringComparison.Ordinal)));

    [Fact]
    public void A_night_is_never_called_enough_for_the_middle()
    {
        var answer = Salting.Answer(Salting.Pork);

        Assert.StartsWith($"12 h salts the outer {answer.Depth.Low} to {answer.Depth.High} mm", answer.Advice, StringComparison.Ordinal);
        Assert.Contains("do not count on it", answer.Advice, StringComparison.Ordinal);
        Assert.Contains($"takes {answer.TimeTo.Even95.Low} to {answer.TimeTo.Even95.High} h", answer.Advice, StringComparison.Ordinal);
        Assert.Contains("a diffusivity of 162 to 1000 um2/s at 5 C, measured on pork", answer.Advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(154, false)]
    [InlineData(500, true)]
    public void Only_when_the_slow_end_is_even_is_it_called_enough(int hours, bool isEnough) => Assert.Equal(
        isEnough, Salting.Answer(Salting.Pork, $"/stages/0/time/value = {hours}").Advice.Contains("enough for an even piece", StringComparison.Ordinal));

    private static string Text(double value) => value.ToString("R", System.Globalization.CultureInfo.InvariantCulture);
}
