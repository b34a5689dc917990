using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace RubLab.Api.OpenApi;

/// <summary>Title, the words of each tag and the key scheme.</summary>
internal sealed class DescribeDocument : IOpenApiDocumentTransformer
{
    private const string KeyScheme = "key";

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
            new() { Name = "Measuring", Description = "Between mass and volume, by ingredient and form." },
            new() { Name = "Formulas", Description = "The kitchen's formula library, with revisions and a feed of changes." },
            new() { Name = "Reference", Description = "The reference data every answer is computed with, each figure with its source." },
            new() { Name = "Service", Description = "The server itself." },
        };
        AddKeys(document);
        return Task.CompletedTask;
    }

    // An empty requirement beside the key's says that the key is optional.
    private static void AddKeys(OpenApiDocument document)
    {
        document.AddComponent<IOpenApiSecurityScheme>(KeyScheme, new OpenApiSecurityScheme
        {
            Type = SecuritySchemeType.Http,
            Scheme = "bearer",
            Description = "A key of the kitchen, with scope read, and write for what changes the formula library. "
                + "Optional on loopback: the machine itself, by a loopback name and not through a proxy, works in the local kitchen without one.",
        });
        foreach (var (path, item) in document.Paths)
        {
            foreach (var operation in item.Operations!.Values)
            {
                operation.Security = path.StartsWith("/v1/", StringComparison.Ordinal)
                    ? [new OpenApiSecurityRequirement { [new OpenApiSecuritySchemeReference(KeyScheme, document)] = [] }, new OpenApiSecurityRequirement()]
                    : [];
            }
        }
    }
}
