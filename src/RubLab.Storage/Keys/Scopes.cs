namespace RubLab.Storage.Keys;

/// <summary>Scopes as one text: words with a space between.</summary>
internal static class Scopes
{
    /// <exception cref="ArgumentException">A scope is not one word.</exception>
    public static string Join(IReadOnlyCollection<string> scopes)
    {
        ArgumentNullException.ThrowIfNull(scopes);
        foreach (var scope in scopes)
        {
            if (scope.Length == 0 || scope.Any(char.IsWhiteSpace))
            {
                throw new ArgumentException($"'{scope}' is not a scope: a scope is one word.", nameof(scopes));
            }
        }

        return string.Join(' ', scopes);
    }

    public static IReadOnlyList<string> Split(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
}
