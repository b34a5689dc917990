using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using RubLab.Api.Http;
using RubLab.Contracts.Outputs;

namespace RubLab.Api.OpenApi;

/// <summary>Gives each representation of an answer a schema of its own; the framework knows one for each status.</summary>
internal sealed class DescribeRepresentations : IOpenApiDocumentTransformer
{
    public async Task TransformAsync(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        var recipe = await context.GetOrCreateSchemaAsync(typeof(RecipeResponse), cancellationToken: cancellationToken);
        document.AddComponent<IOpenApiSchema>(nameof(RecipeResponse), recipe);
        var contents = document.Paths.Values.SelectMany(p => p.Operations!.Values)
            .SelectMany(o => o.Responses!.Values).SelectMany(r => r.Content ?? new Dictionary<string, OpenApiMediaType>());
        foreach (var (type, content) in contents)
        {
            content.Schema = type switch
            {
                Negotiation.Html or Negotiation.Csv or Negotiation.Svg => new OpenApiSchema { Type = JsonSchemaType.String },
                Negotiation.JsonLd => new OpenApiSchemaReference(nameof(RecipeResponse), document),
                _ => content.Schema,
            };
        }
    }
}
