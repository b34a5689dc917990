using System.Text;

namespace RubLab.Api.Http;

/// <summary>Turns the path a JSON reader reports (<c>$.pile[0].cut</c>, <c>$['a.b']</c>) into a JSON pointer (<c>/pile/0/cut</c>).</summary>
public static class JsonPointers
{
    public static string FromPath(string? path)
    {
        if (string.IsNullOrEmpty(path) || path[0] != '$')
        {
            return "";
        }

        var pointer = new StringBuilder();
        var at = 1;
        while (at < path.Length)
        {
            var (token, next) = path[at] == '[' ? Bracketed(path, at) : Dotted(path, at);
            pointer.Append('/').Append(Escaped(token));
            at = next;
        }

        return pointer.ToString();
    }

    /// <summary>The pointer to a member by its parent's.</summary>
    public static string Child(string pointer, string member) => pointer + "/" + Escaped(member);

    /// <summary>The pointer to a member that the reader names; the path it reports mostly ends in it.</summary>
    /// <remarks>Taken off the path by its text: the reader escapes nothing, so a quote in the name would end it early.</remarks>
    public static string OfMember(string? path, string member)
    {
        var parent = path ?? "";
        foreach (var last in (ReadOnlySpan<string>)["." + member, $"['{member}']"])
        {
            if (parent.EndsWith(last, StringComparison.Ordinal))
            {
                parent = parent[..^last.Length];
                break;
            }
        }

        return Child(FromPath(parent), member);
    }

    private static string Escaped(string token) =>
        token.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);

    private static (string Token, int Next) Bracketed(string path, int at)
    {
        if (at + 1 < path.Length && path[at + 1] == '\'')
        {
            var close = path.IndexOf("']", at + 2, StringComparison.Ordinal);
            return close < 0 ? (path[(at + 2)..], path.Length) : (path[(at + 2)..close], close + 2);
        }

        var end = path.IndexOf(']', at);
        return end < 0 ? (path[(at + 1)..], path.Length) : (path[(at + 1)..end], end + 1);
    }

    private static (string Token, int Next) Dotted(string path, int at)
    {
        var start = path[at] == '.' ? at + 1 : at;
        var end = path.AsSpan(start).IndexOfAny('.', '[');
        return end < 0 ? (path[start..], path.Length) : (path[start..(start + end)], start + end);
    }
}
