using System.Globalization;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using RubLab.Api.Http;

namespace RubLab.Api.OpenApi;

/// <summary>Answers and refusals in words, with the headers they carry, in order of status.</summary>
internal sealed class DescribeResponses : IOpenApiDocumentTransformer
{
    public Task TransformAsync(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        ResponseHeaders.AddTo(document);
        foreach (var (name, response) in SharedRefusals.All(document))
        {
            document.AddComponent<IOpenApiResponse>(name, response);
        }

        foreach (var operation in document.Paths.Values.SelectMany(p => p.Operations!.Values))
        {
            var described = new OpenApiResponses();
            foreach (var (status, response) in operation.Responses!.OrderBy(r => r.Key, StringComparer.Ordinal))
            {
                described[status] = Describe(operation, int.Parse(status, CultureInfo.InvariantCulture), (OpenApiResponse)response, document);
            }

            operation.Responses = described;
        }

        return Task.CompletedTask;
    }

    private static IOpenApiResponse Describe(OpenApiOperation operation, int status, OpenApiResponse response, OpenApiDocument document)
    {
        if (status >= 400)
        {
            var type = ProblemTypes.OfStatus(status);
            if (SharedRefusals.NameOf(type, operation.RequestBody is not null) is { } shared)
            {
                return new OpenApiResponseReference(shared, document);
            }

            response.Description = type.Title + " " + type.Explanation;
            return response;
        }

        response.Description = status switch
        {
            200 when operation.OperationId == "replaceFormula" => "Stored as a new revision.",
            201 when operation.OperationId == "createPairingCode" => "A code, shown this once.",
            201 when operation.OperationId == "createSession" => "Paired.",
            201 => "Stored.",
            204 when operation.OperationId is "endSession" or "endCurrentSession" => "Unpaired.",
            204 => "Deleted.",
            304 => "One of the ETags held still stands.",
            _ => "As asked.",
        };
        response.Headers = ResponseHeaders.Of(operation, status, document);
        return response;
    }
}
