using System.Text.Json;
using RubLab.Api.Callers;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Json;
using RubLab.Contracts.Scaling;
using RubLab.Storage;

namespace RubLab.Api.Formulas;

/// <summary>The stored formulas a request names, fetched before it is computed.</summary>
internal static class StoredFormulas
{
    private static readonly FormulaLookup None = (_, _) => null;

    public static async Task<FormulaLookup> FetchAsync(
        IReadOnlyList<TreatmentRequest?>? treatments, Caller caller, Database database, CancellationToken cancellation)
    {
        var named = treatments?
            // PostgreSQL cannot even be asked for text with a U+0000, and no id has one.
            .Where(t => t?.FormulaId is { Length: <= FormulaIds.Longest } id && !id.Contains('\0', StringComparison.Ordinal))
            .Select(t => (Id: t!.FormulaId!, t.Revision))
            .Distinct()
            .Take(Core.Scaling.SheetRequest.MostTreatments)
            .ToList();
        if (named is null or [])
        {
            return None;
        }

        var found = new Dictionary<(string Id, long? Revision), FormulaRequest>();
        await using var work = await database.BeginAsync(Intent.Read, cancellation);
        foreach (var (id, revision) in named)
        {
            var document = revision is { } number
                ? (await work.Formulas.GetRevisionAsync(caller.KitchenId, id, number, cancellation))?.Document
                : (await work.Formulas.GetAsync(caller.KitchenId, id, cancellation))?.Document;
            if (document is not null)
            {
                found[(id, revision)] = Parse(document);
            }
        }

        return (id, revision) => found.GetValueOrDefault((id, revision));
    }

    public static FormulaRequest Parse(string document) => JsonSerializer.Deserialize(document, RubLabJson.Default.FormulaRequest)!;
}
