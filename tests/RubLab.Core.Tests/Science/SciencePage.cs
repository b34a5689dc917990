using System.Globalization;
using RubLab.Core.Quantities;

namespace RubLab.Core.Tests.Science;

/// <summary>The worked example of a page of documentation: what it starts from, and what it says comes out.</summary>
public sealed class SciencePage
{
    private readonly Dictionary<string, string> _given = [];
    private readonly Dictionary<string, string> _found = [];
    private readonly HashSet<string> _asked = [];

    private SciencePage(string text)
    {
        foreach (var line in text.Split("```example\n")[1].Split("```")[0].Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            var isFound = line.StartsWith("=> ", StringComparison.Ordinal);
            var pair = (isFound ? line[3..] : line).Split(" = ");
            (isFound ? _found : _given).Add(pair[0], pair[1]);
        }
    }

    public static SciencePage Of(string name) => new(File.ReadAllText(Repository.PathOf("docs", "science", name + ".md")));

    /// <summary>The number as printed.</summary>
    public double Given(string name)
    {
        _asked.Add(name);
        return Number(_given[name]);
    }

    public string UnitOf(string name) => _given[name].Split(' ')[1];

    /// <summary>The number in its dimension's base unit.</summary>
    public double InBase(string name) => UnitTable.Get(UnitOf(name)).ToBase(Given(name));

    /// <summary>The computed figure is the printed one, to half its last digit.</summary>
    public void Finds(string name, double computed)
    {
        _asked.Add(name);
        var printed = _found[name].Split(' ')[0];
        var decimals = printed.Contains('.') ? printed.Length - printed.IndexOf('.') - 1 : 0;
        var tolerance = 0.5 * Math.Pow(10, -decimals) * (1 + 1e-9);

        Assert.True(Math.Abs(computed - Number(printed)) <= tolerance, $"{name}: the page says {printed}, computed {computed:R}.");
    }

    /// <summary>Every figure of the example has been asked for.</summary>
    public void IsUsedUp() => Assert.Equal(_given.Keys.Concat(_found.Keys).Order(StringComparer.Ordinal), _asked.Order(StringComparer.Ordinal));

    private static double Number(string text) => double.Parse(text.Split(' ')[0], CultureInfo.InvariantCulture);
}
