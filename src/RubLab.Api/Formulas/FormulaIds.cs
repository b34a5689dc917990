using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace RubLab.Api.Formulas;

/// <summary>Ids of stored formulas: the name in plain letters, so that a path can be read, and eight random hex digits.</summary>
internal static class FormulaIds
{
    public const int Longest = 64;
    private const int LongestSlug = 48;

    public static string For(string name)
    {
        var slug = new StringBuilder();
        foreach (var letter in PlainLetters.Of(name))
        {
            if (char.IsAsciiLetterOrDigit(letter))
            {
                slug.Append(letter);
            }
            else if ((char.IsWhiteSpace(letter) || char.GetUnicodeCategory(letter) == UnicodeCategory.DashPunctuation) && slug.Length > 0 && slug[^1] != '-')
            {
                slug.Append('-');
            }

            if (slug.Length == LongestSlug)
            {
                break;
            }
        }

        var word = slug.ToString().Trim('-');
        return (word.Length == 0 ? "formula" : word) + "-" + RandomNumberGenerator.GetHexString(8, lowercase: true);
    }
}
