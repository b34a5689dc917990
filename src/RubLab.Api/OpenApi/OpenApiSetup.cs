namespace RubLab.Api.OpenApi;

/// <summary>The description of the API at <c>/openapi/v1.json</c>.</summary>
internal static class OpenApiSetup
{
    public const string DocumentName = "v1";
    public const string Path = "/openapi/v1.json";

    public static IServiceCollection AddRubLabOpenApi(this IServiceCollection services) =>
        services.AddOpenApi(DocumentName, options =>
        {
            options.AddDocumentTransformer<DescribeDocument>();
            options.AddDocumentTransformer<DescribeRepresentations>();
            options.AddDocumentTransformer<DescribeSchemas>();
            options.AddDocumentTransformer<DescribeParameters>();
            options.AddDocumentTransformer<DescribeResponses>();
            options.AddDocumentTransformer<DescribeExamples>();
        });
}
