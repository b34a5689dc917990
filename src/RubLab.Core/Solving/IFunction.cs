namespace RubLab.Core.Solving;

/// <summary>A function of one number, as a value type so that a search over it allocates nothing.</summary>
internal interface IFunction
{
    double At(double x);
}
