using System.Data.Common;
using RubLab.Storage.Changes;
using RubLab.Storage.Kitchens;
using RubLab.Storage.OwnNumbers;

namespace RubLab.Storage.Tests.Contract;
/// <summary>What is asked of every kind of number that a kitchen measures itself.</summary>
/// <param name="noun">The word in the change feed.</param>
/// <param name="revisions">The table of revisions.</param>
/// <param name="one">A key that is written to.</param>
/// <param name="id">As the change feed names it.</param>
/// <param name="others">Keys that nothing is written to.</param>
/// <param name="ordered">Keys that put the order of a list to the test, in that order.</param>
public abstract class OwnNumberContract<TFresh, TKey>(string noun, string revisions, TKey one, string id, TKey[] others, TKey[] ordered)
    : StoreContract<TFresh>
    where TFresh : FreshDatabase, new()
    where TKey : class, IOwnNumberKey<TKey>
{
    [ContractFact]
    public async Task A_new_number_reads_back_as_revision_one()
    {
        var written = await PutAsync(one, null, """{"measured":[18.1]}""");

        Assert.Equal(WriteOutcome.Written, written.Outcome);
        Assert.Equal(new StoredOwnNumber<TKey>(one, 1, """{"measured":[18.1]}""", Clock.GetUtcNow()), written.Stored);
        Assert.Equal(written.Stored, await GetNumberAsync(one));
    }

    [ContractFact]
    public async Task A_new_number_where_there_is_one_changes_nothing()
    {
        var first = await PutAsync(one, null, "[1]");

        var second = await PutAsync(one, null, "[2]");

        Assert.Equal((WriteOutcome.Taken, 1L), (second.Outcome, second.CurrentRevision));
        Assert.Equal(first.Stored, await GetNumberAsync(one));
        Assert.Equal(1, await RevisionAsync());
    }

    [ContractFact]
    public async Task A_replaced_number_goes_up_one_revision()
    {
        await PutAsync(one, null, "[1]");
        var later = Clock.Advance(TimeSpan.FromMinutes(5));

        var written = await PutAsync(one, 1, "[2]");

        Assert.Equal(new StoredOwnNumber<TKey>(one, 2, "[2]", later), written.Stored);
        Assert.Equal(written.Stored, await GetNumberAsync(one));
    }

    [ContractFact]
    public async Task A_write_with_another_revision_than_there_is_changes_nothing()
    {
        await PutAsync(one, null, "[1]");
        var current = await PutAsync(one, 1, "[2]");

        foreach (var expected in (long[])[0, 1, 3])
        {
            var put = await PutAsync(one, expected, "[3]");
            var deleted = await DeleteNumberAsync(one, expected);

            Assert.Equal((WriteOutcome.Stale, 2L), (put.Outcome, put.CurrentRevision));
            Assert.Equal((WriteOutcome.Stale, 2L), (deleted.Outcome, deleted.CurrentRevision));
        }

        Assert.Equal(current.Stored, await GetNumberAsync(one));
        Assert.Equal(2, (await ChangesAsync()).Count);
        Assert.Equal(2, await RevisionAsync());
    }

    [ContractFact]
    public async Task What_is_not_there_is_null_and_can_be_neither_replaced_nor_deleted()
    {
        await PutAsync(one, null, "[1]");

        foreach (var other in others)
        {
            Assert.Null(await GetNumberAsync(other));
            Assert.Equal(WriteOutcome.Missing, (await PutAsync(other, 1, "[1]")).Outcome);
            Assert.Equal(WriteOutcome.Missing, (await DeleteNumberAsync(other, 1)).Outcome);
        }

        Assert.Equal(1, await RevisionAsync());
    }

    [ContractFact]
    public async Task A_deleted_number_is_gone_and_put_again_goes_on_with_its_numbering()
    {
        await PutAsync(one, null, "[1]");
        await PutAsync(one, 1, "[2]");

        var deleted = await DeleteNumberAsync(one, 2);

        Assert.Equal("[2]", deleted.Stored!.Document);
        Assert.Null(await GetNumberAsync(one));
        Assert.Empty(await AllAsync());
        Assert.Empty(await ListNumbersAsync());
        Assert.Equal(WriteOutcome.Missing, (await PutAsync(one, 2, "[3]")).Outcome);
        Assert.Equal(WriteOutcome.Missing, (await DeleteNumberAsync(one, 2)).Outcome);
        Assert.Equal(3, (await PutAsync(one, null, "[3]")).Stored!.Revision);
    }

    [ContractFact]
    public async Task Each_write_is_one_numbered_change_and_raises_the_kitchens_revision_of_its_kind()
    {
        var at = Clock.GetUtcNow();
        await PutAsync(one, null, "[1]");
        await CreateAsync("rub-1");
        await PutAsync(one, 1, "[2]");
        await DeleteNumberAsync(one, 2);

        Assert.Equal(
            [
                new Change(1, noun, id, 1, ChangeAction.Put, at),
                new Change(2, "formula", "rub-1", 1, ChangeAction.Put, at),
                new Change(3, noun, id, 2, ChangeAction.Put, at),
                new Change(4, noun, id, 2, ChangeAction.Deleted, at),
            ],
            await ChangesAsync());
        Assert.Equal((3L, 4L), (await RevisionAsync(), (await KitchenAsync()).LastChange));
        Assert.Equal(0, await RevisionAsync(Lock));
    }

    [ContractFact]
    public async Task All_that_a_number_touches_is_lost_together()
    {
        await using (var work = await Database.BeginAsync(Intent.Write))
        {
            Assert.True((await Store(work).PutAsync(Quay, one, null, "[1]")).IsWritten);
            Assert.Equal(1, RevisionOf((await work.Kitchens.GetAsync(Quay))!));
        }

        Assert.Null(await GetNumberAsync(one));
        Assert.Empty(await RevisionsAsync(one));
        Assert.Empty(await ChangesAsync());
        Assert.Equal(0, await RevisionAsync());
    }

    [ContractFact]
    public async Task Numbers_are_listed_in_pages_by_the_ids_of_their_keys_by_code_point()
    {
        foreach (var key in ordered.Reverse())
        {
            await PutAsync(key, null, "{}");
        }

        var paged = new List<StoredOwnNumber<TKey>>();
        TKey? after = null;
        while (await ListNumbersAsync(3, after) is { Count: > 0 } page)
        {
            paged.AddRange(page);
            after = page[^1].Key;
        }

        Assert.Equal(ordered, paged.Select(stored => stored.Key));
        Assert.Equal(paged, await AllAsync());
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => ListNumbersAsync(0));
    }

    [ContractFact]
    public async Task Two_kitchens_keep_their_numbers_apart()
    {
        await PutAsync(one, null, "[1]");
        await PutAsync(one, null, "[2]", Lock);

        Assert.Equal(WriteOutcome.Written, (await DeleteNumberAsync(one, 1, Lock)).Outcome);

        Assert.Equal("[1]", Assert.Single(await AllAsync()).Document);
        Assert.Empty(await AllAsync(Lock));
        Assert.Equal((1L, 2L), (await RevisionAsync(), await RevisionAsync(Lock)));
    }

    [ContractFact]
    public async Task Every_write_leaves_a_revision_that_outlives_its_number()
    {
        await PutAsync(one, null, "[1]");
        await PutAsync(one, 1, "[2]");
        await DeleteNumberAsync(one, 2);
        await PutAsync(one, null, "[3]");

        Assert.Equal(["1 [1]", "2 [2]", "3 [3]"], (await RevisionsAsync(one)).Select(d => $"{d.Revision} {d.Document}"));
        Assert.Equal(["2 [2]"], (await RevisionsAsync(one, 1, 1)).Select(d => $"{d.Revision} {d.Document}"));
        Assert.Empty(await RevisionsAsync(others[0]));
    }

    [ContractFact]
    public async Task The_engine_itself_refuses_to_change_or_delete_a_revision()
    {
        await PutAsync(one, null, "[1]");

        await Assert.ThrowsAnyAsync<DbException>(() => Fresh.ExecuteAsync($"UPDATE {revisions} SET document = '[2]'"));
        await Assert.ThrowsAnyAsync<DbException>(() => Fresh.ExecuteAsync($"DELETE FROM {revisions}"));

        Assert.Equal("[1]", Assert.Single(await RevisionsAsync(one)).Document);
    }

    [ContractFact]
    public async Task Of_many_who_put_a_new_number_at_once_exactly_one_wins()
    {
        var writes = await Task.WhenAll(Enumerable.Range(0, 12).Select(i => Task.Run(() => PutAsync(one, null, $"[{i}]"))));

        var winner = Assert.Single(writes, write => write.IsWritten);
        Assert.Equal(11, writes.Count(write => write is { Outcome: WriteOutcome.Taken, CurrentRevision: 1 }));
        Assert.Equal(winner.Stored, await GetNumberAsync(one));
        Assert.Equal(1, await RevisionAsync());
    }

    [ContractFact]
    public async Task Parallel_writers_of_numbers_and_formulas_number_their_changes_without_gap()
    {
        await Task.WhenAll(Enumerable.Range(0, 30).Select(i => Task.Run<object>(async () =>
            i % 2 == 0 ? await PutAsync(TKey.Of($"own-{i}", "form"), null, "{}") : await CreateAsync($"rub-{i}"))));

        Assert.Equal(Enumerable.Range(1, 30).Select(number => (long)number), (await ChangesAsync()).Select(change => change.Number));
        Assert.Equal(15, await RevisionAsync());
    }

    [ContractFact]
    public async Task A_number_of_a_kitchen_that_does_not_exist_is_an_error()
    {
        await Assert.ThrowsAnyAsync<DbException>(() => PutAsync(one, null, "{}", "nowhere"));
    }

    [ContractFact]
    public async Task A_key_without_all_its_ids_is_refused()
    {
        for (var i = 0; i < one.Parts.Length; i++)
        {
            var ids = one.Parts;
            ids[i] = "";
            await Assert.ThrowsAsync<ArgumentException>(() => PutAsync(TKey.Of(ids[0], ids.ElementAtOrDefault(1)), null, "{}"));
        }

        Assert.Empty(await AllAsync());
    }

    protected abstract OwnNumberStore<TKey> Store(UnitOfWork work);

    protected abstract long RevisionOf(Kitchen kitchen);

    private async Task<long> RevisionAsync(string kitchen = Quay) => RevisionOf(await KitchenAsync(kitchen));

    private Task<OwnNumberWrite<TKey>> PutAsync(TKey key, long? expected, string document, string kitchen = Quay) =>
        WriteAsync(work => Store(work).PutAsync(kitchen, key, expected, document));

    private Task<OwnNumberWrite<TKey>> DeleteNumberAsync(TKey key, long expected, string kitchen = Quay) =>
        WriteAsync(work => Store(work).DeleteAsync(kitchen, key, expected));

    private Task<StoredOwnNumber<TKey>?> GetNumberAsync(TKey key) =>
        ReadAsync(work => Store(work).GetAsync(Quay, key));

    private Task<IReadOnlyList<StoredOwnNumber<TKey>>> ListNumbersAsync(int limit = 100, TKey? after = null) =>
        ReadAsync(work => Store(work).ListAsync(Quay, limit, after));

    private Task<IReadOnlyList<StoredOwnNumber<TKey>>> AllAsync(string kitchen = Quay) => ReadAsync(work => Store(work).AllAsync(kitchen));

    private Task<IReadOnlyList<StoredOwnNumber<TKey>>> RevisionsAsync(TKey key, int limit = 100, long after = 0) =>
        ReadAsync(work => Store(work).ListRevisionsAsync(Quay, key, limit, after));
}
