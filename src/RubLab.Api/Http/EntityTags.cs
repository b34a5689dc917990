using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace RubLab.Api.Http;

/// <summary>Entity tags: of reference data from its edition, of a formula from its revision and what its answer is computed with.</summary>
public static partial class EntityTags
{
    /// <summary>The tag of something that changes with the edition alone.</summary>
    public static string OfEdition(string dataVersion) => $"\"{dataVersion}\"";

    /// <summary>The tag of a formula read back.</summary>
    public static string OfFormula(long revision, string dataVersion, long densityRevision) =>
        string.Create(CultureInfo.InvariantCulture, $"\"r{revision}-{dataVersion}-d{densityRevision}\"");

    /// <summary>The tag of something stored that nothing else enters into.</summary>
    public static string OfRevision(long revision, string dataVersion) => OfFormula(revision, dataVersion, 0);

    /// <summary>The tag of a formula read back as a recipe: another answer from the same revision.</summary>
    public static string OfRecipe(long revision, string dataVersion, long densityRevision) =>
        string.Create(CultureInfo.InvariantCulture, $"\"r{revision}-{dataVersion}-d{densityRevision}-ld\"");

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

        // The edition may be an earlier one: it changes what is computed from a revision, not the revision.
        return OfAnyFormula().Match(tag) is { Success: true } match
            && long.TryParse(match.Groups[1].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var revision)
            ? (IfMatch.Revision, revision)
            : (IfMatch.Unknown, 0);
    }

    [GeneratedRegex("^\"r([0-9]+)-[^\"]+-d[0-9]+(-ld)?\"$")]
    private static partial Regex OfAnyFormula();
}
