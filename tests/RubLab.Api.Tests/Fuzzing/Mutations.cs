using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace RubLab.Api.Tests.Fuzzing;

/// <summary>Damages sound bodies and paths at random; the same seed does the same damage.</summary>
internal sealed class Mutations(Random random)
{
    private static readonly string[] Numbers =
    [
        "0", "-0.0", "-1", "1", "2", "0.5", "1.5", "22", "100", "101", "1000", "5e-324", "1e-31", "1e-30", "1e-9", "1e9", "1e17", "1e308", "1e999",
        "3", "7.25", "12", "2147483647", "2147483648", "9223372036854775807", "9223372036854775808",
    ];

    private static readonly string[] Others = ["null", "true", "false", "[]", "{}", "[[]]", "[null]"];

    private static readonly string[] Texts =
    [
        "\"\"", "\" \"", "\"\\u0000\"", "\"\\ud800\"", "\"🍖\"", "\"g\"", "\"kg\"", "\"mg\"", "\"oz\"", "\"%\"", "\"g/kg\"", "\"ppm\"", "\"tsp\"", "\"cup\"", "\"F\"", "\"cm\"",
        "\"%-of-liquid\"", "\"g/100cm2\"", "\"parts-by-mass\"", "\"parts-by-volume\"", "\"salt\"", "\"water\"", "\"paprika\"", "\"beef-brisket\"", "\"chicken-leg\"",
        "\"table\"", "\"ground\"", "\"rub\"", "\"mop\"", "\"dry-brine\"", "\"injection\"", "\"green\"", "\"cooked\"", "\"portion\"", "\"area\"", "\"purchase\"",
        "\"all\"", "\"none\"", "\"check\"", "\"before\"", "\"lockside-pork-rub\"", "\"lockside-old-card\"", "\"shoulders\"", "\"legs\"",
        "\"small\"", "\"hearty\"", "\"safe\"", "\"lb\"", "\"EUR\"", "\"JPY\"", "\"EURO\"", "\"purchase-yield\"", "\"chain\"", "\"turkey-wing\"", "\"pork-belly\"",
        "\"smoked\"", "\"braised\"", "\"2026-02-29\"", "\"2026-03-14\"",
    ];

    private static readonly string[] Members =
    [
        "name", "kind", "base", "dose", "writtenFor", "writtenForIs", "lines", "ingredient", "form", "amount", "value", "unit", "low", "typical", "high",
        "pile", "cut", "count", "pieces", "weightEach", "totalWeight", "weightIs", "trimLoss", "bone", "addedSolution", "cookYield", "keptInCooking",
        "juicesReturned", "portion", "weight", "label", "doseFactor", "skip", "treatments", "formula", "formulaId", "revision", "on", "retained",
        "applications", "stage", "weighingStep", "overage", "purpose", "nitriteFraction", "nitrateFraction", "guests", "menu", "share", "appetite", "price", "per", "currency", "formulas", "reserve", "buyFor", "boughtIn",
        "plannedBy", "method", "pieceWeight", "paid", "packs", "stock", "size", "portions", "records", "before", "beforeIs", "after", "date", "nonsense", "", "a/b~c",
    ];

    private static readonly byte[] Punctuation = [.. "{}[]\",:\\0e-\u0001"u8];

    private static readonly string[] Routes =
    [
        "units", "sources", "ingredients", "ingredients/salt", "cuts", "cuts/beef-brisket", "conversions", "conversions", "conversions", "formulas",
        "formulas/lockside-pork-rub", "formulas/lockside-pork-rub/revisions", "formulas/lockside-pork-rub/revisions/1", "changes", "batch-sheets", "salt-checks", "brines",
        "purchase-plans", "portion-counts", "shopping-lists", "yields", "yields/beef-brisket", "sauces", "cures",
    ];

    private static readonly string[] PathParts =
    [
        "purchase-plans", "portion-counts", "shopping-lists", "yields",
        "formulas", "ingredients", "cuts", "sources", "units", "changes", "conversions", "batch-sheets", "salt-checks", "revisions", "lockside-pork-rub",
        "salt", "beef-brisket", "1", "0", "-1", "99999999999999999999", "%2F", "%20", "%F0%9F%8D%96", "%FF", ".", "a:b", "*", "'", "{id}", "%25",
    ];

    private static readonly string[] Queries =
    [
        "limit=1", "limit=0", "limit=x", "cursor=x", "cursor=AAAA", "since=0", "since=-1", "since=9223372036854775807", "ingredient=salt", "form=table",
        "value=2", "value=1e999", "x=1", "=", "&", "%00=%00", "limit=1&limit=2",
    ];

