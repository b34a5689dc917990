namespace RubLab.Core.Formulas;

/// <summary>Which weight of the meat a figure was given for.</summary>
public enum WeightBasis
{
    Green,
    Purchase,
}
