using System.Globalization;

namespace RubLab.Core.Tests.Scaling;

/// <summary>Reads a spoon text back as a cook would: whole and broken numbers of cups, tablespoons and teaspoons.</summary>
public static class SpoonText
{
    /// <summary>The volume in teaspoons.</summary>
    public static double Teaspoons(string text) => text.Split(" + ").Sum(part =>
    {
        var words = part.Split(' ');
        var each = words[^1] switch { "cup" => 48.0, "tbsp" => 3.0, "tsp" => 1.0, _ => throw new FormatException(part) };
        return each * words[..^1].Sum(Number);
    });

    private static double Number(string word)
    {
        var parts = word.Split('/');
        var number = double.Parse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture);
        return parts.Length == 1 ? number : number / double.Parse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture);
    }
}
