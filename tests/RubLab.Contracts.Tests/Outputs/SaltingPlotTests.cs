using System.Globalization;
using System.Xml.Linq;
using RubLab.Contracts.Outputs;
using RubLab.Contracts.Tests.Timing;

namespace RubLab.Contracts.Tests.Outputs;

/// <summary>The pictures are read back with a parser that forgives nothing, and measured against the ticks of their own axes.</summary>
public class SaltingPlotTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string, SaltingPlot> Plots => new()
    {
        { Salting.Slab, SaltingPlot.Profile }, { Salting.Slab, SaltingPlot.Uptake }, { Salting.Pork, SaltingPlot.Profile },
        { Salting.Pork, SaltingPlot.Uptake }, { Salting.Shoulder, SaltingPlot.Profile }, { Salting.Shoulder, SaltingPlot.Uptake },
    };

    [Theory]
    [MemberData(nameof(Plots))]
    public void A_plot_is_well_formed_named_and_the_same_each_time(string body, SaltingPlot plot)
    {
        var text = SaltingPlots.Of(Salting.Solved(body), plot);
        var svg = XDocument.Parse(text).Root!;

        Assert.Equal(text, SaltingPlots.Of(Salting.Solved(body), plot));
        Assert.Equal("img", (string?)svg.Attribute("role"));
        var ids = ((string)svg.Attribute("aria-labelledby")!).Split(' ');
        Assert.Equal(ids, svg.Elements().Take(2).Select(e => (string)e.Attribute("id")!));
        Assert.All(svg.Elements().Take(2), e => Assert.NotEmpty(e.Value));
        Assert.Contains(Salting.Answer(body).Advice, svg.Element(Svg + "desc")!.Value, StringComparison.Ordinal);
        Assert.DoesNotContain(svg.Descendants(), e => e.Name.LocalName is "script" or "foreignObject" or "image");
        Assert.All(svg.Descendants().Attributes().Where(a => a.Name.LocalName is "fill" or "stroke"), a =>
            Assert.True(a.Value is "none" or "currentColor" || a.Value.StartsWith("url(#salt-", StringComparison.Ordinal), a.Value));
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_profile_runs_through_the_numbers_of_the_answer()
    {
        var solved = Salting.Solved(Salting.Pork);
        var svg = XDocument.Parse(SaltingPlots.Of(solved, SaltingPlot.Profile)).Root!;
        var (x, y) = (Axis(svg, "x"), Axis(svg, "y"));
        var expected = solved.Response.Profile.Reverse().ToList();

        var line = Points(svg, "typical");
        Assert.Equal(21, line.Count);
        Assert.All(line.Zip(expected), pair =>
        {
            Assert.Equal((1 - pair.Second.Position) * 25, x(pair.First.X), 0.01);
            Assert.Equal(pair.Second.Relative.Typical, y(pair.First.Y), 0.01);
        });
        var band = Points(svg, "band");
        Assert.All(band.Take(21).Zip(expected), pair => Assert.Equal(pair.Second.Relative.Low, y(pair.First.Y), 0.01));
        Assert.All(band.Skip(21).Reverse().Zip(expected), pair => Assert.Equal(pair.Second.Relative.High, y(pair.First.Y), 0.01));
        Assert.All(Points(svg, "mean"), point => Assert.Equal(1, y(point.Y), 0.01));
        Assert.NotNull(One(svg, "mean").Attribute("stroke-dasharray"));
        var depth = solved.Response.Depth;
        Assert.Contains(Texts(svg), t => t == $"Half of the even strength or more: the outer {depth.Low} to {depth.High} mm");
        Assert.Contains("treated face", Texts(svg));
        Assert.Contains("middle", Texts(svg));
    }

    [Fact]
    public void A_closed_face_is_named_and_an_exact_answer_has_no_band()
    {
        var svg = XDocument.Parse(SaltingPlots.Of(Salting.Solved(Salting.Slab, "/facesTreated = 1"), SaltingPlot.Profile)).Root!;

        Assert.Contains("closed face", Texts(svg));
        Assert.DoesNotContain("middle", Texts(svg));
        Assert.DoesNotContain(svg.Elements(), e => (string?)e.Attribute("class") == "band");
    }

    [Fact]
    public void The_uptake_goes_through_half_and_95_percent_at_the_times_of_the_answer()
    {
        var solved = Salting.Solved(Salting.Slab, "/method = \"salt-bed\" & /stages/0/time/value = 30");
        var svg = XDocument.Parse(SaltingPlots.Of(solved, SaltingPlot.Uptake)).Root!;
        var (x, y) = (Axis(svg, "x"), Axis(svg, "y"));
        double Height(string line, double hours)
        {
            var points = Points(svg, line);
            var next = points.FindIndex(p => x(p.X) >= hours);
            var (a, b) = (points[next - 1], points[next]);
            return y(a.Y + ((b.Y - a.Y) * (hours - x(a.X)) / (x(b.X) - x(a.X))));
        }

        Assert.Equal(50, Height("typical", solved.Response.TimeTo.Half!.Value.Typical), 0.3);
        Assert.Equal(95, Height("middle", solved.Response.TimeTo.Even95.Typical), 0.3);
        Assert.Equal(solved.Response.Uptake.Typical, Height("typical", 30), 0.3);
        var dot = svg.Elements(Svg + "circle").First();
        Assert.Equal(solved.Response.TimeTo.Half.Value.Typical, x(Number(dot, "cx")), 0.5);
        Assert.Equal(50, y(Number(dot, "cy")), 0.2);
        Assert.Contains("1: 5 C for 30 h, then taken to go on", Texts(svg));
    }

    [Theory]
    [MemberData(nameof(Plots))]
    public void A_plot_to_embed_is_the_one_that_stands_alone_without_its_style(string body, SaltingPlot plot)
    {
        var alone = XDocument.Parse(SaltingPlots.Of(Salting.Solved(body), plot)).Root!;
        var embedded = XDocument.Parse(SaltingPlots.ToEmbed(Salting.Solved(body), plot, isNarrow: false)).Root!;

        alone.Elements(Svg + "style").Single().Remove();
        Assert.DoesNotContain(embedded.DescendantsAndSelf(), e => e.Name.LocalName == "style" || e.Attribute("style") is not null);
        Assert.True(XNode.DeepEquals(Tidy(alone), Tidy(embedded)));

        static XElement Tidy(XElement svg) => XElement.Parse(svg.ToString(SaveOptions.DisableFormatting));
    }

    [Theory]
    [MemberData(nameof(Plots))]
    public void A_narrow_plot_runs_through_the_same_numbers_and_keeps_its_words_inside(string body, SaltingPlot plot)
    {
        var solved = Salting.Solved(body);
        var (wide, narrow) = (XDocument.Parse(SaltingPlots.Of(solved, plot)).Root!, XDocument.Parse(SaltingPlots.ToEmbed(solved, plot, isNarrow: true)).Root!);
        string[] lines = plot == SaltingPlot.Profile ? ["typical", "mean"] : ["typical", "middle"];

        Assert.Equal(wide.Elements().Take(2).Select(e => e.Value), narrow.Elements().Take(2).Select(e => e.Value));
        var (width, height) = (Number(narrow, "width"), Number(narrow, "height"));
        Assert.InRange(width, 300, 340);
        foreach (var line in lines)
        {
            Assert.All(Values(wide, line).Zip(Values(narrow, line)), pair =>
            {
                Assert.Equal(pair.First.X, pair.Second.X, Axis(wide, "x")(616) / 200);
                Assert.Equal(pair.First.Y, pair.Second.Y, Axis(wide, "y")(84) / 200);
            });
        }

        // A sans serif takes about half of its size for a letter.
        Assert.All(narrow.Elements(Svg + "text").Where(t => t.Attribute("transform") is null), t =>
        {
            var size = t.Attribute("font-size") is { } own ? Parse(own.Value) : 13;
            var length = t.Value.Length * size * 0.52;
            var start = Number(t, "x") - ((string?)t.Attribute("text-anchor") switch { "middle" => length / 2, "end" => length, _ => 0 });
            Assert.True(start >= 0 && start + length <= width, $"{t.Value} from {start} to {start + length}");
            Assert.InRange(Number(t, "y"), 0, height);
        });
    }

    [Fact]
    public void Fifty_stages_are_named_as_far_as_there_is_room()
    {
        const string stage = """{"temperature":{"value":5,"unit":"C"},"time":{"value":1,"unit":"h"}}""";
        var svg = XDocument.Parse(SaltingPlots.Of(Salting.Solved(Salting.Slab, $"/stages = [{string.Join(',', Enumerable.Repeat(stage, 50))}]"), SaltingPlot.Uptake)).Root!;

        Assert.Equal(50, svg.Elements().Count(e => (string?)e.Attribute("class") == "stage"));
        Assert.Contains(Texts(svg), t => t.Contains(" more", StringComparison.Ordinal));
        Assert.All(svg.Elements(Svg + "text"), t => Assert.InRange(Number(t, "y"), 0, 472));
    }

    [Theory]
    [InlineData("/thickness/value = 1000 & /diffusivity/value = 1e-12 & /stages/0/time/value = 0.01")]
    [InlineData("/thickness/value = 1 & /diffusivity/value = 1e-8 & /stages/0/time/value = 0.01")]
    [InlineData("/thickness/value = 1 & /diffusivity/value = 1e-8 & /stages/0/time/value = 8760")]
    [InlineData("/thickness/value = 1000 & /diffusivity/value = 1e-12 & /stages/1 = {\"temperature\":{\"value\":0,\"unit\":\"C\"},\"time\":{\"value\":1e-29,\"unit\":\"h\"}}")]
    [InlineData("/stages/0/time/value = 1e-29 & /stages/1 = {\"temperature\":{\"value\":100,\"unit\":\"C\"},\"time\":{\"value\":1,\"unit\":\"h\"}}")]
    public void The_least_and_the_most_that_is_computed_can_be_drawn(string edits)
    {
        foreach (var method in (string[])["\"dry-brine\"", "\"salt-bed\"", "\"soak\" & /liquidRatio = 0.01", "\"soak\" & /liquidRatio = 1000"])
        {
            foreach (var shape in (string[])["\"slab\"", "\"cylinder\"", "\"brick\" & /width = {\"value\":1000,\"unit\":\"mm\"} & /length = {\"value\":1,\"unit\":\"mm\"}"])
            {
                var solved = Salting.Solved(Salting.Slab, $"{edits} & /method = {method} & /shape = {shape}");
                foreach (var plot in (SaltingPlot[])[SaltingPlot.Profile, SaltingPlot.Uptake])
                {
                    var text = SaltingPlots.Of(solved, plot);
                    Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
                    Assert.InRange(XDocument.Parse(text).Descendants(Svg + "text").Count(), 12, 60);
                }
            }
        }
    }

    // From the places of two numbers on an axis to values.
    private static Func<double, double> Axis(XElement svg, string name)
    {
        var ticks = svg.Elements(Svg + "text").Where(t => (string?)t.Attribute("class") == name).Select(t => (At: Number(t, name), Value: Parse(t.Value))).ToList();
        // A word stands 4.5 below the height of its tick.
        double offset = name == "y" ? 4.5 : 0;
        var (first, last) = (ticks[0], ticks[^1]);
        return place => first.Value + ((place + offset - first.At) / (last.At - first.At) * (last.Value - first.Value));
    }

    private static List<(double X, double Y)> Values(XElement svg, string name)
    {
        var (x, y) = (Axis(svg, "x"), Axis(svg, "y"));
        return [.. Points(svg, name).Select(point => (x(point.X), y(point.Y)))];
    }

    private static List<(double X, double Y)> Points(XElement svg, string name) =>
        [.. ((string)One(svg, name).Attribute("d")!).TrimEnd('Z').Split('M', 'L').Skip(1).Select(p => p.Split(',')).Select(p => (Parse(p[0]), Parse(p[1])))];

    private static XElement One(XElement svg, string name) => svg.Elements().Single(e => (string?)e.Attribute("class") == name);

    private static IReadOnlyList<string> Texts(XElement svg) => [.. svg.Elements(Svg + "text").Select(t => t.Value)];

    private static double Number(XElement element, string name) => Parse((string)element.Attribute(name)!);

    private static double Parse(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
