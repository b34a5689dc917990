using RubLab.Core.Quantities;

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

    /// <summary>The least premix whose small part is no longer coarse; none where one bowl takes less than half a step of it, or where
    /// none keeps what is asked.</summary>
    public static Premix? Of(PremixRequest request)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(request.Grams);
        ArgumentOutOfRangeException.ThrowIfLessThan(request.CarrierGrams, request.Grams);
        var fine = (long)Math.Ceiling(100 / request.CoarsePercent);
        var taken = Taking(request);
        if (taken.Steps == 0 || (request.IsLimited && taken.Steps < fine))
        {
            return null;
        }

        // Of what has a limit a little more in the premix may part better into whole steps: up to twice the least is tried.
        var step = Math.Max(request.Step.Grams, request.Scales.For(fine * request.Step.Grams).Step.Grams);
        for (var steps = fine; steps <= (request.IsLimited ? 2 * fine : fine); steps++)
        {
            var ingredient = Nearest(steps * step, request.Scales);
            var premix = With(ingredient, taken, request);
            if (premix.Carrier.Grams <= request.MostCarrierGrams && (!request.IsLimited || IsKept(premix, fine, request.CoarsePercent)))
            {
                return premix;
            }
        }

        return null;
    }

    private static bool IsKept(Premix premix, long fine, double coarsePercent) =>
        premix.Ingredient.Steps >= fine && premix.ErrorPercent <= 100 * Whole.LastBits && premix.ErrorPercent >= -coarsePercent;

    private static LineAmount Taking(PremixRequest request)
    {
        var nearest = Nearest(request.Grams + request.CarrierGrams, request.Scales);
        return nearest with { Steps = Math.Max(nearest.Steps, Whole.Up(request.LeastGrams / nearest.Step.Grams)) };
    }

    // What is taken is settled first, so that the small part is right and the rounding falls on the large one.
    private static Premix With(LineAmount ingredient, LineAmount taken, PremixRequest request)
    {
        var exact = ingredient.Grams * ((taken.Grams / request.Grams) - 1);
        var carrier = request.IsLimited ? Up(exact, request.Scales) : Nearest(exact, request.Scales);
        var held = taken.Grams * (ingredient.Grams / (ingredient.Grams + carrier.Grams));
        return new Premix
        {
            Ingredient = ingredient,
            Carrier = carrier,
            Taken = taken,
            ErrorPercent = ((held / request.Grams) - 1) * 100,
            CarrierErrorPercent = (((taken.Grams - held) / request.CarrierGrams) - 1) * 100,
        };
    }

    private static LineAmount Nearest(double grams, ScaleSet scales)
    {
        var step = scales.For(grams).Step;
        return new LineAmount(step, WholeSteps.Nearest(grams / step.Grams), 0, scales.WeighingsFor(grams));
    }

    private static LineAmount Up(double grams, ScaleSet scales)
    {
        var step = scales.For(grams).Step;
        return new LineAmount(step, Whole.Up(grams / step.Grams), 0, scales.WeighingsFor(grams));
    }
}
