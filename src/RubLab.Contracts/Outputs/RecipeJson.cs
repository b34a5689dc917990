using System.Text.Json.Serialization;

namespace RubLab.Contracts.Outputs;

/// <summary>The JSON-LD of recipes, generated at build time.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(RecipeResponse))]
public sealed partial class RecipeJson : JsonSerializerContext;
