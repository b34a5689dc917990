using System.Text.Json;
using System.Text.Json.Serialization;
using RubLab.Contracts.Faults;
using RubLab.Contracts.Formulas;

namespace RubLab.Page.Exports;

/// <summary>What only the page reads and writes. A formula read back from the API holds more than was authored: the rest is passed over.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Skip)]
[JsonSerializable(typeof(Dictionary<string, string>))]
[JsonSerializable(typeof(Dictionary<string, JsonElement>))]
[JsonSerializable(typeof(FormulaRequest))]
[JsonSerializable(typeof(IReadOnlyList<ErrorResponse>))]
[JsonSerializable(typeof(double))]
[JsonSerializable(typeof(string[]))]
internal sealed partial class PageJson : JsonSerializerContext;
