using System.Globalization;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace RubLab.Api.Http;

/// <summary>Entity tags: of reference data from its edition, of a formula from its revision and what its answer is computed with.</summary>
public static class EntityTags
{
    /// <summary>The tag of something that changes with the edition alone.</summary>
    public static string OfEdition(string dataVersion) => $"\"{dataVersion}\"";

    /// <summary>The tag of a formula read back.</summary>
    public static string OfFormula(long revision, string dataVersion, long densityRevision) =>
        string.Create(CultureInfo.InvariantCulture, $"\"r{revision}-{dataVersion}-d{densityRevision}\"");

    /// <summary>Whether the sender already has this answer.</summary>
    public static bool IsHeld(HttpRequest request, string tag) =>
        EntityTagHeaderValue.TryParseList(request.Headers.IfNoneMatch, out var held)
        && held.Any(h => h.Tag == "*" || h.Tag == tag);

    /// <summary>The revision that If-Match names: a number, any (<c>*</c>), none given, or nothing we ever sent.</summary>
    public static (IfMatch Kind, long Revision) RevisionOf(HttpRequest request)
    {
        if (StringValues.IsNullOrEmpty(request.Headers.IfMatch))
        {
            return (IfMatch.Absent, 0);
        }

        if (!EntityTagHeaderValue.TryParseList(request.Headers.IfMatch, out var tags) || tags.Count != 1 || tags[0].IsWeak)
        {
            return (IfMatch.Unknown, 0);
        }

        var tag = tags[0].Tag.Value!;
        if (tag == "*")
        {
            return (IfMatch.Any, 0);
        }

        var end = tag.IndexOf('-', StringComparison.Ordinal);
        return tag.StartsWith("\"r", StringComparison.Ordinal) && end > 2
            && long.TryParse(tag.AsSpan(2, end - 2), NumberStyles.None, CultureInfo.InvariantCulture, out var revision)
            ? (IfMatch.Revision, revision)
            : (IfMatch.Unknown, 0);
    }
}
