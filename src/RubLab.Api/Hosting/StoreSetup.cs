using System.Text.Json;
using RubLab.Api.Http;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Json;
using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Storage;
using RubLab.Storage.Formulas;

namespace RubLab.Api.Hosting;

/// <summary>Makes the store ready to serve: the local kitchen, its example formulas, the cursor key.</summary>
public static class StoreSetup
{
    private static readonly string[] AllScopes = [Caller.ReadScope, Caller.WriteScope];

    /// <returns>The key that signs list cursors.</returns>
    public static async Task<byte[]> PrepareAsync(Database database, Catalogue catalogue)
    {
        await using var work = await database.BeginAsync(Intent.Write);
        await work.Kitchens.EnsureAsync(LocalKitchen.Id, LocalKitchen.Name);
        if (await work.Kitchens.ClaimExamplesAsync(LocalKitchen.Id, catalogue.Version))
        {
            foreach (var (id, document) in SeedFolder.ReadFormulas())
            {
                await work.Formulas.CreateAsync(LocalKitchen.Id, id, Draft(document, catalogue));
            }
        }

        var cursorKey = await work.Secrets.GetOrCreateAsync("cursor-signing", 32);
        await work.CommitAsync();
        return cursorKey;
    }

    /// <summary>Draws a new key for the local kitchen; its text is shown once.</summary>
    public static async Task<string> IssueKeyAsync(Database database, string name)
    {
        await using var work = await database.BeginAsync(Intent.Write);
        var issued = await work.Keys.IssueAsync(LocalKitchen.Id, name, AllScopes);
        await work.CommitAsync();
        return issued.PlainKey;
    }

    private static FormulaContent Draft(string document, Catalogue catalogue)
    {
        var request = JsonSerializer.Deserialize(document, RubLabJson.Default.FormulaRequest)!;
        var formula = FormulaAnswers.Check(request, catalogue).Value
            ?? throw new InvalidDataException($"The example formula '{request.Name}' is not sound.");
        return new FormulaContent(formula.Name, Vocabulary.Kinds[formula.Kind], JsonSerializer.Serialize(request, RubLabJson.Default.FormulaRequest));
    }
}
