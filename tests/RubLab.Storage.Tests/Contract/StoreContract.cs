using RubLab.Storage.Changes;
using RubLab.Storage.Formulas;
using RubLab.Storage.Kitchens;

namespace RubLab.Storage.Tests.Contract;

/// <summary>What every part of the contract stands on: a fresh database with two kitchens.</summary>
public abstract class StoreContract<TFresh> : IAsyncLifetime
    where TFresh : FreshDatabase, new()
{
    protected const string Quay = "quay";
    protected const string Lock = "lock";

    protected TFresh Fresh { get; } = new();

    protected Database Database { get; private set; } = null!;

    protected ManualClock Clock => Fresh.Clock;

    public async Task InitializeAsync()
    {
        Database = await Fresh.OpenAsync();
        await WriteAsync(work => work.Kitchens.EnsureAsync(Quay, "Quay kitchen"));
        await WriteAsync(work => work.Kitchens.EnsureAsync(Lock, "Lock kitchen"));
    }

    public async Task DisposeAsync()
    {
        await Database.DisposeAsync();
        await Fresh.DisposeAsync();
    }

    protected static FormulaContent Draft(string name = "Lockside rub", string kind = "rub", string document = "{}") => new(name, kind, document);

    protected async Task<T> WriteAsync<T>(Func<UnitOfWork, Task<T>> work)
    {
        await using var unit = await Database.BeginAsync(Intent.Write);
        var result = await work(unit);
        await unit.CommitAsync();
        return result;
    }

    protected async Task<T> ReadAsync<T>(Func<UnitOfWork, Task<T>> work)
    {
        await using var unit = await Database.BeginAsync(Intent.Read);
        return await work(unit);
    }

    protected Task<FormulaWrite> CreateAsync(string id, FormulaContent? draft = null, string kitchen = Quay) =>
        WriteAsync(work => work.Formulas.CreateAsync(kitchen, id, draft ?? Draft()));

    protected Task<FormulaWrite> ReplaceAsync(string id, long expected, FormulaContent draft, string kitchen = Quay) =>
        WriteAsync(work => work.Formulas.ReplaceAsync(kitchen, id, expected, draft));

    protected Task<FormulaWrite> DeleteAsync(string id, long expected, string kitchen = Quay) =>
        WriteAsync(work => work.Formulas.DeleteAsync(kitchen, id, expected));

    protected Task<StoredFormula?> GetAsync(string id, string kitchen = Quay) => ReadAsync(work => work.Formulas.GetAsync(kitchen, id));

    protected Task<IReadOnlyList<StoredFormula>> ListAsync(int limit = 100, FormulaPosition? after = null, string? kind = null, string kitchen = Quay) =>
        ReadAsync(work => work.Formulas.ListAsync(kitchen, limit, after, kind));

    protected Task<IReadOnlyList<FormulaRevision>> RevisionsAsync(string id, int limit = 100, long after = 0, string kitchen = Quay) =>
        ReadAsync(work => work.Formulas.ListRevisionsAsync(kitchen, id, limit, after));

    protected Task<IReadOnlyList<Change>> ChangesAsync(long after = 0, int limit = 1000, string kitchen = Quay) =>
        ReadAsync(work => work.Changes.ListAsync(kitchen, after, limit));

    protected async Task<Kitchen> KitchenAsync(string id = Quay)
    {
        var kitchen = await ReadAsync(work => work.Kitchens.GetAsync(id));
        return kitchen ?? throw new InvalidOperationException($"No kitchen {id}.");
    }
}
