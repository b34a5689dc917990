using System.Text;

namespace RubLab.Contracts.Outputs;

/// <summary>An SVG being written: its frame and axes first, then marks on it. Everything is in the colour of the text around it.</summary>
internal sealed class PlotCanvas
{
    private const double TickLength = 5;
    private const double LegendRow = 18;

    /// <summary>Needed only where the picture stands alone.</summary>
    public static readonly string OwnStyle = $"<style>{SaltingPlots.Css}</style>";

    private readonly StringBuilder _svg = new();
    private readonly string _name;
    private readonly int _height;

    /// <param name="frame">Where its parts stand.</param>
    /// <param name="name">Starts the ids, so that two plots may stand in one page.</param>
    /// <param name="title">The heading.</param>
    /// <param name="subject">Under it.</param>
    /// <param name="description">For who cannot see the picture.</param>
    /// <param name="height">The whole height.</param>
    public PlotCanvas(PlotFrame frame, string name, string title, string subject, string description, int height)
    {
        (Frame, _name, _height) = (frame, name, height);
        _svg.Append($"""
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {frame.Width} {height}" width="{frame.Width}" height="{height}" role="img" aria-labelledby="{name}-title {name}-desc" font-family="sans-serif" font-size="13" fill="currentColor" stroke="none">
            <title id="{name}-title">{Html.Text($"{title}: {subject}")}</title>
            <desc id="{name}-desc">{Html.Text(description)}</desc>
            {OwnStyle}
            <defs>
            {Pattern("hatch", "M-1,1l2,-2M0,6l6,-6M5,7l2,-2")}
            {Pattern("dots", "M2.5,3h1")}
            </defs>

            """.ReplaceLineEndings("\n"));
        Text(frame.WordsFrom, 24, title, "start", "font-size=\"17\" font-weight=\"bold\"");
        Text(frame.WordsFrom, 44, subject, more: frame.IsNarrow ? "font-size=\"12\"" : "");
    }

    public PlotFrame Frame { get; }

    /// <summary>Both axes with their ticks, numbers and titles.</summary>
    public void Axes(PlotScale x, string xTitle, PlotScale y, string yTitle)
    {
        _svg.Append("<g fill=\"none\" stroke=\"currentColor\" stroke-width=\"1\">\n");
        var (left, right, bottom) = (Frame.Left, Frame.Right, Frame.Bottom);
        Stroke($"M{left:0},{Frame.Top:0}V{bottom:0}H{right:0}");
        foreach (var tick in x.Ticks)
        {
            Stroke($"M{PlotPath.Number(x.At(tick))},{bottom:0}v{TickLength:0}");
        }

        foreach (var tick in y.Ticks)
        {
            Stroke($"M{left:0},{PlotPath.Number(y.At(tick))}h-{TickLength:0}");
            Stroke($"M{left:0},{PlotPath.Number(y.At(tick))}H{right:0}", "stroke-opacity=\"0.15\"");
        }

        _svg.Append("</g>\n");
        foreach (var tick in x.Ticks)
        {
            Text(x.At(tick), bottom + 19, PlainNumber.Of(tick), "middle", "class=\"x\"");
        }

        foreach (var tick in y.Ticks)
        {
            Text(left - 9, y.At(tick) + 4.5, PlainNumber.Of(tick), "end", "class=\"y\"");
        }

        Text((left + right) / 2, bottom + 38, xTitle, "middle");
        var (across, middle) = (Frame.IsNarrow ? 13 : 18, (Frame.Top + bottom) / 2);
        Text(across, middle, yTitle, "middle", $"transform=\"rotate(-90 {across} {PlotPath.Number(middle)})\"");
    }

    /// <summary>A band, hatched (<c>hatch</c>) or dotted (<c>dots</c>).</summary>
    public void Band(string name, string pattern, IReadOnlyList<(double X, double Y)> low, IReadOnlyList<(double X, double Y)> high) => _svg.Append(
        $"<path class=\"{name}\" d=\"{PlotPath.Between(low, high)}\" fill=\"url(#{_name}-{pattern})\" stroke=\"currentColor\" stroke-width=\"0.5\"/>\n");

    /// <summary>A line; its dashes in the words of SVG, none for an unbroken one.</summary>
    public void Line(string name, string path, double width, string? dashes = null) => _svg.Append(
        $"<path class=\"{name}\" d=\"{path}\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"{PlotPath.Number(width)}\"{(dashes is null ? "" : $" stroke-dasharray=\"{dashes}\"")}/>\n");

    /// <summary>A dot.</summary>
    public void Dot(double x, double y, string name) => _svg.Append($"<circle class=\"{name}\" cx=\"{PlotPath.Number(x)}\" cy=\"{PlotPath.Number(y)}\" r=\"4\"/>\n");

    /// <summary>A square.</summary>
    public void Square(double x, double y, string name) => _svg.Append(
        $"<rect class=\"{name}\" x=\"{PlotPath.Number(x - 4)}\" y=\"{PlotPath.Number(y - 4)}\" width=\"8\" height=\"8\"/>\n");

    /// <summary>Words: on the left of the place, around it or on its right.</summary>
    public void Text(double x, double y, string words, string anchor = "start", string more = "") => _svg.Append(
        $"<text x=\"{PlotPath.Number(x)}\" y=\"{PlotPath.Number(y)}\" text-anchor=\"{anchor}\"{(more.Length > 0 ? " " : "")}{more}>{Html.Text(words)}</text>\n");

    /// <summary>Samples of the lines and areas, with what each means, under the heading.</summary>
    public void Legend(params ReadOnlySpan<(string Sample, string Words)> entries)
    {
        double x = Frame.WordsFrom, y = 66;
        for (var i = 0; i < entries.Length; i++)
        {
            var (sample, words) = entries[i];
            var width = WidthOf(words);
            // A sample without words of its own shares those of the next.
            var together = words.Length == 0 && i + 1 < entries.Length ? width + WidthOf(entries[i + 1].Words) : width;
            if (Frame.IsNarrow && x > Frame.WordsFrom && x + together > Frame.Width)
            {
                (x, y) = (Frame.WordsFrom, y + LegendRow);
            }

            var isArea = sample is "hatch" or "dots";
            _svg.Append(isArea
                ? $"<rect x=\"{PlotPath.Number(x)}\" y=\"{y - 10:0}\" width=\"26\" height=\"11\" fill=\"url(#{_name}-{sample})\" stroke=\"currentColor\" stroke-width=\"0.5\"/>\n"
                : $"<path d=\"M{PlotPath.Number(x)},{y - 4:0}h26\" stroke=\"currentColor\" stroke-width=\"2\"{(sample.Length == 0 ? "" : $" stroke-dasharray=\"{sample}\"")}/>\n");
            Text(x + 32, y, words, more: "font-size=\"12\"");
            x += width;
        }

        static double WidthOf(string words) => 48 + (words.Length * 6.1);
    }

    public string Finished() => _svg.Append("</svg>\n").ToString();

    public override string ToString() => $"{_name}, {Frame.Width} x {_height}";

    private void Stroke(string path, string more = "") => _svg.Append($"<path d=\"{path}\"{(more.Length > 0 ? " " : "")}{more}/>\n");

    private string Pattern(string name, string path) =>
        $"<pattern id=\"{_name}-{name}\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\"><path d=\"{path}\" stroke=\"currentColor\" stroke-width=\"0.9\" stroke-opacity=\"0.6\"/></pattern>";
}
