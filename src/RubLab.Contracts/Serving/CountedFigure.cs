using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Serving;

namespace RubLab.Contracts.Serving;

/// <summary>A figure an answer was reckoned with.</summary>
/// <param name="Low">The low end.</param>
/// <param name="Typical">The most likely value.</param>
/// <param name="High">The high end.</param>
/// <param name="Unit">The unit of all three.</param>
/// <param name="SourceId">Id of the source; absent where the request stated the figure.</param>
/// <param name="Locator">Where in the source.</param>
/// <param name="Confidence">How far the figure can be trusted; absent where the request stated it.</param>
public sealed record CountedFigure(
    double Low, double Typical, double High, string Unit, string? SourceId, string? Locator, string? Confidence)
{
    public static CountedFigure From(CountedBand figure, string unit) => new(
        Rounded.Exact(figure.Band.Low), Rounded.Exact(figure.Band.Typical), Rounded.Exact(figure.Band.High), unit,
        figure.Citation?.SourceId, figure.Citation?.Locator,
        figure.Citation is { } citation ? Vocabulary.Confidences[citation.Confidence] : null);
}
