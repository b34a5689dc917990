using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using RubLab.Api.Callers;

namespace RubLab.Api.OpenApi;

/// <summary>Title, the words of each tag and the ways to be let in.</summary>
internal sealed class DescribeDocument : IOpenApiDocumentTransformer
{
    private const string KeyScheme = "key";
    private const string DeviceScheme = "device";
    private const string PlainDeviceScheme = "deviceWithoutTls";

    public Task TransformAsync(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        document.Info = new OpenApiInfo
        {
            Title = "RubLab",
            Version = "1",
            Description = "Dry brines, rubs, mops and sauces as ratios to meat weight: batch sheets to the weighing step, salt ledgers with their bands, and conversions by grind.\n\n"
                + "Members may be added to answers; a request with a member that is not named here is refused. A member left out and a member that is null mean the same.",
        };
        document.Servers = [new OpenApiServer { Url = "/" }];
        document.Tags = new HashSet<OpenApiTag>
        {
            new() { Name = "Bench", Description = "Computed documents: post what you have, get what to weigh and how salty it comes out. Nothing is stored." },
            new() { Name = "Serving", Description = "From guests to meat and money and back, and the kitchen's own cooking yields." },
            new() { Name = "Measuring", Description = "Between mass and volume, by ingredient and form." },
            new() { Name = "Formulas", Description = "The kitchen's formula library, with revisions and a feed of changes." },
            new() { Name = "Devices", Description = "Phones and tablets of the kitchen: paired by a code, let in by a cookie, unpaired again." },
            new() { Name = "Reference", Description = "The reference data every answer is computed with, each figure with its source." },
            new() { Name = "Service", Description = "The server itself." },
        };
        AddKeys(document);
        return Task.CompletedTask;
    }

    // An empty requirement beside the others says that they are optional.
    private static void AddKeys(OpenApiDocument document)
    {
        document.AddComponent<IOpenApiSecurityScheme>(KeyScheme, new OpenApiSecurityScheme
        {
            Type = SecuritySchemeType.Http,
            Scheme = "bearer",
            Description = "A key of the kitchen, with scope read, write for what changes the formula library, and pair for what concerns devices. "
                + "Optional on loopback: the machine itself, by a loopback name and not through a proxy, works in the local kitchen without one.",
        });
        document.AddComponent<IOpenApiSecurityScheme>(DeviceScheme, Cookie(
            SessionCookie.SecureName,
            "A paired device's cookie over TLS, set by createSession: HttpOnly, Secure, SameSite=Strict. With it, any method but GET has to come from a page of "
            + "this server, by Origin or Sec-Fetch-Site. A key that is sent too comes before it."));
        document.AddComponent<IOpenApiSecurityScheme>(PlainDeviceScheme, Cookie(
            SessionCookie.PlainName, "The same over plain http, so without Secure: whoever shares the network can read and copy it."));
        foreach (var (path, item) in document.Paths)
        {
            foreach (var operation in item.Operations!.Values)
            {
                operation.Security = path.StartsWith("/v1/", StringComparison.Ordinal) && operation.OperationId != "createSession"
                    ? [Needs(KeyScheme, document), Needs(DeviceScheme, document), Needs(PlainDeviceScheme, document), new OpenApiSecurityRequirement()]
                    : [];
            }
        }
    }

    private static OpenApiSecurityRequirement Needs(string scheme, OpenApiDocument document) =>
        new() { [new OpenApiSecuritySchemeReference(scheme, document)] = [] };

    private static OpenApiSecurityScheme Cookie(string name, string description) => new()
    {
        Type = SecuritySchemeType.ApiKey,
        In = ParameterLocation.Cookie,
        Name = name,
        Description = description,
    };
}
