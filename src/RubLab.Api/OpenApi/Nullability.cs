using Microsoft.OpenApi;

namespace RubLab.Api.OpenApi;

/// <summary>Reads and writes "or null" on schemas: in the type, or beside a reference.</summary>
internal static class Nullability
{
    public static bool AllowsNull(IOpenApiSchema schema) =>
        schema is OpenApiSchema own && (own.Type?.HasFlag(JsonSchemaType.Null) is true || ReferenceIn(own) is not null);

    public static IOpenApiSchema WithoutNull(IOpenApiSchema schema)
    {
        if (schema is not OpenApiSchema own)
        {
            return schema;
        }

        if (ReferenceIn(own) is { } reference)
        {
            return reference;
        }

        own.Type &= ~JsonSchemaType.Null;
        return own;
    }

    public static OpenApiSchema WithNull(IOpenApiSchema schema)
    {
        if (schema is OpenApiSchema own)
        {
            own.Type |= JsonSchemaType.Null;
            if (own.Enum is { Count: > 0 } words)
            {
                words.Add(JsonNullSentinel.JsonNull);
            }

            return own;
        }

        ((OpenApiSchemaReference)schema).Reference.Description = null;
        return new OpenApiSchema { OneOf = [schema, new OpenApiSchema { Type = JsonSchemaType.Null }] };
    }

    /// <summary>The words on the member itself, not those on the schema it refers to.</summary>
    public static string? DescriptionOf(IOpenApiSchema schema) => schema switch
    {
        OpenApiSchemaReference reference => reference.Reference.Description,
        OpenApiSchema own => own.Description ?? ReferenceIn(own)?.Reference.Description,
        _ => null,
    };

    private static OpenApiSchemaReference? ReferenceIn(OpenApiSchema schema) => schema.OneOf?.OfType<OpenApiSchemaReference>().FirstOrDefault();
}
