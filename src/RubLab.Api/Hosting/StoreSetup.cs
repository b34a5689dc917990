using System.Text.Json;
using RubLab.Api.Callers;
using RubLab.Api.Endpoints;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Json;
using RubLab.Contracts.Pairing;
using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Storage;
using RubLab.Storage.Formulas;

namespace RubLab.Api.Hosting;

/// <summary>Makes the store ready to serve: the local kitchen, its example formulas, the secrets.</summary>
public static class StoreSetup
{
    /// <returns>The secrets of this installation.</returns>
    public static async Task<StoreSecrets> PrepareAsync(Database database, Catalogue catalogue)
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

        var secrets = new StoreSecrets(
            await work.Secrets.GetOrCreateAsync("cursor-signing", 32), await work.Secrets.GetOrCreateAsync("pairing-salt", 32));
        await work.CommitAsync();
        return secrets;
    }

    /// <summary>Draws a new key for the local kitchen; its text is shown once.</summary>
    public static async Task<string> IssueKeyAsync(Database database, string name, IReadOnlyList<string>? scopes)
    {
        var order = Order(name, scopes ?? Caller.AllScopes);
        await using var work = await database.BeginAsync(Intent.Write);
        var issued = await work.Keys.IssueAsync(LocalKitchen.Id, name, order.Scopes);
        await work.CommitAsync();
        return issued.PlainKey;
    }

    /// <summary>Draws a new pairing code for the local kitchen; it is shown once.</summary>
    public static async Task<PairingCodeResponse> IssueCodeAsync(Database database, PairingCodes codes, string name, IReadOnlyList<string>? scopes)
    {
        var order = Order(name, scopes);
        var code = PairingCodes.Draw();
        var hash = codes.Hash(code);
        await using var work = await database.BeginAsync(Intent.Write);
        var open = await work.PairingCodes.IssueAsync(LocalKitchen.Id, hash, order.Scopes, order.Name);
        await work.CommitAsync();
        return PairingAnswers.Of(open, code);
    }

    private static PairingCodeOrder Order(string name, IReadOnlyList<string>? scopes)
    {
        var check = Pairings.Check(new PairingCodeRequest { Name = name, Scopes = scopes });
        return check.Value ?? throw new SetupException($"A name or scope cannot be used. {check.Log.Faults[0].Detail}");
    }

    private static FormulaContent Draft(string document, Catalogue catalogue)
    {
        var request = JsonSerializer.Deserialize(document, RubLabJson.Default.FormulaRequest)!;
        var formula = FormulaAnswers.Check(request, catalogue).Value
            ?? throw new InvalidDataException($"The example formula '{request.Name}' is not sound.");
        return new FormulaContent(formula.Name, Vocabulary.Kinds[formula.Kind], JsonSerializer.Serialize(request, RubLabJson.Default.FormulaRequest));
    }
}
