using Microsoft.OpenApi;

namespace RubLab.Api.OpenApi;

/// <summary>The headers of answers.</summary>
internal static class ResponseHeaders
{
    private const string ETag = "ETag";
    private const string CacheControl = "Cache-Control";
    private const string Vary = "Vary";
    private const string ContentDisposition = "Content-Disposition";
    private const string Location = "Location";
    private const string WwwAuthenticate = "WWW-Authenticate";
    private const string SetCookie = "Set-Cookie";
    private const string RetryAfter = "Retry-After";

    public static void AddTo(OpenApiDocument document)
    {
        Add(ETag, "Changes with the answer: of reference data with its edition, of a formula with its revision too. Always strong.", "\"r1-2026.3-d0\"");
        Add(CacheControl, "private, no-cache where there is an ETag to ask with; no-store on what is computed from what was sent.", "private, no-cache");
        Add(Vary, "The request headers the answer depends on.", "Authorization, Cookie, Accept");
        Add(ContentDisposition, "A name to save a table under; on text/csv alone.", "attachment; filename=\"batch-sheet-pieces.csv\"");
        Add(Location, "The path of what was stored.", "/v1/formulas/lockside-pork-rub-7c1e9b04");
        Add(WwwAuthenticate, "How to send a key.", "Bearer");
        Add(RetryAfter, "How long to wait, in seconds.", "42");
        Add(
            SetCookie, "The device's cookie, or its end. Set again by any answer, once an hour at most, while the device is used.",
            "__Host-rublab=rubs_…; max-age=7776000; path=/; secure; samesite=strict; httponly");

        void Add(string name, string description, string example) => document.AddComponent<IOpenApiHeader>(name, new OpenApiHeader
        {
            Description = description,
            Schema = new OpenApiSchema { Type = JsonSchemaType.String },
            Example = example,
        });
    }

    /// <summary>Those of a good answer.</summary>
    public static Dictionary<string, IOpenApiHeader>? Of(OpenApiOperation operation, int status, OpenApiDocument document)
    {
        var isTagged = operation.Responses!.ContainsKey("304");
        return (operation.OperationId, status) switch
        {
            ("endCurrentSession", 204) => Named(document, SetCookie),
            (_, 204) or ("getHealth", _) => null,
            ("createSession", _) => Named(document, Location, CacheControl, SetCookie),
            ("createFormula", _) => Named(document, Location, ETag),
            ("replaceFormula", _) => Named(document, ETag),
            ("computeBatchSheet", _) => Named(document, CacheControl, ContentDisposition),
            _ when isTagged => Named(document, ETag, CacheControl, Vary),
            _ => Named(document, CacheControl),
        };
    }

    /// <summary>Those of a refusal for want of a key or a scope.</summary>
    public static Dictionary<string, IOpenApiHeader> OfKeys(OpenApiDocument document) => Named(document, WwwAuthenticate);

    /// <summary>Those of a refusal for want of patience.</summary>
    public static Dictionary<string, IOpenApiHeader> OfWaiting(OpenApiDocument document) => Named(document, RetryAfter);

    private static Dictionary<string, IOpenApiHeader> Named(OpenApiDocument document, params ReadOnlySpan<string> names)
    {
        var headers = new Dictionary<string, IOpenApiHeader>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            headers[name] = new OpenApiHeaderReference(name, document);
        }

        return headers;
    }
}
