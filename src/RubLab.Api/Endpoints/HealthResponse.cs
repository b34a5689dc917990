using System.Text.Json.Serialization;

namespace RubLab.Api.Endpoints;

/// <summary>The server answers, and so does its store.</summary>
public sealed record HealthResponse(string Status, string DataVersion);

[JsonSerializable(typeof(HealthResponse))]
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
internal sealed partial class HealthJson : JsonSerializerContext;
