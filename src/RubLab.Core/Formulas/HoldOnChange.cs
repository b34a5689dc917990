namespace RubLab.Core.Formulas;

/// <summary>What stays when one line of a mix changes.</summary>
public enum HoldOnChange
{
    /// <summary>Salt per kilogram of the base: the dose moves.</summary>
    Salt,
    /// <summary>The dose of the whole mix: the salt moves.</summary>
    Dose,
}
