namespace RubLab.Core.Scaling;

/// <summary>What to weigh of one formula line, on the scale chosen for it.</summary>
/// <param name="Step">The step of that scale.</param>
/// <param name="Steps">Whole steps, all bowls together.</param>
/// <param name="LostSteps">The amount, in steps, when it comes to no whole step; zero otherwise.</param>
/// <param name="Weighings">How often the scale is loaded for one bowl's share.</param>
public readonly record struct LineAmount(WeighingStep Step, long Steps, double LostSteps, int Weighings)
{
    /// <summary>In the scales' unit.</summary>
    public decimal Value => Step.DecimalOf(Steps);

    /// <summary>One bowl's share, in the scales' unit.</summary>
    public decimal ValueIn(int bowl, int bowls) => Step.DecimalOf(Bowls.Share(Steps, bowl, bowls));

    public double Grams => Step.GramsOf(Steps);
}
