using System.Globalization;
using System.Text;

namespace RubLab.Contracts.Outputs;

/// <summary>Lines and areas as SVG path data, to a tenth of a unit.</summary>
internal static class PlotPath
{
    /// <summary>A line through points.</summary>
    public static string Line(IEnumerable<(double X, double Y)> points) => Joined(new StringBuilder(), points).ToString();

    /// <summary>The area between two lines that run the same way.</summary>
    public static string Between(IReadOnlyList<(double X, double Y)> lower, IReadOnlyList<(double X, double Y)> upper) =>
        Joined(new StringBuilder(), lower.Concat(upper.Reverse())).Append('Z').ToString();

    /// <summary>A coordinate.</summary>
    public static string Number(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);

    private static StringBuilder Joined(StringBuilder path, IEnumerable<(double X, double Y)> points)
    {
        var command = 'M';
        foreach (var (x, y) in points)
        {
            path.Append(command).Append(Number(x)).Append(',').Append(Number(y));
            command = 'L';
        }

        return path;
    }
}
