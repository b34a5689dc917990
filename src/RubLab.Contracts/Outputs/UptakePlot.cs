using RubLab.Contracts.Quantities;
using RubLab.Contracts.Timing;
using RubLab.Core.Diffusion;
using RubLab.Core.Quantities;
using RubLab.Core.Timing;

namespace RubLab.Contracts.Outputs;

/// <summary>What is taken up, and how far the middle has come, against time.</summary>
internal static class UptakePlot
{
    private const string Name = "salt-uptake";
    private const string MiddleDashes = "8 4";
    private const int MostSteps = 40;

    // A brick takes longest for each place.
    private const int StepsOfBrick = 17;

    // Room after the last thing that is marked.
    private const double Beyond = 1.08;

    public static string Of(SaltingAnswer answer, PlotFrame frame)
    {
        var response = answer.Response;
        var isBand = response.TimeTo.Even95.Low != response.TimeTo.Even95.High;
        var isDryBrine = answer.Times.Request.Method == SaltingMethod.DryBrine;
        var end = Beyond * Math.Max(response.Time.Value, response.TimeTo.Even95.Typical);
        var course = Course(answer, end);
        var x = PlotScale.To(end, frame.Left, frame.Right, frame.MostTicks);
        var y = PlotScale.To(100, frame.Bottom, frame.Top, 5);
        var far = SaltingAdvice.IsClosed(answer.Times.Request) ? "closed face" : "middle";
        var canvas = new PlotCanvas(
            frame, Name, "Salt over time", SaltingPlots.Subject(response), Description(response, far), (int)frame.Bottom + (frame.IsNarrow ? 150 : 132));
        canvas.Axes(x, "Time from the start, h", y, "Percent");
        if (isBand)
        {
            if (!isDryBrine)
            {
                canvas.Band("band", "hatch", Points(m => m.UptakeFraction.Low), Points(m => m.UptakeFraction.High));
            }

            canvas.Band("middle-band", "dots", Points(m => m.CentreToMean.Low), Points(m => m.CentreToMean.High));
        }

        canvas.Line("typical", PlotPath.Line(Points(m => m.UptakeFraction.Typical)), 2.2);
        canvas.Line("middle", PlotPath.Line(Points(m => m.CentreToMean.Typical)), 2.2, MiddleDashes);
        (string, string)[] lines = [("", "taken up, of the whole"), (MiddleDashes, $"{far}, of the mean")];
        canvas.Legend((isBand, isDryBrine) switch
        {
            (false, _) => lines,
            (_, true) => [.. lines, ("dots", "lowest to highest")],
            _ => [.. lines, ("hatch", ""), ("dots", "lowest to highest")],
        });
        var under = PlotStages.Draw(canvas, x, answer.Times.Request.Stages);
        if (response.TimeTo.Half is { } half)
        {
            Mark(canvas, x.At, y.At(50), half, x.Highest, "half");
            Key(canvas, frame.WordsFrom, under, $"half taken up: {SaltingAdvice.Range(half)}", "half");
        }

        Mark(canvas, x.At, y.At(95), response.TimeTo.Even95, x.Highest, "even");
        // The second key beside the first, or under it.
        var isSecond = response.TimeTo.Half is not null;
        Key(
            canvas, isSecond && !frame.IsNarrow ? (frame.Left + frame.Right) / 2 : frame.WordsFrom, isSecond && frame.IsNarrow ? under + 18 : under,
            $"{far} at 95 % of the mean: {SaltingAdvice.Range(response.TimeTo.Even95)}", "even");
        return canvas.Finished();

        List<(double X, double Y)> Points(Func<SaltingMoment, double> of) => [.. course.Select(m => (x.At(m.Hours), y.At(of(m) * 100)))];
    }

    // Salt goes with the root of time: the places are closer together early on.
    private static List<SaltingMoment> Course(SaltingAnswer answer, double end)
    {
        var start = answer.Times.Request.Method == SaltingMethod.DryBrine ? Band.Exact(1) : Band.Exact(0);
        var steps = answer.Times.Request.Body.Shape == SaltedShape.Brick ? StepsOfBrick : MostSteps;
        var hours = Enumerable.Range(1, steps).Select(i => end * i * i / (steps * steps)).Concat(Ends(answer, end)).Distinct().Order().ToList();
        return [new SaltingMoment(0, start, Band.Exact(0)), .. answer.Times.Course(hours)];
    }

    // The curve has a corner where the temperature changes.
    private static IEnumerable<double> Ends(SaltingAnswer answer, double end)
    {
        var hours = 0.0;
        foreach (var stage in answer.Times.Request.Stages)
        {
            hours += stage.Hours;
            // Before the first of the places a corner cannot be seen.
            if (hours > end / (MostSteps * MostSteps) && hours < end)
            {
                yield return hours;
            }
        }
    }

    // A dot or a square at the typical time, with a line to both ends; an arrow where one lies beyond the picture.
    private static void Mark(PlotCanvas canvas, Func<double, double> x, double level, QuantityBand hours, double end, string name)
    {
        double low = x(hours.Low), high = x(hours.High);
        Symbol(canvas, x(hours.Typical), level, name);
        if (high > low)
        {
            var cap = hours.High <= end ? "m0,-5v10" : "m-6,-5l6,5l-6,5";
            var n = PlotPath.Number(level);
            canvas.Line($"{name}-band", $"M{PlotPath.Number(low)},{n}m0,-5v10m0,-5H{PlotPath.Number(high)}{cap}", 1.2);
        }
    }

    private static void Key(PlotCanvas canvas, double x, double y, string words, string name)
    {
        Symbol(canvas, x + 5, y - 4.5, name);
        canvas.Text(x + 16, y, words);
    }

    private static void Symbol(PlotCanvas canvas, double x, double y, string name)
    {
        if (name == "half")
        {
            canvas.Dot(x, y, name);
        }
        else
        {
            canvas.Square(x, y, name);
        }
    }

    private static string Description(SaltingTimesResponse response, string far)
    {
        var half = response.TimeTo.Half is { } hours ? $" Half is taken up after {SaltingAdvice.Range(hours)}." : " All of the salt counts as taken up from the start.";
        return $"Two curves over time: the salt taken up, and the salt of the {far} over the mean of the piece.{half} The {far} is at 50 % of the mean after "
            + $"{SaltingAdvice.Range(response.TimeTo.Even50)} and at 95 % after {SaltingAdvice.Range(response.TimeTo.Even95)}. {response.Advice}";
    }
}
