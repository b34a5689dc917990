using RubLab.Contracts.Remarks;

namespace RubLab.Contracts.Formulas;

/// <summary>The changed formula, and what the change does.</summary>
/// <param name="Formula">Ready to be stored.</param>
/// <param name="Before">What it came to.</param>
/// <param name="After">What it comes to now.</param>
/// <param name="Findings">What was noticed about the changed formula.</param>
/// <param name="DataVersion">The edition of the reference data.</param>
public sealed record FormulaChangeResponse(
    AuthoredFormula Formula, MixFigures Before, MixFigures After, IReadOnlyList<FindingResponse> Findings, string DataVersion);
