namespace RubLab.Core.Formulas;

/// <summary>What a formula is and so how it reaches the meat.</summary>
public enum FormulaKind
{
    DryBrine,
    Rub,
    Slather,
    Injection,
    Soak,
    Mop,
    Sauce,
}
