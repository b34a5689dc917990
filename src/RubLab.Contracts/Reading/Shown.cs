namespace RubLab.Contracts.Reading;

/// <summary>What a person sent, as it may be shown back to them.</summary>
public static class Shown
{
    private const int Longest = 80;

    /// <summary>The text, cut where it would drown the message; never through a surrogate pair.</summary>
    public static string Text(string text)
    {
        if (text.Length <= Longest)
        {
            return text;
        }

        var end = char.IsHighSurrogate(text[Longest - 1]) ? Longest - 1 : Longest;
        return text[..end] + "...";
    }
}
