using RubLab.Contracts.Quantities;
using RubLab.Core.Scaling;

namespace RubLab.Contracts.Scaling;

/// <summary>An amount in cups and spoons, with what they hold and what rounding to them costs.</summary>
/// <param name="Text">In words.</param>
/// <param name="Low">What they hold at the lightest filling.</param>
/// <param name="High">What they hold at the heaviest filling.</param>
/// <param name="Unit">Always g.</param>
/// <param name="RoundingError">Grams more or less than the amount, from rounding to whole spoons.</param>
public sealed record SpoonResponse(string Text, double Low, double High, string Unit, double RoundingError)
{
    public static SpoonResponse? From(SpoonMeasure? spoon) => spoon is null
        ? null
        : new SpoonResponse(
            spoon.Text, Rounded.Estimate(spoon.Grams.Low), Rounded.Estimate(spoon.Grams.High), "g",
            // Adding zero turns a rounded-off minus zero into zero.
            Math.Round(spoon.RoundingErrorGrams, 2) + 0.0);
}
