using System.Globalization;

namespace RubLab.Core.Tests.Published;

/// <summary>A published result with its source beside it.</summary>
public sealed record PublishedCase(
    string Id, string Inputs, string PrintedAnswer, string Unit, string Source, string Locator, double Tolerance, string Why)
{
    public double Answer => NumberOf(PrintedAnswer);

    /// <summary>An input, written <c>name=value</c> among others parted by semicolons.</summary>
    public double Input(string name) => NumberOf(InputText(name));

    public string InputText(string name) => Inputs.Split(';', StringSplitOptions.TrimEntries)
        .Select(part => part.Split('=', 2))
        .Single(pair => pair[0] == name)[1];

    public void AssertIs(double computed) => Assert.True(
        Math.Abs(computed - Answer) <= Tolerance,
        $"{Id}: computed {computed:R}, printed {PrintedAnswer} {Unit} give or take {Tolerance} ({Why}).");

    public static List<PublishedCase> Read(string file) =>
        PlainCsv.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Published", file))).ConvertAll(row => new PublishedCase(
            row["case_id"], row["inputs"], row["printed_answer"], row["unit"], row["source"], row["locator"],
            double.Parse(row["tolerance"], CultureInfo.InvariantCulture), row["why"]));

    /// <summary>A decimal, or a quotient of two where a definition has no finite decimal.</summary>
    public static double NumberOf(string text)
    {
        var parts = text.Split('/');
        var number = double.Parse(parts[0], CultureInfo.InvariantCulture);
        return parts.Length == 1 ? number : number / double.Parse(parts[1], CultureInfo.InvariantCulture);
    }
}
