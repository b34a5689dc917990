using RubLab.Contracts.Formulas;

namespace RubLab.Contracts.Scaling;

/// <summary>Gives a stored formula as authored; none where there is none. A null revision asks for the latest.</summary>
public delegate FormulaRequest? FormulaLookup(string id, long? revision);
