using System.Collections.Concurrent;
using System.Reflection;
using Microsoft.AspNetCore.Mvc;
using RubLab.Contracts.Reading;

namespace RubLab.Api.Http;

/// <summary>Refuses query parameters the endpoint does not have: a misspelt one would silently change the answer.</summary>
public sealed class KnownQuery(RequestDelegate next)
{
    private static readonly ConcurrentDictionary<Endpoint, HashSet<string>> Names = [];

    public Task InvokeAsync(HttpContext http)
    {
        if (http.Request.Query.Count == 0
            || !http.Request.Path.StartsWithSegments("/v1")
            || http.GetEndpoint() is not { } endpoint
            || endpoint.Metadata.GetMetadata<MethodInfo>() is not { } handler)
        {
            return next(http);
        }

        var known = Names.GetOrAdd(endpoint, static (_, method) => NamesOf(method), handler);
        return http.Request.Query.Keys.FirstOrDefault(name => !known.Contains(name)) is { } unknown
            ? Refusal(unknown, known).ExecuteAsync(http)
            : next(http);
    }

    private static IResult Refusal(string unknown, HashSet<string> known) => Problems.Of(
        ProblemTypes.Unreadable,
        JsonPointers.Child("", unknown),
        "unknown-parameter",
        $"There is no query parameter '{Shown.Text(unknown)}' here; {(known.Count == 0 ? "this path takes none" : "there is " + string.Join(", ", known))}.");

    // As the framework binds them, so without regard to case.
    private static HashSet<string> NamesOf(MethodInfo handler) => handler.GetParameters()
        .SelectMany(p => p.IsDefined(typeof(AsParametersAttribute))
            ? p.ParameterType.GetProperties().Select(member => (Member: (ICustomAttributeProvider)member, member.Name))
            : [(p, p.Name!)])
        .Select(p => (Query: p.Member.GetCustomAttributes(typeof(FromQueryAttribute), inherit: true).Cast<FromQueryAttribute>().FirstOrDefault(), p.Name))
        .Where(p => p.Query is not null)
        .Select(p => p.Query!.Name ?? p.Name)
        .ToHashSet(StringComparer.OrdinalIgnoreCase);
}
