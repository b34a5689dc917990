using System.Globalization;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Faults;
using RubLab.Core.Quantities;
using RubLab.Core.Scaling;

namespace RubLab.Contracts.Scaling;

/// <summary>Reads the weighing step or the scales of a kitchen, and its bowl.</summary>
internal static class ScaleReader
{
    private const int MostScales = 10;

    // Fifteen digits fit a double: nine for the number of steps and six for the step itself, so that every amount
    // printed is whole steps and the printed amounts add up. Both are far beyond any kitchen's scale.
    private const int StepDigits = 6;

    /// <summary>The scales; one without a limit for a weighing step, of 1 g when nothing is said.</summary>
    public static ScaleSet? Read(BatchSheetRequest request, Place at)
    {
        if (request.Scales is null)
        {
            return request.WeighingStep is null
                ? ScaleSet.Of(WeighingStep.Default)
                : ReadStep(request.WeighingStep, at.At("weighingStep")) is { } step ? ScaleSet.Of(step) : null;
        }

        if (request.WeighingStep is not null)
        {
            at.At("scales").Fault("one-or-the-other", "Give either a weighingStep or scales.");
        }

        return ReadScales(request.Scales, at.At("scales"));
    }

    /// <summary>What a bowl holds, in grams; none for a bowl that holds it all.</summary>
    public static double? ReadBowl(QuantityRequest? bowl, Place at) =>
        Reader.Amount(bowl, at, Bounds.CapacityGrams, isRequired: false, Dimension.Mass);

    private static ScaleSet? ReadScales(IReadOnlyList<ScaleRequest?> scales, Place at)
    {
        if (!Listed.Holds(scales, MostScales, "scale", "scales", at))
        {
            return null;
        }

        var read = new List<Scale>();
        for (var i = 0; i < scales.Count; i++)
        {
            if (scales[i] is not { } scale)
            {
                Reader.Missing(at.At(i));
            }
            else if (ReadScale(scale, at.At(i)) is { } sound)
            {
                read.Add(sound);
            }
        }

        for (var i = 1; i < read.Count; i++)
        {
            if (read[i].Step.Unit != read[0].Step.Unit)
            {
                at.Fault("mixed-units", "Give the steps of all scales in one unit, so that amounts can be added up as they are read.");
                return null;
            }
        }

        return read.Count == scales.Count ? new ScaleSet(read) : null;
    }

    private static Scale? ReadScale(ScaleRequest scale, Place at)
    {
        var capacity = Reader.Amount(scale.Capacity, at.At("capacity"), Bounds.CapacityGrams, isRequired: false, Dimension.Mass);
        if (scale.Step is null)
        {
            Reader.Missing(at.At("step"));
            return null;
        }

        if (ReadStep(scale.Step, at.At("step")) is not { } step || (scale.Capacity is not null && capacity is null))
        {
            return null;
        }

        if (capacity < step.Grams)
        {
            at.At("capacity").Fault("out-of-range", "A scale takes at least one step of its own.");
            return null;
        }

        return new Scale(capacity ?? double.PositiveInfinity, step);
    }

    private static WeighingStep? ReadStep(QuantityRequest step, Place at)
    {
        if (Reader.Amount(step, at, Bounds.StepGrams, isRequired: true, Dimension.Mass) is null)
        {
            return null;
        }

        var value = step.Value!.Value;
        if (double.Parse(value.ToString($"G{StepDigits}", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) == value)
        {
            return new WeighingStep(value, UnitTable.Get(step.Unit!));
        }

        at.At("value").Fault(
            "too-many-digits", $"A weighing step is what a scale shows, such as 1, 0.1 or 0.05: at most {StepDigits} digits.",
            ("value", value), ("most", (double)StepDigits));
        return null;
    }
}
