using System.Text;

namespace RubLab.Contracts.Outputs;

/// <summary>Text as it may stand in HTML, between tags or in a quoted attribute.</summary>
internal static class Html
{
    public static string Text(string text)
    {
        StringBuilder? encoded = null;
        for (var i = 0; i < text.Length; i++)
        {
            var replaced = text[i] switch
            {
                '&' => "&amp;",
                '<' => "&lt;",
                '>' => "&gt;",
                '"' => "&quot;",
                '\'' => "&#39;",
                // Not allowed in a document, not even written as a reference.
                '\uFFFE' or '\uFFFF' => "\uFFFD",
                _ when char.IsControl(text[i]) => " ",
                _ => null,
            };
            if (replaced is not null)
            {
                encoded ??= new StringBuilder(text, 0, i, text.Length + 16);
                encoded.Append(replaced);
            }
            else
            {
                encoded?.Append(text[i]);
            }
        }

        return encoded?.ToString() ?? text;
    }
}
