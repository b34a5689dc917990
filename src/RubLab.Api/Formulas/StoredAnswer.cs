using RubLab.Contracts.Formulas;

namespace RubLab.Api.Formulas;

/// <summary>A formula just written, with the entity tag of this answer.</summary>
internal sealed record StoredAnswer(FormulaResponse Body, string Tag);
