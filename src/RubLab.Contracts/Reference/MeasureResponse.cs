using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Reference;

/// <summary>A published household measure.</summary>
public sealed record MeasureResponse(string Form, Quantity Amount, Quantity Weight, string SourceId, string Locator);
