using RubLab.Contracts.Quantities;
using RubLab.Contracts.Timing;

namespace RubLab.Contracts.Outputs;

/// <summary>Salt against depth at the end of the stages.</summary>
internal static class ProfilePlot
{
    private const string MeanDashes = "7 4";
    private const string Name = "salt-profile";
    private const int UnderEnds = 46;
    private const double Row = 18;

    public static string Of(SaltingAnswer answer, PlotFrame frame)
    {
        var response = answer.Response;
        var far = SaltingAdvice.IsClosed(answer.Times.Request) ? "closed face" : "middle";
        var reach = response.Reach.Typical;
        var isBand = response.Profile.Any(p => p.Relative.Low != p.Relative.High);
        var x = PlotScale.To(reach, frame.Left, frame.Right, frame.MostTicks);
        var y = PlotScale.Over(Math.Max(response.Profile.Max(p => p.Relative.High), 1.2), frame.Bottom, frame.Top, 6);
        // The ends of the axis and its title stand side by side where there is room.
        var ends = frame.Bottom + 38 + (frame.IsNarrow ? Row : 0);
        var canvas = new PlotCanvas(
            frame, Name, $"Salt in the piece after {PlainNumber.Readable(response.Time.Value)} h", SaltingPlots.Subject(response), Description(response, far),
            (int)(ends + UnderEnds + (frame.IsNarrow ? Row : 0)));
        canvas.Axes(x, XTitle(response), y, "Salt, times the mean of the piece");
        if (isBand)
        {
            canvas.Band("band", "hatch", Points(r => r.Low), Points(r => r.High));
            canvas.Legend(("", "typical"), ("hatch", "lowest to highest"), (MeanDashes, "mean of the piece"));
        }
        else
        {
            canvas.Legend(("", "salt"), (MeanDashes, "mean of the piece"));
        }

        canvas.Line("mean", PlotPath.Line([(frame.Left, y.At(1)), (frame.Right, y.At(1))]), 1.5, MeanDashes);
        canvas.Line("typical", PlotPath.Line(Points(r => r.Typical)), 2.2);
        canvas.Text(frame.Left, ends, "treated face", more: "font-weight=\"bold\"");
        canvas.Text(frame.Right, ends, far, "end", "font-weight=\"bold\"");
        Depth(canvas, x, ends + Row, response);
        return canvas.Finished();

        // From the treated face on the left to the far end.
        List<(double X, double Y)> Points(Func<PlainBand, double> of) =>
            [.. response.Profile.Reverse().Select(p => (x.At((1 - p.Position) * reach), y.At(of(p.Relative))))];
    }

    // Under the axis: how deep half of the even strength has come, with its ends.
    private static void Depth(PlotCanvas canvas, PlotScale x, double y, SaltingTimesResponse response)
    {
        double low = x.At(response.Depth.Low), typical = x.At(response.Depth.Typical), high = x.At(response.Depth.High);
        var n = PlotPath.Number(y);
        canvas.Line("depth", $"M{PlotPath.Number(canvas.Frame.Left)},{n}H{PlotPath.Number(typical)}", 3);
        canvas.Line("depth-band", $"M{PlotPath.Number(low)},{n}m0,-5v10m0,-5H{PlotPath.Number(high)}m0,-5v10", 1.2);
        var (what, how) = ("Half of the even strength or more:", $"the outer {SaltingAdvice.Range(response.Depth)}");
        if (canvas.Frame.IsNarrow)
        {
            canvas.Text(canvas.Frame.WordsFrom, y + 20, what);
            canvas.Text(canvas.Frame.WordsFrom, y + 20 + Row, how);
        }
        else
        {
            canvas.Text(canvas.Frame.WordsFrom, y + 20, $"{what} {how}");
        }
    }

    private static string XTitle(SaltingTimesResponse response) => response.Reach.Low == response.Reach.High
        ? "Depth below the treated face, mm"
        : "Depth, mm, in a piece of typical size";

    private static string Description(SaltingTimesResponse response, string far) =>
        $"A curve of salt over the mean of the piece, from the treated face, at {Shown(response.Profile[^1].Relative)} times the mean, "
        + $"to the {far} {SaltingAdvice.Range(response.Reach)} below, at {Shown(response.Profile[0].Relative)} times the mean. {response.Advice}";

    private static string Shown(PlainBand band) => SaltingAdvice.Range(new QuantityBand(band.Low, band.Typical, band.High, "")).TrimEnd();
}
