using RubLab.Core.Quantities;

namespace RubLab.Core.Scaling;

/// <summary>One of a kitchen's scales.</summary>
/// <param name="CapacityGrams">The most it takes.</param>
/// <param name="Step">The smallest difference it shows.</param>
public sealed record Scale(double CapacityGrams, WeighingStep Step)
{
    /// <summary>Whether an amount goes on it at once.</summary>
    public bool Takes(double grams) => grams * (1 - Whole.LastBits) <= CapacityGrams;

    /// <summary>How often it is loaded for an amount; at least once.</summary>
    public int LoadsFor(double grams) => Takes(grams) ? 1 : (int)Whole.Up(grams / CapacityGrams);
}
