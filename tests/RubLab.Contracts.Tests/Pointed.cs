using System.Globalization;
using System.Text.Json.Nodes;

namespace RubLab.Contracts.Tests;

/// <summary>Follows a JSON pointer into an answer.</summary>
public static class Pointed
{
    public static JsonNode? At(JsonNode root, string pointer)
    {
        JsonNode? node = root;
        foreach (var step in pointer.Split('/')[1..])
        {
            var name = step.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal);
            node = node is JsonArray list ? list[int.Parse(name, CultureInfo.InvariantCulture)] : node![name];
        }

        return node;
    }
}
