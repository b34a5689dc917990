using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace RubLab.Api.OpenApi;

/// <summary>Requests closed, answers open; what is always needed, what may be null; words, units and ranges.</summary>
internal sealed class DescribeSchemas : IOpenApiDocumentTransformer
{
    public Task TransformAsync(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        var schemas = document.Components!.Schemas!;
        foreach (var (name, schema) in schemas.ToList())
        {
            if (schema is OpenApiSchema { Properties: { } members } described)
            {
                Describe(name, described, members, document);
            }
        }

        // Reached first as an element of a list or as one that may be absent, their own comments are passed over.
        schemas["Quantity"].Description ??= "A number with its unit, in an answer.";
        schemas["CountBand"].Description ??= "An uncertain count, in an answer.";
        schemas["QuantityBand"].Description ??= "An uncertain number with its unit, in an answer.";

        schemas[UnitSymbols.SchemaName] = UnitSymbols.Schema();
        return Task.CompletedTask;
    }

    private static void Describe(string name, OpenApiSchema schema, IDictionary<string, IOpenApiSchema> members, OpenApiDocument document)
    {
        var isRequest = name.EndsWith("Request", StringComparison.Ordinal);
        var required = isRequest
            ? RequestRules.RequiredOf(name)
            : members.Where(m => !Nullability.AllowsNull(m.Value)).Select(m => m.Key).ToHashSet(StringComparer.Ordinal);
        schema.Required = required.Count > 0 ? required : null;
        // Answers are open: members may be added. The same goes for answers inside answers.
        schema.AdditionalPropertiesAllowed = !isRequest;
        foreach (var (member, value) in members.ToList())
        {
            var description = Nullability.DescriptionOf(value) ?? CommonMembers.DescriptionOf(member);
            var bare = Nullability.WithoutNull(value);
            bare = UnitSymbols.Applies(name, member) ? UnitSymbols.Reference(document) : bare;
            Constrain(name, member, bare);
            // What is null is not written in answers; in requests it reads as left out.
            var final = isRequest && !required.Contains(member) ? Nullability.WithNull(bare) : bare;
            final.Description = description;
            members[member] = final;
        }
    }

    private static void Constrain(string name, string member, IOpenApiSchema schema)
    {
        if (schema is not OpenApiSchema own)
        {
            return;
        }

        if (WireWords.Of(name, member) is { } words)
        {
            // Of a list, each item is one of the words.
            (own.Items as OpenApiSchema ?? own).Enum = [.. words.Select(w => (System.Text.Json.Nodes.JsonNode)w)];
        }

        RequestRules.Constrain(name, member, own);
        if (member is "updatedAt" or "createdAt" or "lastUsedAt" or "expiresAt" or "dateModified" or "at")
        {
            own.Format = "date-time";
        }
        else if (member is "parameters")
        {
            own.AdditionalProperties = new OpenApiSchema
            {
                Type = JsonSchemaType.String | JsonSchemaType.Number | JsonSchemaType.Array,
                Items = new OpenApiSchema { Type = JsonSchemaType.String },
            };
        }
    }
}
