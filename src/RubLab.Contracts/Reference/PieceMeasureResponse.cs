using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Reference;

/// <summary>A published weight of a piece, a pack or another measure that is no volume.</summary>
/// <param name="Amount">How many of it.</param>
/// <param name="Measure">What is counted, in the source's words, such as <c>clove</c>.</param>
/// <param name="Weight">What all of them were found to weigh.</param>
/// <param name="SourceId">Id of the source.</param>
/// <param name="Locator">Where in the source.</param>
public sealed record PieceMeasureResponse(double Amount, string Measure, Quantity Weight, string SourceId, string Locator);
