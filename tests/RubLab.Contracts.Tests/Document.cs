using System.Text.Json;
using System.Text.Json.Nodes;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Json;
using RubLab.Contracts.Salt;
using RubLab.Contracts.Scaling;
using RubLab.Core.Faults;

namespace RubLab.Contracts.Tests;

/// <summary>A JSON document that is edited by pointer and then posted.</summary>
public sealed class Document
{
    private readonly JsonNode _root;

    private Document(JsonNode root) => _root = root;

    public string Json => _root.ToJsonString();

    public static Document Of(string json) => new(JsonNode.Parse(json)!);

    public static Document FirstSheet() => Of(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Documents", "first-sheet.json")));

    /// <summary>Edits written <c>/pointer = json</c> or <c>- /pointer</c>, separated by <c> &amp; </c>.</summary>
    public Document Edit(string edits)
    {
        foreach (var edit in edits.Split(" & ", StringSplitOptions.RemoveEmptyEntries))
        {
            if (edit.StartsWith("- ", StringComparison.Ordinal))
            {
                Remove(edit[2..]);
            }
            else
            {
                var parts = edit.Split(" = ", 2);
                Set(parts[0], JsonNode.Parse(parts[1]));
            }
        }

        return this;
    }

    /// <summary>Puts a value where the pointer points; one past the end of a list appends.</summary>
    public Document Set(string pointer, JsonNode? value)
    {
        var (parent, last) = ParentOf(pointer);
        if (parent is not JsonArray list)
        {
            parent[last] = value;
        }
        else if (int.Parse(last, System.Globalization.CultureInfo.InvariantCulture) is var index && index == list.Count)
        {
            list.Add(value);
        }
        else
        {
            list[index] = value;
        }

        return this;
    }

    public Document Remove(string pointer)
    {
        var (parent, last) = ParentOf(pointer);
        if (parent is JsonArray list)
        {
            list.RemoveAt(int.Parse(last, System.Globalization.CultureInfo.InvariantCulture));
        }
        else
        {
            Assert.True(parent.AsObject().Remove(last), $"nothing at {pointer}");
        }

        return this;
    }

    public Result<BatchSheetResponse> Sheet() => BatchSheets.Compute(
        JsonSerializer.Deserialize(Json, RubLabJson.Default.BatchSheetRequest)!, Seed.Catalogue, Stored);

    public Result<SaltCheckResponse> SaltCheck() => SaltChecks.Compute(
        JsonSerializer.Deserialize(Json, RubLabJson.Default.SaltCheckRequest)!, Seed.Catalogue, Stored);

    /// <summary>The sheet's answer as it goes over the wire.</summary>
    public JsonNode SheetAnswer()
    {
        var result = Sheet();
        Assert.True(result.IsGood, string.Join('\n', result.Log.Faults.Select(f => $"{f.Pointer} {f.Code} {f.Detail}")));
        return JsonNode.Parse(JsonSerializer.Serialize(result.Value, RubLabJson.Default.BatchSheetResponse))!;
    }

    /// <summary>The salt check's answer as it goes over the wire.</summary>
    public JsonNode SaltCheckAnswer()
    {
        var result = SaltCheck();
        Assert.True(result.IsGood, string.Join('\n', result.Log.Faults.Select(f => $"{f.Pointer} {f.Code} {f.Detail}")));
        return JsonNode.Parse(JsonSerializer.Serialize(result.Value, RubLabJson.Default.SaltCheckResponse))!;
    }

    /// <summary>The sheet's faults as <c>pointer code</c>, in order.</summary>
    public IReadOnlyList<string> SheetFaults() => Faults(Sheet().Log);

    /// <summary>A log's faults as <c>pointer code</c>, in order.</summary>
    public static IReadOnlyList<string> Faults(FaultLog log) =>
        log.Faults.Select(f => $"{f.Pointer} {f.Code}").Order(StringComparer.Ordinal).ToList();

    // One formula is stored: "pork-rub", revisions 1 (10 g/kg) and 2 (20 g/kg).
    private static FormulaRequest? Stored(string id, long? revision) => (id, revision) switch
    {
        ("pork-rub", 1) => PorkRub(10),
        ("pork-rub", null or 2) => PorkRub(20),
        _ => null,
    };

    private static FormulaRequest PorkRub(double dose) => new()
    {
        Name = "Stored rub",
        Kind = "rub",
        Dose = new() { Value = dose, Unit = "g/kg" },
        Lines = [new() { Ingredient = "salt", Form = "table", Amount = new() { Value = 1, Unit = "parts-by-mass" } }],
    };

    private (JsonNode Parent, string Last) ParentOf(string pointer)
    {
        var steps = pointer.Split('/')[1..];
        var node = _root;
        foreach (var step in steps[..^1])
        {
            node = (node is JsonArray list ? list[int.Parse(step, System.Globalization.CultureInfo.InvariantCulture)] : node[step])
                ?? throw new ArgumentException($"Nothing at {pointer}.", nameof(pointer));
        }

        return (node, steps[^1]);
    }
}
