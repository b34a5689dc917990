using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Reference;

/// <summary>A published household measure.</summary>
/// <param name="Form">Id of the form measured.</param>
/// <param name="Amount">The household measure.</param>
/// <param name="Weight">What it was found to weigh.</param>
/// <param name="SourceId">Id of the source.</param>
/// <param name="Locator">Where in the source.</param>
public sealed record MeasureResponse(string Form, Quantity Amount, Quantity Weight, string SourceId, string Locator);
