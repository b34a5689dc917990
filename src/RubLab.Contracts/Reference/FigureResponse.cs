using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Contracts.Reference;

/// <summary>A figure from outside with its source.</summary>
public sealed record FigureResponse(
    double Low, double Typical, double High, string Unit, string SourceId, string Locator, string Confidence, string? Method)
{
    public static FigureResponse From(Band band, string unit, Citation citation, string? method = null) => new(
        Rounded.Exact(band.Low), Rounded.Exact(band.Typical), Rounded.Exact(band.High), unit,
        citation.SourceId, citation.Locator, Vocabulary.Confidences[citation.Confidence], method);
}
