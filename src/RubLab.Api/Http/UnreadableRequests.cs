using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Diagnostics;
using RubLab.Contracts.Reading;
using RubLab.Storage.Refusals;

namespace RubLab.Api.Http;

/// <summary>Answers for what the framework throws when a request cannot be read, and for a store that is not there.</summary>
public sealed partial class UnreadableRequests : IExceptionHandler
{
    public async ValueTask<bool> TryHandleAsync(HttpContext httpContext, Exception exception, CancellationToken cancellationToken)
    {
        if (AnswerTo(exception) is not { } answer)
        {
            return false;
        }

        await answer.ExecuteAsync(httpContext);
        return true;
    }

    /// <summary>The answer; none for what is no fault of the request.</summary>
    public static IResult? AnswerTo(Exception exception) => exception switch
    {
        BadHttpRequestException { InnerException: JsonException json } => OfJson(json),
        BadHttpRequestException { StatusCode: StatusCodes.Status413PayloadTooLarge } => Problems.Of(ProblemTypes.TooLarge),
        BadHttpRequestException { StatusCode: StatusCodes.Status415UnsupportedMediaType } => Problems.Of(ProblemTypes.UnsupportedMediaType),
        BadHttpRequestException => Problems.Of(ProblemTypes.Unreadable, "", "unreadable", "The request could not be read: is there a JSON body?"),
        BusyDatabaseException or UnreachableDatabaseException => Problems.Of(ProblemTypes.Unavailable),
        _ => null,
    };

    // The reader's own messages name our types and are not for the sender; what matters is where and which of five
    // things is wrong.
    private static IResult OfJson(JsonException json)
    {
        var pointer = JsonPointers.FromPath(json.Path);
        var unmapped = UnknownMember().Match(json.Message);
        if (unmapped.Success)
        {
            var member = unmapped.Groups[1].Value;
            return Fault(JsonPointers.OfMember(json.Path, member), "unknown-member", $"There is no member '{Shown.Text(member)}' here.");
        }

        var twice = DuplicateMember().Match(json.Message);
        if (twice.Success)
        {
            var member = twice.Groups[1].Value;
            return Fault(JsonPointers.OfMember(json.Path, member), "duplicate-member", $"The member '{Shown.Text(member)}' is given twice.");
        }

        var place = json is { LineNumber: { } line, BytePositionInLine: { } position }
            ? $" (line {line + 1}, byte {position + 1})"
            : "";
        if (json.InnerException is InvalidOperationException inner && BrokenText().IsMatch(inner.Message))
        {
            return Fault(pointer, "bad-text", $"The text here is broken: it is not UTF-8, or has half a surrogate pair{place}.");
        }

        return json.InnerException is not null && !json.Message.StartsWith("The JSON value could not be converted", StringComparison.Ordinal)
            ? Fault(pointer, "not-json", $"This is not JSON{place}.")
            : Fault(pointer, "wrong-type", $"{ExpectedTypes.InWords(json)} is expected here{place}.");
    }

    private static IResult Fault(string pointer, string code, string detail) => Problems.Of(ProblemTypes.Unreadable, pointer, code, detail);

    [GeneratedRegex("^The JSON property '(.*)' could not be mapped", RegexOptions.Singleline)]
    private static partial Regex UnknownMember();

    [GeneratedRegex("^Cannot (transcode invalid UTF-8|read (incomplete|invalid) UTF-16)")]
    private static partial Regex BrokenText();

    [GeneratedRegex("^Duplicate property '(.*)' encountered", RegexOptions.Singleline)]
    private static partial Regex DuplicateMember();
}
