namespace RubLab.Api.Http;

/// <summary>Every kind of problem the host answers with.</summary>
public static class ProblemTypes
{
    public static readonly ProblemType Unreadable = new(
        "unreadable", 400, "The request cannot be read.",
        "The JSON is broken, a member is unknown, given twice or of the wrong type, or the host name is not this server's. The first such fault is in errors, with a JSON pointer to where it stands.");

    public static readonly ProblemType KeyNeeded = new(
        "key-needed", 401, "A key is needed.",
        "Send a key of the kitchen as Authorization: Bearer, or pair this device with a code. Without either, only this machine itself is served, by its loopback address and not through a proxy.");

    public static readonly ProblemType NotAllowed = new(
        "not-allowed", 403, "Not allowed.",
        "The key or device lacks the scope this needs, or a page of another origin sent the request.");

    public static readonly ProblemType NotFound = new(
        "not-found", 404, "There is nothing here.", "The path names nothing that exists in this kitchen or on this server.");

    public static readonly ProblemType MethodNotAllowed = new(
        "method-not-allowed", 405, "This method does not exist here.", "See the Allow header for the methods of this path.");

    public static readonly ProblemType NotAcceptable = new(
        "not-acceptable", 406, "No such representation.", "Every path answers in application/json; the description says where there is more. The Accept header rules out all there is here.");

    public static readonly ProblemType Stale = new(
        "stale", 412, "It has changed since you read it.",
        "If-Match names a revision that is no longer the latest. Read it again and decide which version holds.");

    public static readonly ProblemType TooLarge = new(
        "too-large", 413, "The body is too large.", "Bodies are limited to 4 MB. Give counts instead of lists of equal pieces, or split the pile.");

    public static readonly ProblemType UnsupportedMediaType = new(
        "unsupported-media-type", 415, "Send application/json.", "Bodies are read as application/json alone.");

    public static readonly ProblemType Unprocessable = new(
        "unprocessable", 422, "The request breaks rules.",
        "It could be read, but not every member makes sense. Each broken rule is in errors, with a JSON pointer, a code, the reason and its figures.");

    public static readonly ProblemType PreconditionNeeded = new(
        "precondition-needed", 428, "Say which version you mean.", "Replacing and deleting need If-Match with the ETag that was read.");

    public static readonly ProblemType TooMany = new(
        "too-many-requests", 429, "Too many requests.", "Wait as long as Retry-After says.");

    public static readonly ProblemType Broken = new(
        "broken", 500, "The server failed.", "This is a fault of the server; it has been logged.");

    public static readonly ProblemType Unavailable = new(
        "unavailable", 503, "The store is not available.", "The database is busy or cannot be reached; try again.");

    public static IReadOnlyList<ProblemType> All { get; } =
    [
        Unreadable, KeyNeeded, NotAllowed, NotFound, MethodNotAllowed, NotAcceptable, Stale, TooLarge,
        UnsupportedMediaType, Unprocessable, PreconditionNeeded, TooMany, Broken, Unavailable,
    ];

    public static ProblemType OfStatus(int status) => All.FirstOrDefault(t => t.Status == status) ?? (status < 500 ? Unreadable : Broken);
}
