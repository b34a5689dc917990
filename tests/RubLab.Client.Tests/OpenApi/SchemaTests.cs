using System.Text.Json.Nodes;
using RubLab.Contracts.Reading;
using RubLab.Core.Quantities;

namespace RubLab.Client.Tests.OpenApi;

public sealed class SchemaTests(ServedDocument document) : IClassFixture<ServedDocument>
{
    [Fact]
    public void No_schema_is_empty()
    {
        var schemas = document.Schemas.SelectMany(s => ServedDocument.Walk(s.Value, s.Key)).Where(n => IsSchema(n.Place)).ToList();
        Assert.All(schemas, s => Assert.True(
            s.Node is JsonValue closed && !closed.GetValue<bool>()
            || s.Node is JsonObject schema && (schema.ContainsKey("type") || schema.ContainsKey("$ref") || schema.ContainsKey("oneOf")),
            $"{s.Place} says nothing."));
    }

    [Fact]
    public void Every_schema_and_every_member_is_described()
    {
        Assert.All(document.Schemas, s => Assert.NotEmpty(s.Value!["description"]?.GetValue<string>() ?? ""));
        var members = document.Schemas.SelectMany(s => (s.Value!["properties"]?.AsObject() ?? []).Select(p => (Name: $"{s.Key}.{p.Key}", p.Value)));
        Assert.All(members, m => Assert.False(string.IsNullOrEmpty(m.Value!["description"]?.GetValue<string>()), m.Name));
    }

    [Fact]
    public void Requests_are_closed_and_answers_are_open()
    {
        var requests = Reachable(document.Operations.Where(o => o.HasBody).Select(o => o.Json["requestBody"]!));
        var answers = Reachable(document.Operations.Select(o => o.Json["responses"]!));
        Assert.All(requests.Where(HasMembers), name => Assert.False(document.Schemas[name]!["additionalProperties"]!.GetValue<bool>(), name));
        Assert.All(answers.Where(HasMembers), name => Assert.False(document.Schemas[name]!.AsObject().ContainsKey("additionalProperties"), name));
        Assert.Equal(["UnitSymbol"], requests.Intersect(answers));
    }

    [Fact]
    public void Null_is_for_members_of_requests_that_may_be_left_out()
    {
        foreach (var (name, schema) in document.Schemas.Where(s => HasMembers(s.Key)))
        {
            var required = schema!["required"]?.AsArray().Select(r => r!.GetValue<string>()).ToList() ?? [];
            foreach (var (member, value) in schema["properties"]!.AsObject())
            {
                var isOptionalRequest = name.EndsWith("Request", StringComparison.Ordinal) && !required.Contains(member);
                Assert.True(isOptionalRequest == value!.ToJsonString().Contains("\"null\"", StringComparison.Ordinal), $"{name}.{member}");
            }
        }
    }

    [Theory]
    [InlineData("FormulaRequest", "name kind lines")]
    [InlineData("FormulaLineRequest", "ingredient")]
    [InlineData("QuantityRequest", "value unit")]
    [InlineData("BatchSheetRequest", "pile treatments")]
    [InlineData("PileLineRequest", "cut")]
    [InlineData("ConversionItemRequest", "ingredient amount to")]
    [InlineData("FindingResponse", "code severity message parameters")]
    [InlineData("ErrorResponse", "pointer code detail parameters")]
    [InlineData("SheetPieceResponse", "number line greenWeight amount")]
    [InlineData("ListResponseOfFormulaSummary", "items")]
    [InlineData("ConversionItemResponse", "")]
    public void Members_that_are_always_there_are_required(string schema, string members) =>
        Assert.Equal(members, string.Join(' ', document.Schemas[schema]!["required"]?.AsArray().Select(r => r!.GetValue<string>()) ?? []));

    [Fact]
    public void Words_are_enumerated_as_the_readers_know_them()
    {
        Assert.Equal(Vocabulary.Kinds.All, Words("FormulaRequest", "kind"));
        Assert.Equal(Vocabulary.Bases.All, Words("FormulaRequest", "base"));
        Assert.Equal(Vocabulary.Weights.All, Words("PileLineRequest", "weightIs"));
        Assert.Equal(Vocabulary.Stages.All, Words("TreatmentRequest", "stage"));
        Assert.Equal(Vocabulary.Listings.All, Words("BatchSheetRequest", "pieces"));
        Assert.Equal(Vocabulary.Purposes.All, Words("BatchSheetRequest", "purpose"));
        Assert.Equal(Vocabulary.Verdicts.All, Words("CheckResponse", "verdict"));
        Assert.Equal(Vocabulary.Severities.All, Words("FindingResponse", "severity"));
        Assert.Equal(Vocabulary.Confidences.All, Words("DensityResponse", "confidence"));
        Assert.Equal(Vocabulary.Dimensions.All, Words("UnitResponse", "dimension"));
    }

    [Fact]
    public void Unit_members_hold_unit_symbols()
    {
        Assert.Equal(UnitTable.All.Select(u => u.Symbol), document.Schemas["UnitSymbol"]!["enum"]!.AsArray().Select(s => s!.GetValue<string>()));
        var units = document.Schemas.Where(s => s.Key != "EstimateRequest" && s.Value!["properties"]?["unit"] is not null).ToList();
        Assert.NotEmpty(units);
        Assert.All(units, s => Assert.Equal("#/components/schemas/UnitSymbol", s.Value!["properties"]!["unit"]!["$ref"]!.GetValue<string>()));
    }

    private IEnumerable<string> Words(string schema, string member) =>
        document.Schemas[schema]!["properties"]![member]!["enum"]!.AsArray().Where(w => w is not null).Select(w => w!.GetValue<string>());

    private bool HasMembers(string schema) => document.Schemas[schema]!.AsObject().ContainsKey("properties");

    private HashSet<string> Reachable(IEnumerable<JsonNode> from)
    {
        var found = new HashSet<string>();
        var next = new Stack<JsonNode>(from);
        while (next.TryPop(out var node))
        {
            foreach (var reference in ServedDocument.Walk(node).Where(n => n.Node is JsonObject o && o["$ref"] is JsonValue).Select(n => n.Node["$ref"]!.GetValue<string>()))
            {
                if (!reference.Contains("/schemas/", StringComparison.Ordinal) || found.Add(reference.Split('/')[^1]))
                {
                    next.Push(document.Resolve(new JsonObject { ["$ref"] = reference }));
                }
            }
        }

        return found;
    }

    // A place where JSON Schema has a schema, within a component.
    private static bool IsSchema(string place)
    {
        var tokens = place.Split('/');
        return tokens.Length == 1
            || tokens[^1] is "items" or "additionalProperties" && tokens[^2] is not "properties"
            || tokens[^2] is "properties" or "oneOf";
    }
}
