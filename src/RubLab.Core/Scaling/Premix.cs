namespace RubLab.Core.Scaling;

/// <summary>
/// A line too small for its scale, mixed beforehand with the largest line of its mix: all three amounts in whole steps of
/// the scales that hold them.
/// </summary>
public sealed record Premix
{
    private Premix()
    {
    }

    /// <summary>Of the small line, into the premix.</summary>
    public required LineAmount Ingredient { get; init; }

    /// <summary>Of the large line, into the premix.</summary>
    public required LineAmount Carrier { get; init; }

    /// <summary>Of the premix, in place of both lines of one bowl.</summary>
    public required LineAmount Taken { get; init; }

    /// <summary>How far the small line is then from its due, percent of it, by rounding to whole steps.</summary>
    public required double ErrorPercent { get; init; }

    /// <summary>How far the large line is then from its due, percent of it.</summary>
    public required double CarrierErrorPercent { get; init; }

    /// <summary>The least premix whose small part is no longer coarse; none where one bowl takes less than half a step of it.</summary>
    /// <param name="grams">The small line in one bowl, above zero.</param>
    /// <param name="carrierGrams">The large line in one bowl, no less than the small one.</param>
    /// <param name="step">The step the small line is too small for.</param>
    /// <param name="scales">The kitchen's scales.</param>
    /// <param name="coarsePercent">A step above this share of an amount is coarse.</param>
    public static Premix? Of(double grams, double carrierGrams, WeighingStep step, ScaleSet scales, double coarsePercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(grams);
        ArgumentOutOfRangeException.ThrowIfLessThan(carrierGrams, grams);
        var taken = Whole(grams + carrierGrams, scales);
        if (taken.Steps == 0)
        {
            return null;
        }

        // What is taken is settled first, so that the small part is right and the rounding falls on the large one.
        var steps = Math.Ceiling(100 / coarsePercent);
        var ingredient = Whole(steps * Math.Max(step.Grams, scales.For(steps * step.Grams).Step.Grams), scales);
        var carrier = Whole(ingredient.Grams * ((taken.Grams / grams) - 1), scales);
        var held = taken.Grams * (ingredient.Grams / (ingredient.Grams + carrier.Grams));
        return new Premix
        {
            Ingredient = ingredient,
            Carrier = carrier,
            Taken = taken,
            ErrorPercent = ((held / grams) - 1) * 100,
            CarrierErrorPercent = (((taken.Grams - held) / carrierGrams) - 1) * 100,
        };
    }

    private static LineAmount Whole(double grams, ScaleSet scales)
    {
        var step = scales.For(grams).Step;
        return new LineAmount(step, WholeSteps.Nearest(grams / step.Grams), 0, scales.WeighingsFor(grams));
    }
}
