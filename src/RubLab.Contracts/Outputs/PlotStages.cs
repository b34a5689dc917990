using RubLab.Core.Timing;

namespace RubLab.Contracts.Outputs;

/// <summary>The stages as a strip under an axis of time, each numbered and named.</summary>
internal static class PlotStages
{
    private const double Height = 16;
    private const double RoomForNumber = 14;
    private const int MostLines = 2;

    /// <returns>Where the next line of words goes.</returns>
    public static double Draw(PlotCanvas canvas, PlotScale x, IReadOnlyList<SaltingStage> stages)
    {
        var frame = canvas.Frame;
        var top = frame.Bottom + 50;
        var hours = 0.0;
        for (var i = 0; i < stages.Count; i++)
        {
            var (from, to) = (x.At(hours), x.At(hours + stages[i].Hours));
            canvas.Line("stage", $"M{PlotPath.Number(from)},{PlotPath.Number(top)}V{PlotPath.Number(top + Height)}H{PlotPath.Number(to)}V{PlotPath.Number(top)}Z", 1.2);
            if (to - from >= RoomForNumber)
            {
                canvas.Text((from + to) / 2, top + 12.5, $"{i + 1}", "middle", "font-size=\"12\"");
            }

            hours += stages[i].Hours;
        }

        // As the times to come are reckoned.
        canvas.Line("goes-on", PlotPath.Line([(x.At(hours), top + (Height / 2)), (frame.Right, top + (Height / 2))]), 1.2, "2 4");
        canvas.Line("end", PlotPath.Line([(x.At(hours), frame.Top), (x.At(hours), frame.Bottom)]), 1, "2 4");
        var lines = Lines(stages, frame.MostLetters);
        for (var i = 0; i < lines.Count; i++)
        {
            canvas.Text(frame.WordsFrom, top + Height + 18 + (i * 16), lines[i], more: "font-size=\"12\"");
        }

        return top + Height + 24 + (lines.Count * 16);
    }

    private static string Shown(double value) => PlainNumber.Of(Quantities.Rounded.Estimate(value));

    private static List<string> Lines(IReadOnlyList<SaltingStage> stages, int mostLetters)
    {
        var lines = new List<string> { "" };
        for (var i = 0; i < stages.Count; i++)
        {
            var last = i == stages.Count - 1;
            var words = $"{i + 1}: {Shown(stages[i].TemperatureCelsius)} C for {Shown(stages[i].Hours)} h{(last ? ", then taken to go on" : "; ")}";
            if (lines[^1].Length + words.Length > mostLetters)
            {
                if (lines.Count == MostLines)
                {
                    lines[^1] += $"and {stages.Count - i} more";
                    break;
                }

                lines.Add("");
            }

            lines[^1] += words;
        }

        return lines;
    }
}
