using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace RubLab.Api.OpenApi;

/// <summary>Title, key scheme and the words of each tag.</summary>
internal sealed class DescribeDocument : IOpenApiDocumentTransformer
{
    public Task TransformAsync(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        document.Info = new OpenApiInfo
        {
            Title = "RubLab",
            Version = "1",
            Description = "Dry brines, rubs, mops and sauces as ratios to meat weight: batch sheets to the weighing step, salt ledgers with their bands, and conversions by grind.",
        };
        document.Servers = [new OpenApiServer { Url = "/" }];
        return Task.CompletedTask;
    }
}
