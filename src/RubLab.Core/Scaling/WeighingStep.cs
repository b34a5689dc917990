using RubLab.Core.Quantities;

namespace RubLab.Core.Scaling;

/// <summary>The smallest difference the scale shows; a sheet's masses are whole steps in its unit.</summary>
/// <param name="Value">The step in its unit, above zero.</param>
/// <param name="Unit">A unit of mass.</param>
public sealed record WeighingStep(double Value, Unit Unit)
{
    /// <summary>One gram, when nothing else is said.</summary>
    public static WeighingStep Default { get; } = new(1, UnitTable.Get("g"));

    public double Grams => Unit.ToBase(Value);

    /// <summary>A number of steps as a value in the step's unit, free of binary noise (3 steps of 0.1 are 0.3).</summary>
    public double ValueOf(long steps) => (double)DecimalOf(steps);

    /// <summary>The same as an exact decimal, for sums.</summary>
    public decimal DecimalOf(long steps) => steps * (decimal)Value;

    public double GramsOf(long steps) => Unit.ToBase(ValueOf(steps));
}
