using System.Text;

namespace RubLab.Core.Tests;

/// <summary>Reads CSV without the library the product uses, so a fault in that one cannot hide here.</summary>
public static class PlainCsv
{
    /// <summary>The rows as dictionaries from column name to cell.</summary>
    public static List<Dictionary<string, string>> Read(string text)
    {
        var rows = Cells(text);
        var header = rows[0];
        return rows.Skip(1).Select(cells =>
        {
            Assert.True(cells.Count == header.Count, $"{string.Join(',', cells)}: {cells.Count} cells under {header.Count} columns.");
            return header.Zip(cells).ToDictionary(c => c.First, c => c.Second, StringComparer.Ordinal);
        }).ToList();
    }

    public static List<string> Header(string text) => Cells(text)[0];

    private static List<List<string>> Cells(string text)
    {
        var rows = new List<List<string>>();
        var row = new List<string>();
        var cell = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (c == '"')
            {
                if (quoted && i + 1 < text.Length && text[i + 1] == '"')
                {
                    cell.Append(text[++i]);
                }
                else
                {
                    quoted = !quoted;
                }
            }
            else if (quoted || c is not (',' or '\n'))
            {
                cell.Append(c);
            }
            else
            {
                row.Add(cell.ToString());
                cell.Clear();
                if (c == '\n')
                {
                    rows.Add(row);
                    row = [];
                }
            }
        }

        return rows;
    }
}
