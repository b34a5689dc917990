using RubLab.Api.Http;
using RubLab.Contracts.Faults;

namespace RubLab.Api.Endpoints;

/// <summary>Metadata the routes share.</summary>
internal static class RouteExtensions
{
    /// <summary>Names the operation for clients and says what it does.</summary>
    public static RouteHandlerBuilder Described(this RouteHandlerBuilder route, string operationId, string summary, string? description = null)
    {
        route.WithName(operationId).WithSummary(summary);
        return description is null ? route : route.WithDescription(description);
    }

    /// <summary>Documents problem answers; those of every route (host name, key, store) are added to each.</summary>
    public static RouteHandlerBuilder Refuses(this RouteHandlerBuilder route, params ReadOnlySpan<ProblemType> types)
    {
        foreach (var type in types)
        {
            route.Produces<Problem>(type.Status, Problems.MediaType);
        }

        return route.RefusesUnpaired().Produces<Problem>(ProblemTypes.KeyNeeded.Status, Problems.MediaType);
    }

    /// <summary>Documents the problems of a route that needs no key.</summary>
    public static RouteHandlerBuilder RefusesUnpaired(this RouteHandlerBuilder route) => route
        .Produces<Problem>(ProblemTypes.Unreadable.Status, Problems.MediaType)
        .Produces<Problem>(ProblemTypes.Broken.Status, Problems.MediaType)
        .Produces<Problem>(ProblemTypes.NotAllowed.Status, Problems.MediaType)
        .Produces<Problem>(ProblemTypes.NotAcceptable.Status, Problems.MediaType)
        .Produces<Problem>(ProblemTypes.TooMany.Status, Problems.MediaType)
        .Produces<Problem>(ProblemTypes.Unavailable.Status, Problems.MediaType);

    /// <summary>Documents the problems of a body beyond an unreadable one: too large, of another type, breaking rules.</summary>
    public static RouteHandlerBuilder TakesBody(this RouteHandlerBuilder route) => route
        .Produces<Problem>(ProblemTypes.TooLarge.Status, Problems.MediaType)
        .Produces<Problem>(ProblemTypes.UnsupportedMediaType.Status, Problems.MediaType)
        .Produces<Problem>(ProblemTypes.Unprocessable.Status, Problems.MediaType);
}
