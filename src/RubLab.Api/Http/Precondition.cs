using RubLab.Storage;

namespace RubLab.Api.Http;

/// <summary>Holds a write against the revision its sender has seen, in the words of what is written.</summary>
/// <param name="This">As in "not one ETag of this formula".</param>
/// <param name="Is">As in "The formula is at revision 3".</param>
internal sealed record Precondition(string This, string Is)
{
    /// <summary>The revision that a write over what is there is meant for, by its If-Match.</summary>
    public (long Revision, IResult? Refusal) Over(HttpRequest request, long current)
    {
        var (kind, revision) = EntityTags.RevisionOf(request);
        return kind switch
        {
            IfMatch.Absent => (0, Problems.Of(ProblemTypes.PreconditionNeeded)),
            IfMatch.Unknown => (0, NotItsTag()),
            IfMatch.Any => (current, null),
            _ => (revision, null),
        };
    }

    /// <summary>The same of a put, where nothing may be there yet: then its sender cannot have seen anything either.</summary>
    public (long? Revision, IResult? Refusal) OfPut(HttpRequest request, long? current) =>
        current is { } there ? Over(request, there)
        : EntityTags.RevisionOf(request).Kind == IfMatch.Absent ? (null, null)
        : (null, NotItsTag());

    /// <summary>Says why the store wrote nothing.</summary>
    public IResult NotWritten(WriteOutcome outcome, long? currentRevision) => outcome == WriteOutcome.Missing
        ? Problems.Of(ProblemTypes.NotFound)
        : Problems.Of(ProblemTypes.Stale, $"{Is} at revision {currentRevision} by now.");

    private IResult NotItsTag() => Problems.Of(ProblemTypes.Stale, $"If-Match is not one ETag of {This}.");
}
