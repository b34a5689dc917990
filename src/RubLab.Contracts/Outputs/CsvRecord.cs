using System.Buffers;
using System.Text;

namespace RubLab.Contracts.Outputs;

/// <summary>Writes one record of a CSV file at a time (RFC 4180).</summary>
internal sealed class CsvRecord
{
    // A spreadsheet reads a cell that starts with one of these as a formula, or drops the first and then does.
    private static readonly SearchValues<char> Risky = SearchValues.Create("=+-@\t\r");

    private static readonly SearchValues<char> NeedsQuotes = SearchValues.Create(",\"\r\n");

    private readonly StringBuilder _text = new();

    /// <summary>Adds words, made harmless for a spreadsheet; null is an empty cell.</summary>
    public CsvRecord Text(string? cell)
    {
        var harmless = cell is { Length: > 0 } && Risky.Contains(cell[0]) ? "'" + cell : cell ?? "";
        return Add(harmless.AsSpan().ContainsAny(NeedsQuotes)
            ? $"\"{harmless.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
            : harmless);
    }

    /// <summary>Adds a number.</summary>
    public CsvRecord Number(double cell) => Add(PlainNumber.Of(cell));

    /// <summary>Adds a cell with nothing in it.</summary>
    public CsvRecord Empty() => Add("");

    /// <summary>The record with its line end; the next one starts afresh.</summary>
    public string End()
    {
        // The last comma makes way for the line end.
        _text.Length--;
        var record = _text.Append("\r\n").ToString();
        _text.Clear();
        return record;
    }

    private CsvRecord Add(string cell)
    {
        _text.Append(cell).Append(',');
        return this;
    }
}
