using System.Diagnostics;
using System.Globalization;
using RubLab.Storage;
using RubLab.Storage.Formulas;

namespace RubLab.Benchmarks.Storage;

/// <summary>A store with one kitchen of so many formulas, and the units of work to time on it.</summary>
internal sealed class GrownStore : IAsyncDisposable
{
    private const string KitchenId = "growth";
    private const int Batch = 500;
    private static readonly string Document = new('x', 600);

    private readonly Database _database;
    private readonly Random _random = new(20260314);
    private int _count;

    private GrownStore(Database database)
    {
        _database = database;
    }

    /// <summary>How many formulas a second were created when it was filled, 500 in a unit of work.</summary>
    public double FilledPerSecond { get; private set; }

    public static async Task<GrownStore> FillAsync(string location, int size)
    {
        var store = new GrownStore(await Database.OpenAsync(location, TimeProvider.System));
        await store.WriteAsync(work => work.Kitchens.EnsureAsync(KitchenId, "Growth"));
        var clock = Stopwatch.StartNew();
        while (store._count < size)
        {
            var until = Math.Min(store._count + Batch, size);
            await store.WriteAsync(async work =>
            {
                while (store._count < until)
                {
                    await store.CreateAsync(work);
                }
            });
        }

        store.FilledPerSecond = size / clock.Elapsed.TotalSeconds;
        return store;
    }

    public Task ReadOneAsync() => ReadAsync(work => work.Formulas.GetAsync(KitchenId, Id(_random.Next(_count))));

    /// <summary>Five from somewhere in the first half of the names, so that the smallest store has five too.</summary>
    public Task ReadPageAsync() => ReadAsync(work =>
        work.Formulas.ListAsync(KitchenId, 5, new FormulaPosition(Name((uint)_random.Next()), "")));

    public Task ReadChangesAsync() => ReadAsync(work => work.Changes.ListAsync(KitchenId, _random.Next(_count - 5), 5));

    public Task CreateOneAsync() => WriteAsync(CreateAsync);

    public ValueTask DisposeAsync() => _database.DisposeAsync();

    private static string Name(uint place) => "Rub " + place.ToString("x8", CultureInfo.InvariantCulture);

    private static string Id(int number) => "rub-" + number.ToString(CultureInfo.InvariantCulture);

    private Task CreateAsync(UnitOfWork work)
    {
        // Names are scattered, so that neighbours in the list were not neighbours in time.
        var number = _count++;
        return work.Formulas.CreateAsync(KitchenId, Id(number), new FormulaContent(Name((uint)number * 2654435761u), "rub", Document));
    }

    private async Task ReadAsync(Func<UnitOfWork, Task> read)
    {
        await using var work = await _database.BeginAsync(Intent.Read);
        await read(work);
    }

    private async Task WriteAsync(Func<UnitOfWork, Task> write)
    {
        await using var work = await _database.BeginAsync(Intent.Write);
        await write(work);
        await work.CommitAsync();
    }
}
