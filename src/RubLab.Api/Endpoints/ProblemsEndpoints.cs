using System.Net;
using RubLab.Api.Http;

namespace RubLab.Api.Endpoints;

internal static class ProblemsEndpoints
{
    public static void MapProblems(this IEndpointRouteBuilder app) => app.MapGet("/problems/{name}", Get).ExcludeFromDescription();

    private static IResult Get(string name) =>
        ProblemTypes.All.FirstOrDefault(t => t.Name == name) is { } type
            ? TypedResults.Content(Page(type), "text/html; charset=utf-8")
            : Problems.Of(ProblemTypes.NotFound);

    private static string Page(ProblemType type) => $"""
        <!doctype html>
        <html lang="en"><head><meta charset="utf-8"><title>{WebUtility.HtmlEncode(type.Title)}</title></head>
        <body><h1>{type.Status}: {WebUtility.HtmlEncode(type.Title)}</h1><p>{WebUtility.HtmlEncode(type.Explanation)}</p></body></html>
        """;
}
