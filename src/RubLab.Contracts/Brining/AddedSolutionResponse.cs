using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Brining;

/// <summary>Added solution as a label states it: percent of the raw weight.</summary>
/// <param name="PutIn">As pumped.</param>
/// <param name="AfterDraining">What is left of it.</param>
public sealed record AddedSolutionResponse(Quantity PutIn, QuantityBand AfterDraining);
