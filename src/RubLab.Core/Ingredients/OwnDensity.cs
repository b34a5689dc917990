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
        var filled = MeasuredRatio.From(weightsGrams, volumesMillilitres, fillingSpreadPercent);
        return new OwnDensity(
            filled.Mean, filled.SpreadPercent, filled.Count, Band.Around(filled.Mean, Math.Min(2 * filled.Deviation * 100, 99)));
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
