using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using RubLab.Core.Quantities;

namespace RubLab.Api.OpenApi;

/// <summary>The unit symbols as one schema, and the members that hold one.</summary>
internal static class UnitSymbols
{
    public const string SchemaName = "UnitSymbol";

    public static OpenApiSchema Schema() => new()
    {
        Type = JsonSchemaType.String,
        Description = "A unit symbol; its meaning never depends on a preference. GET /v1/units has the factors.",
        Enum = [.. UnitTable.All.Select(u => (JsonNode)u.Symbol)],
    };

    /// <summary>Symbols of what can be converted: mass and volume.</summary>
    public static OpenApiSchema MassOrVolume() => new()
    {
        Type = JsonSchemaType.String,
        Enum = [.. UnitTable.SymbolsOf(Dimension.Mass, Dimension.Volume).Select(s => (JsonNode)s)],
    };

    public static OpenApiSchemaReference Reference(OpenApiDocument document) => new(SchemaName, document);

    public static bool Applies(string schema, string member) => (schema, member) switch
    {
        ("EstimateRequest", _) => false,
        (_, "unit") => true,
        ("UnitResponse", "symbol" or "baseUnit") => true,
        _ => false,
    };
}
