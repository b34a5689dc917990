using System.Text.Json.Nodes;

namespace RubLab.Api.OpenApi;

/// <summary>What is shown of one operation: a body, its answer, and what broken rules get.</summary>
internal sealed record OperationExample
{
    public required string Summary { get; init; }

    public JsonNode? Body { get; init; }

    /// <summary>None where the answer has no body.</summary>
    public JsonNode? Answer { get; init; }

    /// <summary>The same answer in other representations, by media type.</summary>
    public IReadOnlyDictionary<string, JsonNode> Others { get; init; } = new Dictionary<string, JsonNode>();

    /// <summary>A refusal with 422.</summary>
    public IResult? Refusal { get; init; }
}
