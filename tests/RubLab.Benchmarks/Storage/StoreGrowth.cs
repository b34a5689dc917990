using System.Diagnostics;
using System.Globalization;
using RubLab.Storage;
using RubLab.Storage.Formulas;
using RubLab.Storage.Tests.Postgres;

namespace RubLab.Benchmarks.Storage;

/// <summary>
/// What one unit of work costs with 10, 10,000 and 200,000 formulas in the kitchen, as ratios to the cost with 10: a store that
/// reads by index stays near 1. The times themselves are the machine's.
/// </summary>
internal static class StoreGrowth
{
    private const string KitchenId = "growth";
    private const int Batch = 500;
    private const int Rounds = 5;
    private const int Reads = 300;
    private const int Creates = 60;
    private static readonly int[] Sizes = [10, 10_000, 200_000];
    private static readonly string Document = new('x', 600);

    public static async Task RunAsync()
    {
        var folder = Directory.CreateTempSubdirectory("rublab-benchmark");
        await MeasureAsync("SQLite", Path.Combine(folder.FullName, "benchmark.db"));
        folder.Delete(recursive: true);

        if (PostgresSchema.Missing is { } reason)
        {
            Console.WriteLine($"PostgreSQL left out: {reason}");
            return;
        }

        await using var schema = await PostgresSchema.CreateAsync();
        await MeasureAsync("PostgreSQL", schema.ConnectionString);
    }

    private static async Task MeasureAsync(string engine, string location)
    {
        await using var database = await Database.OpenAsync(location, TimeProvider.System);
        await WriteAsync(database, work => work.Kitchens.EnsureAsync(KitchenId, "Growth"));
        var first = new Dictionary<string, double>();
        var next = 0;
        foreach (var size in Sizes)
        {
            var clock = Stopwatch.StartNew();
            var before = next;
            while (next < size)
            {
                var until = Math.Min(next + Batch, size);
                await WriteAsync(database, async work =>
                {
                    for (; next < until; next++)
                    {
                        await CreateAsync(work, next);
                    }
                });
            }

            var filled = (next - before) / clock.Elapsed.TotalSeconds;
            var count = next;
            var random = new Random(20260314);
            await ReportAsync("read one by id", Reads, _ => ReadAsync(database, work => work.Formulas.GetAsync(KitchenId, Id(random.Next(count)))));
            await ReportAsync("page of 50 from a random place", Reads, _ => ReadAsync(database, work =>
                work.Formulas.ListAsync(KitchenId, 51, new FormulaPosition(Name(random.Next(count)), ""))));
            await ReportAsync("200 changes from a random number", Reads, _ => ReadAsync(database, work =>
                work.Changes.ListAsync(KitchenId, random.Next(count), 200)));
            await ReportAsync("create one", Creates, _ => WriteAsync(database, work => CreateAsync(work, next++)));
            Console.WriteLine($"{engine}, {size} formulas: filled at {filled:0}/s");

            async Task ReportAsync(string what, int times, Func<int, Task> unit)
            {
                var microseconds = await MedianAsync(times, unit);
                first.TryAdd(what, microseconds);
                Console.WriteLine(string.Create(
                    CultureInfo.InvariantCulture, $"{engine}, {size} formulas: {what}: {microseconds:0} us, ratio {microseconds / first[what]:0.00}"));
            }
        }
    }

    /// <summary>The median over rounds of the mean time of a unit of work, in microseconds.</summary>
    private static async Task<double> MedianAsync(int times, Func<int, Task> unit)
    {
        var means = new List<double>();
        for (var round = -1; round < Rounds; round++)
        {
            var clock = Stopwatch.StartNew();
            for (var i = 0; i < times; i++)
            {
                await unit(i);
            }

            // The round before the first warms up.
            if (round >= 0)
            {
                means.Add(clock.Elapsed.TotalMicroseconds / times);
            }
        }

        means.Sort();
        return means[Rounds / 2];
    }

    // Scattered, so that neighbours in the list were not neighbours in time.
    private static string Name(int number) => "Rub " + ((uint)number * 2654435761u).ToString("x8", CultureInfo.InvariantCulture);

    private static string Id(int number) => "rub-" + number.ToString(CultureInfo.InvariantCulture);

    private static Task CreateAsync(UnitOfWork work, int number) =>
        work.Formulas.CreateAsync(KitchenId, Id(number), new FormulaContent(Name(number), "rub", Document));

    private static async Task ReadAsync(Database database, Func<UnitOfWork, Task> read)
    {
        await using var work = await database.BeginAsync(Intent.Read);
        await read(work);
    }

    private static async Task WriteAsync(Database database, Func<UnitOfWork, Task> write)
    {
        await using var work = await database.BeginAsync(Intent.Write);
        await write(work);
        await work.CommitAsync();
    }
}
