using System.Text.Json;
using RubLab.Contracts.Formulas;

namespace RubLab.Page.Exports;

/// <summary>Formulas as the API gave them, by id: the page's stand-in for the server's store.</summary>
internal sealed class StoredFormulas(string byId)
{
    private readonly Dictionary<string, JsonElement> _byId =
        JsonSerializer.Deserialize(byId, RequestJson.Default.DictionaryStringJsonElement) ?? [];

    /// <summary>The formula as authored; none if the page does not hold that id, or holds another revision of it.</summary>
    public FormulaRequest? Find(string id, long? revision)
    {
        if (!_byId.TryGetValue(id, out var stored) || stored.ValueKind != JsonValueKind.Object)
        {
            return null;
        }

        var isWanted = revision is not { } wanted ||
            (stored.TryGetProperty("revision", out var held) && held.TryGetInt64(out var number) && number == wanted);
        return isWanted ? stored.Deserialize(RequestJson.OfKept.FormulaRequest) : null;
    }
}
