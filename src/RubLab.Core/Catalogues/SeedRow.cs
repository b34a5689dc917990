using System.Globalization;
using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Catalogues;

/// <summary>One row of a seed table, its cells asked for by column name.</summary>
internal sealed class SeedRow(SeedTable table, int line, string[] cells)
{
    public string Text(string column) => cells[table.IndexOf(column)];

    public string Required(string column)
    {
        var text = Text(column);
        return text.Length > 0 ? text : throw Wrong(column, "is blank");
    }

    public string[] Words(string column) =>
        Text(column).Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    public bool Flag(string column) => Text(column) switch
    {
        "true" => true,
        "false" or "" => false,
        _ => throw Wrong(column, "is neither true nor false"),
    };

    public double Number(string column) => OptionalNumber(column) ?? throw Wrong(column, "is blank");

    public double Positive(string column) => Number(column) is > 0 and var value ? value : throw Wrong(column, "is not above zero");

    public double? OptionalNumber(string column)
    {
        var text = Text(column);
        if (text.Length == 0)
        {
            return null;
        }

        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)
            ? value
            : throw Wrong(column, "is not a number");
    }

    /// <summary>Three columns named <c>{prefix}_low{suffix}</c>, <c>_typical</c> and <c>_high</c>.</summary>
    public Band Band(string prefix, string suffix)
    {
        try
        {
            return new Band(Number($"{prefix}_low{suffix}"), Number($"{prefix}_typical{suffix}"), Number($"{prefix}_high{suffix}"));
        }
        catch (ArgumentException e)
        {
            throw Wrong(prefix, e.Message);
        }
    }

    public Confidence Confidence(string column = "confidence") => Text(column) switch
    {
        "high" => Sources.Confidence.High,
        "good" => Sources.Confidence.Good,
        "fair" => Sources.Confidence.Fair,
        "low" => Sources.Confidence.Low,
        "very-low" => Sources.Confidence.VeryLow,
        _ => throw Wrong(column, "is not a confidence"),
    };

    public Citation Citation(Confidence confidence) => new(Required("source_id"), Text("locator"), confidence);

    public Citation Citation() => Citation(Confidence());

    public InvalidDataException Wrong(string column, string what) =>
        new($"{table.Name} line {line}: {column} {what}.");
}
