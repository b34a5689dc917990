using RubLab.Core.Faults;

namespace RubLab.Contracts.Reading;

/// <summary>Reads names and ids that people and programs give.</summary>
internal static class Names
{
    private const int LongestName = 200;
    private const int LongestId = 64;

    /// <summary>A name for people: any script, no control characters, not blank.</summary>
    public static string? Name(string? name, Place at, bool isRequired)
    {
        if (string.IsNullOrWhiteSpace(name))
        {
            if (isRequired || name is not null)
            {
                at.Fault("required", "A name is needed.");
            }

            return null;
        }

        if (name.Length > LongestName)
        {
            at.Fault("too-long", $"At most {LongestName} characters; this has {name.Length}.", ("most", (double)LongestName), ("length", (double)name.Length));
            return null;
        }

        if (name.Any(char.IsControl) || !IsWellFormed(name))
        {
            at.Fault("bad-text", "Control characters and broken characters are not allowed.");
            return null;
        }

        return name;
    }

    /// <summary>An id made by a client: letters, digits, dot, hyphen and underscore.</summary>
    public static string? Id(string? id, Place at)
    {
        if (id is null)
        {
            return null;
        }

        if (id.Length is > 0 and <= LongestId && id.All(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '_'))
        {
            return id;
        }

        at.Fault(
            "bad-id", $"'{Shown.Text(id)}' is not an id: 1 to {LongestId} of A-Z, a-z, 0-9, dot, hyphen and underscore.",
            ("value", Shown.Text(id)));
        return null;
    }

    private static bool IsWellFormed(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                i++;
            }
            else if (char.IsSurrogate(text[i]))
            {
                return false;
            }
        }

        return true;
    }
}
