using System.Text.Json.Nodes;

namespace RubLab.Client.Tests.OpenApi;

/// <summary>The description as the server serves it.</summary>
public sealed class ServedDocument : IDisposable
{
    public ServedDocument()
    {
        Text = Kitchen.Http.GetStringAsync("/openapi/v1.json").GetAwaiter().GetResult().ReplaceLineEndings("\n").TrimEnd('\n') + "\n";
        Root = JsonNode.Parse(Text)!.AsObject();
        Schemas = Root["components"]!["schemas"]!.AsObject();
        Operations = Root["paths"]!.AsObject()
            .SelectMany(p => p.Value!.AsObject().Select(o => new ServedOperation(p.Key, o.Key, o.Value!.AsObject())))
            .ToList();
    }

    public Kitchen Kitchen { get; } = new();

    public string Text { get; }

    public JsonObject Root { get; }

    public JsonObject Schemas { get; }

    public IReadOnlyList<ServedOperation> Operations { get; }

    public void Dispose() => Kitchen.Dispose();

    /// <summary>What a reference names, or the node itself.</summary>
    public JsonObject Resolve(JsonNode node)
    {
        if (node["$ref"] is not { } reference)
        {
            return node.AsObject();
        }

        JsonNode? at = Root;
        foreach (var token in reference.GetValue<string>()[2..].Split('/'))
        {
            at = at?[token];
        }

        return at?.AsObject() ?? throw new InvalidDataException($"{reference} names nothing.");
    }

    /// <summary>Every node of the document with its place.</summary>
    public static IEnumerable<(string Place, JsonNode Node)> Walk(JsonNode? node, string place = "#")
    {
        if (node is null)
        {
            yield break;
        }

        yield return (place, node);
        var children = node switch
        {
            JsonObject members => members.Select(m => (Key: m.Key.Replace("/", "~1", StringComparison.Ordinal), m.Value)),
            JsonArray items => items.Select((value, i) => (Key: $"{i}", Value: value)),
            _ => [],
        };
        foreach (var below in children.SelectMany(c => Walk(c.Value, $"{place}/{c.Key}")))
        {
            yield return below;
        }
    }
}
