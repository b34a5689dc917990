using RubLab.Core.Quantities;

namespace RubLab.Core.Scaling;

/// <summary>Splits a mix over equal bowls so that every line's bowls sum to the line, step by step.</summary>
public static class Bowls
{
    /// <summary>How many bowls of a capacity a mix needs.</summary>
    public static int Count(double mixGrams, double capacityGrams) =>
        (int)Math.Max(1, Whole.Up(mixGrams / capacityGrams));

    /// <summary>Whole steps of a line in one bowl, numbered from 0.</summary>
    public static long Share(long lineSteps, int bowl, int bowls) =>
        (lineSteps * (bowl + 1) / bowls) - (lineSteps * bowl / bowls);
}
