using System.Text.Json.Nodes;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using RubLab.Core.Catalogues;

namespace RubLab.Api.OpenApi;

/// <summary>Puts the kitchen's examples where they belong.</summary>
internal sealed class DescribeExamples(Catalogue catalogue) : IOpenApiDocumentTransformer
{
    public const string Key = "lockside";

    private readonly Dictionary<string, OperationExample> _examples =
        ReferenceExamples.All(catalogue)
            .Concat(FormulaExamples.All(catalogue))
            .Concat(DensityExamples.All(catalogue))
            .Concat(BenchExamples.All(catalogue))
            .Concat(BrineExamples.All(catalogue))
            .Concat(DeviceExamples.All())
            .Concat(ServingExamples.All(catalogue))
            .Concat(CureExamples.All(catalogue))
            .Concat(SaltingExamples.All(catalogue))
            .ToDictionary(e => e.OperationId, e => e.Example, StringComparer.Ordinal);

    public Task TransformAsync(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        foreach (var operation in document.Paths.Values.SelectMany(p => p.Operations!.Values))
        {
            if (_examples.TryGetValue(operation.OperationId!, out var example))
            {
                Show(operation, example);
            }
        }

        return Task.CompletedTask;
    }

    private static void Show(OpenApiOperation operation, OperationExample example)
    {
        foreach (var content in operation.RequestBody?.Content?.Values ?? [])
        {
            content.Examples = Of(example.Summary, example.Body!);
        }

        foreach (var (status, response) in operation.Responses!)
        {
            if (response is not OpenApiResponse { Content: { } contents })
            {
                continue;
            }

            foreach (var (type, content) in contents)
            {
                content.Examples = status == "422"
                    ? new Dictionary<string, IOpenApiExample>(StringComparer.Ordinal) { ["brokenRules"] = SharedRefusals.Example(example.Refusal!) }
                    : Of(example.Summary, example.Others.GetValueOrDefault(type) ?? example.Answer!);
            }
        }
    }

    private static Dictionary<string, IOpenApiExample> Of(string summary, JsonNode value) =>
        new(StringComparer.Ordinal) { [Key] = new OpenApiExample { Summary = summary, Value = value } };
}
