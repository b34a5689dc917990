using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Contracts.Reference;

/// <summary>A figure from outside with its source.</summary>
/// <param name="Low">The low end.</param>
/// <param name="Typical">The most likely value.</param>
/// <param name="High">The high end.</param>
/// <param name="Unit">The unit of all three.</param>
/// <param name="SourceId">Id of the source.</param>
/// <param name="Locator">Where in the source.</param>
/// <param name="Confidence">How far the figure can be trusted.</param>
/// <param name="Method">The cooking method, where the figure depends on it.</param>
public sealed record FigureResponse(
    double Low, double Typical, double High, string Unit, string SourceId, string Locator, string Confidence, string? Method)
{
    /// <summary>For a cooking yield: cooked over green of the whole piece, or of its meat alone.</summary>
    public string? Basis { get; init; }

    /// <summary>Id of the source the width of the band is estimated from, where the figure has none of its own.</summary>
    public string? WidthSourceId { get; init; }

    public static FigureResponse From(CookYield yield) => From(yield.Percent, "%", yield.Citation, yield.Method) with
    {
        Basis = Vocabulary.YieldBases[yield.Basis],
        WidthSourceId = yield.WidthCitation?.SourceId,
    };

    public static FigureResponse From(Band band, string unit, Citation citation, string? method = null) => new(
        Rounded.Exact(band.Low), Rounded.Exact(band.Typical), Rounded.Exact(band.High), unit,
        citation.SourceId, citation.Locator, Vocabulary.Confidences[citation.Confidence], method);
}