    /// <summary>A body with one wrong or a few in it.</summary>
    public byte[] Damage(string sound)
    {
        var text = sound;
        if (random.Next(5) > 0)
        {
            var root = JsonNode.Parse(sound)!;
            for (var i = random.Next(1, 3); i > 0; i--)
            {
                DamageNode(root);
            }

            text = Unquoted(root.ToJsonString());
        }

        var bytes = Encoding.UTF8.GetBytes(text);
        return random.Next(6) == 0 || text == sound ? DamageBytes(bytes) : bytes;
    }

    /// <summary>A path with a query, mostly of words that exist.</summary>
    public string Path()
    {
        var segments = Pick(Routes).Split('/').ToList();
        for (var i = random.Next(3) - 1; i > 0; i--)
        {
            segments[random.Next(segments.Count)] = Pick(PathParts);
        }

        var path = new StringBuilder("/v1/").AppendJoin('/', segments);
        var queries = random.Next(3) == 0 ? ConversionQuery() : Enumerable.Range(0, Math.Max(0, random.Next(4) - 1)).Select(_ => Pick(Queries));
        return path.Append('?').AppendJoin('&', queries).ToString();
    }

    public T Pick<T>(IReadOnlyList<T> from) => from[random.Next(from.Count)];

    // Literals JsonNode cannot hold, such as 1e999, travel as marked strings.
    private static JsonValue Marked(string literal) => JsonValue.Create("<<" + Convert.ToHexString(Encoding.UTF8.GetBytes(literal)) + ">>");

    private static string Unquoted(string json)
    {
        var text = new StringBuilder(json);
        for (int start; (start = text.ToString().IndexOf("\"\\u003C\\u003C", StringComparison.Ordinal)) >= 0;)
        {
            const int Mark = 13;
            var end = text.ToString().IndexOf("\\u003E\\u003E\"", start, StringComparison.Ordinal);
            var literal = Encoding.UTF8.GetString(Convert.FromHexString(text.ToString(start + Mark, end - start - Mark)));
            text.Remove(start, end + Mark - start).Insert(start, literal);
        }

        return text.ToString();
    }

    private IEnumerable<string> ConversionQuery() =>
    [
        "ingredient=" + Pick(["salt", "paprika", "water", "x"]), "form=" + Pick(["table", "ground", "x"]), "value=" + Pick(Numbers),
        "unit=" + Pick(["tbsp", "g", "lb", "F", "parts-by-mass"]), "to=" + Pick(["g", "cup", "mL", "oz", "min"]),
    ];

    private void DamageNode(JsonNode root)
    {
        var nodes = All(root).Skip(1).ToList();
        if (nodes.Count == 0)
        {
            return;
        }

        var node = Pick(nodes);
        switch (random.Next(10))
        {
            case 0 when node.Parent is JsonObject parent:
                parent.Remove(node.GetPropertyName());
                break;
            case 1 when node.Parent is JsonArray list:
                list.RemoveAt(node.GetElementIndex());
                break;
            case 2 when node.Parent is JsonArray list:
                list.Add(node.DeepClone());
                break;
            case 3 when node is JsonObject members:
                members[Pick(Members)] = Pick(nodes).DeepClone();
                break;
            case 4 when node is JsonObject members:
                members[Pick(Members)] = Marked(Pick(Pick<string[]>([Numbers, Texts, Others])));
                break;
            case 5:
                node.ReplaceWith(Pick(nodes).DeepClone());
                break;
            default:
                node.ReplaceWith(Marked(Pick(OfItsKind(node))));
                break;
        }
    }

    // Mostly what can be read, so that the rules behind the reader are tried too.
    private string[] OfItsKind(JsonNode node) => (random.Next(6), node.GetValueKind()) switch
    {
        (> 0, JsonValueKind.Number) => Numbers,
        (> 0, JsonValueKind.String) => Texts,
        _ => Others,
    };

    private byte[] DamageBytes(byte[] bytes)
    {
        var list = bytes.ToList();
        for (var i = random.Next(1, 4); i > 0 && list.Count > 1; i--)
        {
            var at = random.Next(list.Count);
            switch (random.Next(5))
            {
                case 0:
                    list[at] = (byte)random.Next(256);
                    break;
                case 1:
                    list.RemoveAt(at);
                    break;
                case 2:
                    list.Insert(at, Pick(Punctuation));
                    break;
                case 3:
                    list.RemoveRange(at, list.Count - at);
                    break;
                default:
                    list.InsertRange(at, list.GetRange(0, at));
                    break;
            }
        }

        return [.. list];
    }

    private static IEnumerable<JsonNode> All(JsonNode node)
    {
        yield return node;
        var children = node switch
        {
            JsonObject members => members.Select(m => m.Value),
            JsonArray items => items,
            _ => [],
        };
        foreach (var child in children.Where(c => c is not null))
        {
            foreach (var below in All(child!))
            {
                yield return below;
            }
        }
    }
}
