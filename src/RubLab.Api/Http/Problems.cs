using RubLab.Contracts.Faults;
using RubLab.Contracts.Json;
using RubLab.Core.Faults;

namespace RubLab.Api.Http;

/// <summary>Writes problem documents.</summary>
public static class Problems
{
    public const string MediaType = "application/problem+json";

    private static readonly Dictionary<string, object> None = [];

    /// <summary>A problem without a field of its own.</summary>
    public static IResult Of(ProblemType type, string? detail = null) => new Answer(type, detail, null);

    /// <summary>One fault in one place.</summary>
    public static IResult Of(ProblemType type, string pointer, string code, string detail) =>
        new Answer(type, detail, [new ErrorResponse(pointer, code, detail, None)]);

    /// <summary>Every broken rule of a request that could be read.</summary>
    public static IResult Of(FaultLog log) => new Answer(
        ProblemTypes.Unprocessable,
        log.Count > FaultLog.Listed ? $"{log.Count} rules are broken; the first {FaultLog.Listed} are listed." : null,
        ErrorResponse.From(log));

    public static Task WriteAsync(HttpContext http, ProblemType type, string? detail = null) => Of(type, detail).ExecuteAsync(http);

    private sealed class Answer(ProblemType type, string? detail, IReadOnlyList<ErrorResponse>? errors) : IResult, IValueHttpResult<Problem>
    {
        public Problem Value { get; } = new()
        {
            Type = type.Path,
            Title = type.Title,
            Status = type.Status,
            Detail = detail,
            Errors = errors,
        };

        public Task ExecuteAsync(HttpContext httpContext)
        {
            httpContext.Response.StatusCode = type.Status;
            return httpContext.Response.WriteAsJsonAsync(Value, RubLabJson.Default.Problem, MediaType, httpContext.RequestAborted);
        }
    }
}
