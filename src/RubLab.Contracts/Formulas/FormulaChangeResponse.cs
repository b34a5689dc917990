using RubLab.Contracts.Remarks;

namespace RubLab.Contracts.Formulas;

/// <summary>The changed formula, ready to be stored, and what the change does.</summary>
public sealed record FormulaChangeResponse(
    FormulaRequest Formula, MixFigures Before, MixFigures After, IReadOnlyList<FindingResponse> Findings, string DataVersion);
