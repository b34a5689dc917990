using System.Text.Json;
using Microsoft.OpenApi;
using RubLab.Api.Callers;
using RubLab.Api.Http;
using RubLab.Contracts.Faults;
using RubLab.Contracts.Json;

namespace RubLab.Api.OpenApi;

/// <summary>The refusals that are the same for every operation, each with an example the code itself wrote.</summary>
internal static class SharedRefusals
{
    private const string HostNotAllowed = "HostNotAllowed";

    /// <summary>The component for a kind of problem; none for broken rules, which differ by operation.</summary>
    public static string? NameOf(ProblemType type, bool hasBody) => type switch
    {
        _ when type == ProblemTypes.Unprocessable => null,
        _ when type == ProblemTypes.Unreadable && !hasBody => HostNotAllowed,
        _ => string.Concat(type.Name.Split('-').Select(w => char.ToUpperInvariant(w[0]) + w[1..])),
    };

    public static IEnumerable<(string Name, OpenApiResponse Response)> All(OpenApiDocument document)
    {
        var host = Loopback.HostNotAllowed();
        yield return Shared(
            ProblemTypes.KeyNeeded, document, ("unknownKey", Access.UnknownKey()), ("noKey", Problems.Of(ProblemTypes.KeyNeeded)),
            ("unknownDevice", Access.UnknownDevice()));
        yield return Shared(
            ProblemTypes.NotAllowed, document, ("scope", Access.MissingScope(Caller.WriteScope)), ("origin", Loopback.OtherOrigin()),
            ("unshownOrigin", Access.UnshownOrigin()));
        yield return Shared(ProblemTypes.NotFound, document, ("notFound", Problems.Of(ProblemTypes.NotFound)));
        yield return Shared(ProblemTypes.NotAcceptable, document, ("notAcceptable", Problems.Of(ProblemTypes.NotAcceptable)));
        yield return Shared(ProblemTypes.TooMany, document, ("tooMany", Problems.Of(ProblemTypes.TooMany)));
        yield return Shared(ProblemTypes.Stale, document, ("stale", Problems.Of(ProblemTypes.Stale, "The formula is at revision 2 by now.")));
        yield return Shared(ProblemTypes.TooLarge, document, ("tooLarge", Problems.Of(ProblemTypes.TooLarge)));
        yield return Shared(ProblemTypes.UnsupportedMediaType, document, ("mediaType", Problems.Of(ProblemTypes.UnsupportedMediaType)));
        yield return Shared(ProblemTypes.PreconditionNeeded, document, ("noIfMatch", Problems.Of(ProblemTypes.PreconditionNeeded)));
        yield return Shared(ProblemTypes.Broken, document, ("broken", Problems.Of(ProblemTypes.Broken)));
        yield return Shared(ProblemTypes.Unavailable, document, ("busy", Problems.Of(ProblemTypes.Unavailable)));
        yield return Shared(
            ProblemTypes.Unreadable, document,
            ("unknownMember", WhenRead("""{"lines":[{"ingredient":"salt","weight":4}]}""")),
            ("duplicateMember", WhenRead("""{"kind":"rub","kind":"mop"}""")),
            ("wrongType", WhenRead("""{"lines":[{"nitriteFraction":"0.0625"}]}""")),
            ("notJson", WhenRead("""{"name":"Lockside pork rub",}""")),
            ("hostNotAllowed", host));
        var (_, response) = Shared(ProblemTypes.Unreadable, document, ("hostNotAllowed", host));
        yield return (HostNotAllowed, response);
    }

    /// <summary>A problem as an example.</summary>
    public static OpenApiExample Example(IResult problem) => new()
    {
        Value = JsonSerializer.SerializeToNode(((IValueHttpResult<Problem>)problem).Value!, RubLabJson.Default.Problem),
    };

    // What the API's own reader says about a formula that cannot be read.
    private static IResult WhenRead(string formula)
    {
        try
        {
            JsonSerializer.Deserialize(formula, RubLabJson.Default.FormulaRequest);
            throw new InvalidOperationException("The example can be read.");
        }
        catch (JsonException unreadable)
        {
            return UnreadableRequests.AnswerTo(new BadHttpRequestException("", unreadable))!;
        }
    }

    private static (string Name, OpenApiResponse Response) Shared(
        ProblemType type, OpenApiDocument document, params ReadOnlySpan<(string Name, IResult Problem)> examples)
    {
        var content = new OpenApiMediaType
        {
            Schema = new OpenApiSchemaReference(nameof(Problem), document),
            Examples = new Dictionary<string, IOpenApiExample>(StringComparer.Ordinal),
        };
        foreach (var (name, problem) in examples)
        {
            content.Examples[name] = Example(problem);
        }

        var asksForKey = type == ProblemTypes.KeyNeeded || type == ProblemTypes.NotAllowed || type == ProblemTypes.Unreadable;
        return (NameOf(type, hasBody: true)!, new OpenApiResponse
        {
            Description = type.Title + " " + type.Explanation,
            Headers = asksForKey ? ResponseHeaders.OfKeys(document) : type == ProblemTypes.TooMany ? ResponseHeaders.OfWaiting(document) : null,
            Content = new Dictionary<string, OpenApiMediaType>(StringComparer.Ordinal) { [Problems.MediaType] = content },
        });
    }
}
