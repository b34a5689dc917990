using System.Text;

namespace RubLab.Api.Formulas;

/// <summary>Latin letters without their marks: in the service's invariant culture the runtime takes none apart.</summary>
internal static class PlainLetters
{
    private static readonly Dictionary<char, string> Plain = Read(
        "a àáâãäåāăą", "ae æ", "c çćĉċč", "d ďđð", "e èéêëēĕėęě", "g ĝğġģ", "h ĥħ", "i ìíîïĩīĭįı", "ij ĳ", "j ĵ", "k ķĸ", "l ĺļľŀł",
        "n ñńņňŉŋ", "o òóôõöøōŏő", "oe œ", "r ŕŗř", "s śŝşšșſ", "ss ß", "t ţťŧț", "th þ", "u ùúûüũūŭůűų", "w ŵ", "y ýÿŷ", "z źżž");

    /// <summary>The text in lower case, its Latin letters plain; what has no plain letter stays as it is.</summary>
    public static string Of(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var letter in text)
        {
            var small = char.ToLowerInvariant(letter);
            plain.Append(Plain.TryGetValue(small, out var letters) ? letters : small);
        }

        return plain.ToString();
    }

    private static Dictionary<char, string> Read(params ReadOnlySpan<string> rows)
    {
        var plain = new Dictionary<char, string>();
        foreach (var row in rows)
        {
            var parts = row.Split(' ');
            foreach (var marked in parts[1])
            {
                plain.Add(marked, parts[0]);
            }
        }

        return plain;
    }
}
