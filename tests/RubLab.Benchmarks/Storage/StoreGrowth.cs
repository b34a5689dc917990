using System.Diagnostics;
using System.Globalization;
using RubLab.Storage.Tests.Postgres;

namespace RubLab.Benchmarks.Storage;

/// <summary>
/// What one unit of work costs with 10, 10,000 and 200,000 formulas in the kitchen, as ratios to the cost with 10: a store that
/// finds everything by index stays near 1. Rounds on the three stores take turns; the times themselves are the machine's.
/// </summary>
internal static class StoreGrowth
{
    private const int Rounds = 9;
    private static readonly int[] Sizes = [10, 10_000, 200_000];

    public static async Task RunAsync()
    {
        var folder = Directory.CreateTempSubdirectory("rublab-benchmark");
        await MeasureAsync("SQLite", Sizes.Select(size => Path.Combine(folder.FullName, $"{size}.db")).ToList());
        folder.Delete(recursive: true);

        if (PostgresSchema.Missing is { } reason)
        {
            Console.WriteLine($"PostgreSQL is left out: {reason}");
            return;
        }

        await using var small = await PostgresSchema.CreateAsync();
        await using var middle = await PostgresSchema.CreateAsync();
        await using var large = await PostgresSchema.CreateAsync();
        await MeasureAsync("PostgreSQL", [small.ConnectionString, middle.ConnectionString, large.ConnectionString]);
    }

    private static async Task MeasureAsync(string engine, IReadOnlyList<string> locations)
    {
        var stores = new List<GrownStore>();
        foreach (var (location, size) in locations.Zip(Sizes))
        {
            stores.Add(await GrownStore.FillAsync(location, size));
        }

        Console.WriteLine($"{engine}: {Sizes[^1]} formulas created at {stores[^1].FilledPerSecond:0}/s");
        await ReportAsync(engine, "read one by id", 300, stores, store => store.ReadOneAsync());
        await ReportAsync(engine, "read a page of 5", 300, stores, store => store.ReadPageAsync());
        await ReportAsync(engine, "read 5 changes", 300, stores, store => store.ReadChangesAsync());
        await ReportAsync(engine, "create one", 100, stores, store => store.CreateOneAsync());
        foreach (var store in stores)
        {
            await store.DisposeAsync();
        }
    }

    private static async Task ReportAsync(string engine, string what, int times, List<GrownStore> stores, Func<GrownStore, Task> unit)
    {
        var microseconds = stores.Select(_ => new List<double>()).ToList();
        for (var round = -1; round < Rounds; round++)
        {
            foreach (var (store, means) in stores.Zip(microseconds))
            {
                var clock = Stopwatch.StartNew();
                for (var i = 0; i < times; i++)
                {
                    await unit(store);
                }

                // The round before the first warms up.
                if (round >= 0)
                {
                    means.Add(clock.Elapsed.TotalMicroseconds / times);
                }
            }
        }

        var medians = microseconds.Select(means => means.Order().ElementAt(Rounds / 2)).ToList();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{engine}: {what}: {string.Join(", ", medians.Select(m => m.ToString("0", CultureInfo.InvariantCulture)))} us, ratios {string.Join(" : ", medians.Select(m => (m / medians[0]).ToString("0.00", CultureInfo.InvariantCulture)))}"));
    }
}
