namespace RubLab.Core.Quantities;

/// <summary>A ratio a kitchen measured itself, once or several times: weight over volume, or weight after over weight before.</summary>
/// <param name="Mean">All that stood above over all that stood below.</param>
/// <param name="SpreadPercent">Sample standard deviation of the single ratios, percent of the mean; none for one.</param>
/// <param name="Count">How many were measured.</param>
/// <param name="Deviation">The standard deviation to reckon with, as a part of the mean.</param>
public readonly record struct MeasuredRatio(double Mean, double? SpreadPercent, int Count, double Deviation)
{
    /// <summary>From what was measured.</summary>
    /// <param name="above">Above zero, at least one.</param>
    /// <param name="below">Above zero, one for each above.</param>
    /// <param name="generalSpreadPercent">How far one such ratio strays from the mean in general; two standard deviations.</param>
    public static MeasuredRatio From(ReadOnlySpan<double> above, ReadOnlySpan<double> below, double generalSpreadPercent)
    {
        if (above.IsEmpty || above.Length != below.Length)
        {
            throw new ArgumentException("One below for each above, and at least one.", nameof(above));
        }

        double allAbove = 0, allBelow = 0;
        for (var i = 0; i < above.Length; i++)
        {
            allAbove += above[i];
            allBelow += below[i];
        }

        var mean = allAbove / allBelow;
        double squares = 0;
        for (var i = 0; i < above.Length; i++)
        {
            var off = (above[i] / below[i] / mean) - 1;
            squares += off * off;
        }

        // The general spread counts as one more observation, so that a single measurement has that spread and many have
        // their own.
        var count = above.Length;
        var general = generalSpreadPercent / 100 / 2;
        return new MeasuredRatio(
            mean,
            count > 1 ? Math.Sqrt(squares / (count - 1)) * 100 : null,
            count,
            Math.Sqrt((squares + (general * general)) / count));
    }
}
