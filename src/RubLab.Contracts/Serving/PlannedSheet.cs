namespace RubLab.Contracts.Serving;

/// <summary>A batch sheet's body, ready to be posted: it plans until trimmed weights take the place of those as bought.</summary>
/// <param name="Pile">What is bought.</param>
/// <param name="Treatments">What goes on it.</param>
public sealed record PlannedSheet(IReadOnlyList<PlannedPileLine> Pile, IReadOnlyList<PlannedTreatment> Treatments);
