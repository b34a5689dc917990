using System.Text.Json.Nodes;
using CsCheck;

namespace RubLab.Contracts.Tests.Faults;

/// <summary>One change to a document: mostly within the type that stands there, now and then out of it.</summary>
public sealed record Mutation(int Where, int What, int Which)
{
    private static readonly string[] Numbers =
    [
        "0", "-0.0", "1", "-1", "2", "0.1", "0.3333333333333333", "1e-3", "1e-6", "1e-9", "1e-300", "5e-324", "0.001", "99", "99.99999", "100",
        "100.00001", "1000", "5000", "300000", "1e6", "1e7", "1e9", "1e12", "1e15", "1e300", "1.7976931348623157e308", "1e999", "-1e999",
        "2147483647", "2147483648", "9223372036854775807", "9223372036854775808", "1.5", "10", "50", "0.0625", "123456.789",
    ];

    private static readonly string[] Texts =
    [
        "", " ", "g", "kg", "mg", "oz", "lb", "cup", "tsp", "%", "g/kg", "ppm", "parts-by-mass", "parts-by-volume", "g/100cm2", "F", "%-of-liquid",
        "green", "purchase", "cooked", "portion", "area", "rub", "mop", "injection", "soak", "dry-brine", "after", "all", "none", "check", "sheet",
        "salt", "sodium-chloride", "water", "ancho-dried", "sugar-brown", "baking-soda", "table", "flake-hollow", "ground", "crystal",
        "pork-shoulder", "lamb-leg", "turkey-breast", "shoulders", "legs", "pork-rub", "{line}", "\u0000", "\u7f8a\u8089", "a/b", "~1", "NaN", "null",
    ];

    private static readonly string[] Anything = ["null", "true", "false", "0", "\"g\"", "[]", "{}", "[null]", "[[]]", "{\"value\":1}"];

    public static Gen<Mutation> Gen { get; } = CsCheck.Gen.Select(
        CsCheck.Gen.Int[0, 10_000], CsCheck.Gen.Int[0, 99], CsCheck.Gen.Int[0, 10_000], (where, what, which) => new Mutation(where, what, which));

    public void Apply(JsonNode document)
    {
        var places = new List<JsonNode>();
        Collect(document, places);
        var node = places[Where % places.Count];
        if (node.Parent is null)
        {
            return;
        }

        switch (What)
        {
            case < 10:
                Remove(node);
                break;
            case < 13:
                node.ReplaceWith(JsonNode.Parse(Pick(Anything)));
                break;
            case < 16:
                Copy(node, places[Which % places.Count]);
                break;
            default:
                Change(node);
                break;
        }
    }

    private static void Remove(JsonNode node)
    {
        if (node.Parent is JsonObject members)
        {
            members.Remove(node.GetPropertyName());
        }
        else
        {
            node.Parent!.AsArray().RemoveAt(node.GetElementIndex());
        }
    }

    private static void Copy(JsonNode node, JsonNode other)
    {
        var copy = other.DeepClone();
        if (node is JsonArray list)
        {
            list.Add(copy);
        }
        else
        {
            node.ReplaceWith(copy);
        }
    }

    private static void Collect(JsonNode? node, List<JsonNode> places)
    {
        if (node is null)
        {
            return;
        }

        places.Add(node);
        var children = node switch
        {
            JsonArray list => list.ToList(),
            JsonObject members => members.Select(m => m.Value).ToList(),
            _ => [],
        };
        children.ForEach(child => Collect(child, places));
    }

    private void Change(JsonNode node)
    {
        switch (node)
        {
            case JsonArray list when Which % 3 == 0:
                list.Add(null);
                break;
            case JsonArray list when list.Count > 0:
                list.Add(list[Which % list.Count]?.DeepClone());
                break;
            case JsonObject members when members.Count > 0:
                members.Remove(members.ElementAt(Which % members.Count).Key);
                break;
            case JsonValue value when value.GetValueKind() == System.Text.Json.JsonValueKind.Number:
                value.ReplaceWith(JsonNode.Parse(Pick(Numbers)));
                break;
            case JsonValue value when value.GetValueKind() == System.Text.Json.JsonValueKind.String:
                value.ReplaceWith(JsonValue.Create(Pick(Texts)));
                break;
            default:
                node.ReplaceWith(JsonNode.Parse(Pick(Anything)));
                break;
        }
    }

    private string Pick(string[] choices) => choices[Which % choices.Length];
}
