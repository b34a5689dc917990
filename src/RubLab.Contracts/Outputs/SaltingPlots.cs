using RubLab.Contracts.Reading;
using RubLab.Contracts.Timing;

namespace RubLab.Contracts.Outputs;

/// <summary>Answers on salting as pictures: SVG that reads in print and without colour, in the colour of the text around it.</summary>
public static class SaltingPlots
{
    /// <summary>The plots as asked for.</summary>
    public static Words<SaltingPlot> All { get; } = new(("profile", SaltingPlot.Profile), ("uptake", SaltingPlot.Uptake));

    /// <summary>The content of a picture's one style element, to the letter: a policy may name it by its hash. It acts where the picture
    /// stands alone, which then is light or dark as its reader likes; inside a page the page decides.</summary>
    public static string Css { get; } = "svg:root{color-scheme:light dark}";

    /// <summary>A plot that stands alone.</summary>
    public static string Of(SaltingAnswer answer, SaltingPlot plot) => Drawn(answer, plot, PlotFrame.Wide);

    /// <summary>The same plot to stand inside a page, without a style of its own.</summary>
    /// <param name="answer">What is drawn.</param>
    /// <param name="plot">Which of the two.</param>
    /// <param name="isNarrow">For a phone held upright: the same curves, their words in more lines.</param>
    public static string ToEmbed(SaltingAnswer answer, SaltingPlot plot, bool isNarrow) =>
        Drawn(answer, plot, isNarrow ? PlotFrame.Narrow : PlotFrame.Wide).Replace(PlotCanvas.OwnStyle, "", StringComparison.Ordinal);

    private static string Drawn(SaltingAnswer answer, SaltingPlot plot, PlotFrame frame)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return plot == SaltingPlot.Uptake ? UptakePlot.Of(answer, frame) : ProfilePlot.Of(answer, frame);
    }

    /// <summary>What was asked, for a heading.</summary>
    internal static string Subject(SaltingTimesResponse answer)
    {
        var method = answer.Method switch { "dry-brine" => "dry brine", "salt-bed" => "salt bed", var other => other };
        var meat = answer.Species is { } species ? $" of {species}" : "";
        return $"{method}, {answer.Shape}{meat}, {SaltingAdvice.Range(answer.Thickness)} thick";
    }
}
