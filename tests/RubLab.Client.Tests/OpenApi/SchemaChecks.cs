using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace RubLab.Client.Tests.OpenApi;

/// <summary>Holds values against the schemas of the description, as JSON Schema 2020-12.</summary>
internal sealed class SchemaChecks(JsonObject schemas)
{
    private readonly Dictionary<string, JsonSchema> _built = [];

    /// <summary>Every way in which a value breaks a schema.</summary>
    /// <param name="schema">The schema, references included.</param>
    /// <param name="value">The value.</param>
    /// <param name="isClosed">Whether a member that no schema names is an error too, where the description leaves it open.</param>
    public IReadOnlyList<string> Errors(JsonNode schema, JsonNode? value, bool isClosed = false)
    {
        var results = Build(schema, isClosed).Evaluate(
            JsonSerializer.SerializeToElement(value), new EvaluationOptions { OutputFormat = OutputFormat.List, RequireFormatValidation = true });
        return results.IsValid
            ? []
            : results.Details!.Where(d => d.Errors is not null)
                .SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation} {e.Key}: {e.Value}"))
                .DefaultIfEmpty("not valid").ToList();
    }

    private JsonSchema Build(JsonNode schema, bool isClosed)
    {
        var key = isClosed + schema.ToJsonString();
        if (!_built.TryGetValue(key, out var built))
        {
            var document = schema.DeepClone().AsObject();
            document["$schema"] = "https://json-schema.org/draft/2020-12/schema";
            document["$defs"] = schemas.DeepClone();
            if (isClosed)
            {
                Close(document);
            }

            var text = document.ToJsonString().Replace("#/components/schemas/", "#/$defs/", StringComparison.Ordinal);
            _built[key] = built = JsonSchema.FromText(text);
        }

        return built;
    }

    private static void Close(JsonObject document)
    {
        foreach (var (_, node) in ServedDocument.Walk(document).ToList())
        {
            if (node is JsonObject schema && schema["properties"] is JsonObject && !schema.ContainsKey("additionalProperties"))
            {
                schema["additionalProperties"] = false;
            }
        }
    }
}
