using System.Text.Json.Nodes;

namespace RubLab.Client.Tests.OpenApi;

/// <summary>One operation of the description.</summary>
public sealed record ServedOperation(string Path, string Method, JsonObject Json)
{
    public string Id => Json["operationId"]!.GetValue<string>();

    public bool HasBody => Json.ContainsKey("requestBody");

    public bool IsUnderV1 => Path.StartsWith("/v1/", StringComparison.Ordinal);

    public IEnumerable<string> Statuses => Json["responses"]!.AsObject().Select(r => r.Key);

    public override string ToString() => $"{Method.ToUpperInvariant()} {Path}";
}
