using nietras.SeparatedValues;

namespace RubLab.Core.Catalogues;

/// <summary>One CSV file of reference data, read whole.</summary>
/// <remarks>Faults here are ours, not a user's: they throw, naming file, row and column.</remarks>
internal sealed class SeedTable
{
    private readonly Dictionary<string, int> _columns;

    private SeedTable(string name, Dictionary<string, int> columns, List<SeedRow> rows)
    {
        Name = name;
        _columns = columns;
        Rows = rows;
    }

    public string Name { get; }

    public List<SeedRow> Rows { get; }

    public static SeedTable Read(IReadOnlyDictionary<string, string> files, string name)
    {
        if (!files.TryGetValue(name, out var text))
        {
            throw new InvalidDataException($"seed-data has no file {name}.");
        }

        try
        {
            return ReadText(name, text);
        }
        catch (Exception e) when (e is ArgumentException or InvalidDataException)
        {
            throw new InvalidDataException($"{name}: {e.Message}", e);
        }
    }

    public int IndexOf(string column) =>
        _columns.TryGetValue(column, out var index) ? index : throw new InvalidDataException($"{Name} has no column {column}.");

    private static SeedTable ReadText(string name, string text)
    {
        using var reader = Sep.New(',').Reader(o => o with { Unescape = true }).FromText(text);
        var columns = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var column in reader.Header.ColNames)
        {
            columns.Add(column, columns.Count);
        }

        var rows = new List<SeedRow>();
        var table = new SeedTable(name, columns, rows);
        foreach (var row in reader)
        {
            var cells = new string[row.ColCount];
            for (var i = 0; i < cells.Length; i++)
            {
                cells[i] = row[i].ToString();
            }

            rows.Add(new SeedRow(table, row.LineNumberFrom, cells));
        }

        return table;
    }
}
