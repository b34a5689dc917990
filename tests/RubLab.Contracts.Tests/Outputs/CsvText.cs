using System.Text;

namespace RubLab.Contracts.Tests.Outputs;

/// <summary>Reads CSV as RFC 4180 has it, and nothing laxer.</summary>
internal static class CsvText
{
    /// <summary>The records, each as long as the first.</summary>
    public static List<string[]> Read(string text)
    {
        var records = new List<string[]>();
        var cells = new List<string>();
        var at = 0;
        while (at < text.Length)
        {
            cells.Add(text[at] == '"' ? Quoted(text, ref at) : Bare(text, ref at));
            if (text[at] == ',')
            {
                at++;
                continue;
            }

            Assert.Equal("\r\n", text.Substring(at, 2));
            at += 2;
            records.Add([.. cells]);
            cells.Clear();
        }

        Assert.Empty(cells);
        Assert.All(records, r => Assert.Equal(records[0].Length, r.Length));
        return records;
    }

    /// <summary>The records after the header, by column name.</summary>
    public static List<Dictionary<string, string>> ReadNamed(string text)
    {
        var records = Read(text);
        return records.Skip(1).Select(r => records[0].Zip(r).ToDictionary(c => c.First, c => c.Second)).ToList();
    }

    private static string Bare(string text, ref int at)
    {
        var start = at;
        while (text[at] is not (',' or '\r'))
        {
            Assert.DoesNotContain(text[at], "\"\n");
            at++;
        }

        return text[start..at];
    }

    private static string Quoted(string text, ref int at)
    {
        var cell = new StringBuilder();
        for (at++; ; at++)
        {
            if (text[at] == '"')
            {
                at++;
                if (text[at] != '"')
                {
                    Assert.Contains(text[at], ",\r");
                    return cell.ToString();
                }
            }

            cell.Append(text[at]);
        }
    }
}
