using System.Diagnostics.CodeAnalysis;

namespace RubLab.Contracts.Pairing;

/// <summary>A pairing code as people read and type it: eight signs in two groups, none of which looks like another.</summary>
/// <remarks>
/// Out of each pair that is mixed up when read aloud or off a screen (0 O D Q, 1 I L, 2 Z, 5 S, 8 B, 6 G, U V) at most one is left,
/// and no vowel, so that no code is a word. 20 signs in 8 places are 2.56e10 codes.
/// </remarks>
public static class PairingCodeText
{
    public const int Length = 8;
    public const string Alphabet = "34679CDFHJKMNPRTVWXY";

    private const int GroupLength = 4;
    private const int MostTyped = 40;

    /// <summary>The code in two groups, as it is shown.</summary>
    public static string Show(string code)
    {
        ArgumentNullException.ThrowIfNull(code);
        return $"{code[..GroupLength]}-{code[GroupLength..]}";
    }

    /// <summary>The code in what was typed: small letters, spaces and hyphens do not matter.</summary>
    public static bool TryRead(string? typed, [NotNullWhen(true)] out string? code)
    {
        code = null;
        if (typed is not { Length: <= MostTyped })
        {
            return false;
        }

        var signs = string.Concat(typed.Where(c => c is not (' ' or '-')).Select(char.ToUpperInvariant));
        if (signs.Length == Length && signs.All(Alphabet.Contains))
        {
            code = signs;
        }

        return code is not null;
    }
}
