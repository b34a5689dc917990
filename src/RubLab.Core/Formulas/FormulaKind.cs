namespace RubLab.Core.Formulas;

/// <summary>What a formula is and so how it reaches the meat.</summary>
public enum FormulaKind
{
    DryBrine,
    Rub,
    Slather,
    /// <summary>A liquid put into the meat; the dose is liquid per meat.</summary>
    Injection,
    /// <summary>A liquid the meat lies in, a wet brine; the dose is liquid per meat.</summary>
    Soak,
    Mop,
    Sauce,
}
