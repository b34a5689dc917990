using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Ingredients;

/// <summary>A bulk density a kitchen weighed itself, from one or several fillings.</summary>
/// <param name="MeanGramsPerMillilitre">All that was weighed over all that was filled.</param>
/// <param name="SpreadPercent">Sample standard deviation of the single fillings, percent of the mean; none for one filling.</param>
/// <param name="Count">How many fillings.</param>
/// <param name="GramsPerMillilitre">The band used.</param>
public sealed record OwnDensity(double MeanGramsPerMillilitre, double? SpreadPercent, int Count, Band GramsPerMillilitre)
{
    /// <summary>The source named beside a kitchen's own densities.</summary>
    public const string SourceId = "own-weighing";

    /// <summary>From the fillings' weights and volumes.</summary>
    /// <param name="weightsGrams">Above zero, at least one.</param>
    /// <param name="volumesMillilitres">Above zero, one per weight.</param>
    /// <param name="fillingSpreadPercent">How far one filling strays from hand to hand; two standard deviations.</param>
    public static OwnDensity From(ReadOnlySpan<double> weightsGrams, ReadOnlySpan<double> volumesMillilitres, double fillingSpreadPercent)
    {
        if (weightsGrams.IsEmpty || weightsGrams.Length != volumesMillilitres.Length)
        {
            throw new ArgumentException("One volume per weight, and at least one.", nameof(weightsGrams));
        }

        double weight = 0, volume = 0;
        for (var i = 0; i < weightsGrams.Length; i++)
        {
            weight += weightsGrams[i];
            volume += volumesMillilitres[i];
        }

        var mean = weight / volume;
        double squares = 0;
        for (var i = 0; i < weightsGrams.Length; i++)
        {
            var off = (weightsGrams[i] / volumesMillilitres[i] / mean) - 1;
            squares += off * off;
        }

        // The general spread of filling counts as one more observation, so that a single filling has that spread
        // and many fillings have their own.
        var count = weightsGrams.Length;
        var general = fillingSpreadPercent / 100 / 2;
        var deviation = Math.Sqrt((squares + (general * general)) / count);
        return new OwnDensity(
            mean,
            count > 1 ? Math.Sqrt(squares / (count - 1)) * 100 : null,
            count,
            Band.Around(mean, Math.Min(2 * deviation * 100, 99)));
    }

    /// <summary>The density to put in place of the reference's.</summary>
    public BulkDensity AsBulkDensity(BulkDensity? reference) => new(
        GramsPerMillilitre,
        new Citation(SourceId, Count == 1 ? "one filling" : $"{Count} fillings", Count == 1 ? Confidence.Good : Confidence.High),
        "own-weighing")
    {
        IsOwn = true,
        ReferenceGramsPerMillilitre = reference?.GramsPerMillilitre.Typical,
    };
}
