using RubLab.Storage.Formulas;

namespace RubLab.Storage.Tests.Contract;

public abstract class ParallelContract<TFresh> : StoreContract<TFresh>
    where TFresh : FreshDatabase, new()
{
    [ContractFact]
    public async Task Of_simultaneous_replaces_of_one_revision_exactly_one_wins()
    {
        await CreateAsync("rub-1");

        var writes = await AtOnceAsync(12, i => ReplaceAsync("rub-1", 1, Draft($"Writer {i}")));

        var winner = Assert.Single(writes, write => write.Outcome == WriteOutcome.Written);
        Assert.Equal(11, writes.Count(write => write is { Outcome: WriteOutcome.Stale, CurrentRevision: 2 }));
        Assert.Equal(winner.Formula, await GetAsync("rub-1"));
        Assert.Equal([1, 2], (await RevisionsAsync("rub-1")).Select(revision => revision.Revision));
    }

    [ContractFact]
    public async Task Of_simultaneous_creations_of_one_id_exactly_one_wins()
    {
        var writes = await AtOnceAsync(12, i => CreateAsync("rub-1", Draft($"Writer {i}")));

        Assert.Equal(1, writes.Count(write => write.IsWritten));
        Assert.Equal(11, writes.Count(write => write.Outcome == WriteOutcome.Taken));
        Assert.Single(await ChangesAsync());
    }

    [ContractFact]
    public async Task A_replace_and_a_delete_at_once_leave_one_of_the_two()
    {
        await CreateAsync("rub-1");

        var writes = await AtOnceAsync(2, i => i == 0 ? ReplaceAsync("rub-1", 1, Draft("Replaced")) : DeleteAsync("rub-1", 1));

        Assert.Equal(1, writes.Count(write => write.IsWritten));
        Assert.Equal(writes[0].IsWritten ? "Replaced" : null, (await GetAsync("rub-1"))?.Name);
    }

    [ContractFact]
    public async Task Parallel_writers_all_get_through_and_number_their_changes_without_gap()
    {
        var writes = await AtOnceAsync(60, i => CreateAsync($"rub-{i}", Draft($"Rub {i}")));

        Assert.All(writes, write => Assert.True(write.IsWritten));
        Assert.Equal(60, (await ListAsync()).Count);
        Assert.Equal(Enumerable.Range(1, 60).Select(number => (long)number), (await ChangesAsync()).Select(change => change.Number));
        Assert.Equal(60, (await KitchenAsync()).LastChange);
    }

    [ContractFact]
    public async Task Writers_of_two_databases_on_one_store_all_get_through()
    {
        await using var other = await Fresh.OpenAsync();

        await AtOnceAsync(30, async i =>
        {
            await using var work = await (i % 2 == 0 ? Database : other).BeginAsync(Intent.Write);
            var write = await work.Formulas.CreateAsync(Quay, $"rub-{i}", Draft());
            await work.CommitAsync();
            return write;
        });

        Assert.Equal(Enumerable.Range(1, 30).Select(number => (long)number), (await ChangesAsync()).Select(change => change.Number));
    }

    [ContractFact]
    public async Task A_writer_waits_while_another_holds_the_store()
    {
        await using var other = await Fresh.OpenAsync();
        Task<FormulaWrite> waiting;
        await using (var holder = await other.BeginAsync(Intent.Write))
        {
            await holder.Formulas.CreateAsync(Quay, "first", Draft());
            waiting = Task.Run(() => CreateAsync("second"));
            await Task.Delay(400);
            Assert.False(waiting.IsCompleted);
            await holder.CommitAsync();
        }

        Assert.True((await waiting).IsWritten);
        Assert.Equal(["first", "second"], (await ChangesAsync()).Select(change => change.ItemId));
    }

    [ContractFact]
    public async Task Readers_go_on_while_a_writer_holds_the_store()
    {
        await CreateAsync("rub-1", Draft("Before"));
        await using var holder = await Database.BeginAsync(Intent.Write);
        await holder.Formulas.ReplaceAsync(Quay, "rub-1", 1, Draft("Not yet"));

        var seen = await AtOnceAsync(8, _ => GetAsync("rub-1"));

        Assert.All(seen, formula => Assert.Equal("Before", formula!.Name));
    }

    [ContractFact]
    public async Task A_formula_is_never_seen_without_its_revision_and_change()
    {
        await CreateAsync("rub-1");
        var writer = Task.Run(async () =>
        {
            for (var revision = 1; revision <= 30; revision++)
            {
                await ReplaceAsync("rub-1", revision, Draft($"Number {revision + 1}"));
            }
        });

        while (!writer.IsCompleted)
        {
            await using var work = await Database.BeginAsync(Intent.Read);
            var last = (await work.Kitchens.GetAsync(Quay))!.LastChange;
            var change = Assert.Single(await work.Changes.ListAsync(Quay, last - 1, 10));
            Assert.Equal(last, change.Number);
        }

        await writer;
        Assert.Equal(31, (await GetAsync("rub-1"))!.Revision);
    }

    private static async Task<T[]> AtOnceAsync<T>(int count, Func<int, Task<T>> work)
    {
        var start = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        var all = Enumerable.Range(0, count).Select(i => Task.Run(async () =>
        {
            await start.Task;
            return await work(i);
        })).ToArray();
        start.SetResult();
        return await Task.WhenAll(all);
    }
}
