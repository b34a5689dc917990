using RubLab.Core.Quantities;

namespace RubLab.Core.Serving;

/// <summary>
/// Rounding in the manner of the Food Buying Guide: purchases go up, servings go down. A quotient that is whole but for the
/// last bits of its factors is whole.
/// </summary>
public static class BuyingGuide
{
    /// <summary>Servings from a weight: whole ones, rounded down.</summary>
    public static long Servings(double edibleGrams, double portionGrams) => Whole.Down(edibleGrams / portionGrams);

    /// <summary>Whole things for an amount: rounded up.</summary>
    public static long Up(double amount) => Whole.Up(amount);

    /// <summary>An amount up to the next whole step.</summary>
    /// <param name="amount">In any unit.</param>
    /// <param name="step">In the same; the guide's is a tenth of the purchase unit.</param>
    public static double UpTo(double amount, double step) => Up(amount / step) * step;

    /// <summary>Purchase units for 100 servings, up to the next step.</summary>
    /// <param name="servingsPerUnit">Servings from one purchase unit, not rounded.</param>
    /// <param name="step">Of the purchase unit.</param>
    public static double UnitsPerHundred(double servingsPerUnit, double step) => UpTo(100 / servingsPerUnit, step);
}
