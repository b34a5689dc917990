using System.Data.Common;
using RubLab.Storage.Changes;
using RubLab.Storage.Densities;

namespace RubLab.Storage.Tests.Contract;

public abstract class DensityContract<TFresh> : StoreContract<TFresh>
    where TFresh : FreshDatabase, new()
{
    [ContractFact]
    public async Task A_new_density_reads_back_as_revision_one()
    {
        var written = await PutAsync("salt", "table", null, """{"weighings":[18.1]}""");

        Assert.Equal(WriteOutcome.Written, written.Outcome);
        Assert.Equal(new StoredDensity("salt", "table", 1, """{"weighings":[18.1]}""", Clock.GetUtcNow()), written.Density);
        Assert.Equal(written.Density, await GetDensityAsync("salt", "table"));
    }

    [ContractFact]
    public async Task A_new_density_where_there_is_one_changes_nothing()
    {
        var first = await PutAsync("salt", "table", null, "[1]");

        var second = await PutAsync("salt", "table", null, "[2]");

        Assert.Equal((WriteOutcome.Taken, 1L), (second.Outcome, second.CurrentRevision));
        Assert.Equal(first.Density, await GetDensityAsync("salt", "table"));
        Assert.Equal(1, (await KitchenAsync()).DensityRevision);
    }

    [ContractFact]
    public async Task A_replaced_density_goes_up_one_revision()
    {
        await PutAsync("salt", "table", null, "[1]");
        var later = Clock.Advance(TimeSpan.FromMinutes(5));

        var written = await PutAsync("salt", "table", 1, "[2]");

        Assert.Equal(new StoredDensity("salt", "table", 2, "[2]", later), written.Density);
        Assert.Equal(written.Density, await GetDensityAsync("salt", "table"));
    }

    [ContractFact]
    public async Task A_write_with_another_revision_than_there_is_changes_nothing()
    {
        await PutAsync("salt", "table", null, "[1]");
        var current = await PutAsync("salt", "table", 1, "[2]");

        foreach (var expected in (long[])[0, 1, 3])
        {
            var put = await PutAsync("salt", "table", expected, "[3]");
            var deleted = await DeleteDensityAsync("salt", "table", expected);

            Assert.Equal((WriteOutcome.Stale, 2L), (put.Outcome, put.CurrentRevision));
            Assert.Equal((WriteOutcome.Stale, 2L), (deleted.Outcome, deleted.CurrentRevision));
        }

        Assert.Equal(current.Density, await GetDensityAsync("salt", "table"));
        Assert.Equal(2, (await ChangesAsync()).Count);
        Assert.Equal(2, (await KitchenAsync()).DensityRevision);
    }

    [ContractFact]
    public async Task What_is_not_there_is_null_and_can_be_neither_replaced_nor_deleted()
    {
        await PutAsync("salt", "table", null, "[1]");

        Assert.Null(await GetDensityAsync("salt", "flake"));
        Assert.Null(await GetDensityAsync("sugar", "table"));
        Assert.Equal(WriteOutcome.Missing, (await PutAsync("salt", "flake", 1, "[1]")).Outcome);
        Assert.Equal(WriteOutcome.Missing, (await DeleteDensityAsync("salt", "flake", 1)).Outcome);
        Assert.Equal(1, (await KitchenAsync()).DensityRevision);
    }

    [ContractFact]
    public async Task A_deleted_density_is_gone_and_put_again_goes_on_with_its_numbering()
    {
        await PutAsync("salt", "table", null, "[1]");
        await PutAsync("salt", "table", 1, "[2]");

        var deleted = await DeleteDensityAsync("salt", "table", 2);

        Assert.Equal("[2]", deleted.Density!.Document);
        Assert.Null(await GetDensityAsync("salt", "table"));
        Assert.Empty(await AllAsync());
        Assert.Empty(await ListDensitiesAsync());
        Assert.Equal(WriteOutcome.Missing, (await PutAsync("salt", "table", 2, "[3]")).Outcome);
        Assert.Equal(WriteOutcome.Missing, (await DeleteDensityAsync("salt", "table", 2)).Outcome);
        Assert.Equal(3, (await PutAsync("salt", "table", null, "[3]")).Density!.Revision);
    }

    [ContractFact]
    public async Task Each_write_is_one_numbered_change_and_raises_the_kitchens_density_revision()
    {
        var at = Clock.GetUtcNow();
        await PutAsync("salt", "table", null, "[1]");
        await CreateAsync("rub-1");
        await PutAsync("salt", "table", 1, "[2]");
        await DeleteDensityAsync("salt", "table", 2);

        Assert.Equal(
            [
                new Change(1, "density", "salt/table", 1, ChangeAction.Put, at),
                new Change(2, "formula", "rub-1", 1, ChangeAction.Put, at),
                new Change(3, "density", "salt/table", 2, ChangeAction.Put, at),
                new Change(4, "density", "salt/table", 2, ChangeAction.Deleted, at),
            ],
            await ChangesAsync());
        Assert.Equal((3L, 4L), ((await KitchenAsync()).DensityRevision, (await KitchenAsync()).LastChange));
        Assert.Equal(0, (await KitchenAsync(Lock)).DensityRevision);
    }

    [ContractFact]
    public async Task All_that_a_density_touches_is_lost_together()
    {
        await using (var work = await Database.BeginAsync(Intent.Write))
        {
            Assert.True((await work.Densities.PutAsync(Quay, "salt", "table", null, "[1]")).IsWritten);
            Assert.Equal(1, (await work.Kitchens.GetAsync(Quay))!.DensityRevision);
        }

        Assert.Null(await GetDensityAsync("salt", "table"));
        Assert.Empty(await RevisionsAsync("salt", "table"));
        Assert.Empty(await ChangesAsync());
        Assert.Equal(0, (await KitchenAsync()).DensityRevision);
    }

    [ContractFact]
    public async Task Densities_are_listed_in_pages_by_ingredient_and_form_by_code_point()
    {
        (string, string)[] ordered = [("Z", "a"), ("a", "B"), ("a", "a"), ("a", "a-b"), ("a", "ab"), ("a-a", "a"), ("aa", "a"), ("é", "a")];
        foreach (var (ingredient, form) in ordered.Reverse())
        {
            await PutAsync(ingredient, form, null, "{}");
        }

        var paged = new List<StoredDensity>();
        DensityPosition? after = null;
        while (await ListDensitiesAsync(3, after) is { Count: > 0 } page)
        {
            paged.AddRange(page);
            after = new DensityPosition(page[^1].IngredientId, page[^1].FormId);
        }

        Assert.Equal(ordered, paged.Select(density => (density.IngredientId, density.FormId)));
        Assert.Equal(paged, await AllAsync());
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => ListDensitiesAsync(0));
    }

    [ContractFact]
    public async Task Two_kitchens_keep_their_densities_apart()
    {
        await PutAsync("salt", "table", null, "[1]");
        await PutAsync("salt", "table", null, "[2]", Lock);

        Assert.Equal(WriteOutcome.Written, (await DeleteDensityAsync("salt", "table", 1, Lock)).Outcome);

        Assert.Equal("[1]", Assert.Single(await AllAsync()).Document);
        Assert.Empty(await AllAsync(Lock));
        Assert.Equal((1L, 2L), ((await KitchenAsync()).DensityRevision, (await KitchenAsync(Lock)).DensityRevision));
    }

    [ContractFact]
    public async Task Every_write_leaves_a_revision_that_outlives_its_density()
    {
        await PutAsync("salt", "table", null, "[1]");
        await PutAsync("salt", "table", 1, "[2]");
        await DeleteDensityAsync("salt", "table", 2);
        await PutAsync("salt", "table", null, "[3]");

        Assert.Equal(["1 [1]", "2 [2]", "3 [3]"], (await RevisionsAsync("salt", "table")).Select(d => $"{d.Revision} {d.Document}"));
        Assert.Equal(["2 [2]"], (await RevisionsAsync("salt", "table", 1, 1)).Select(d => $"{d.Revision} {d.Document}"));
        Assert.Empty(await RevisionsAsync("salt", "flake"));
    }

    [ContractFact]
    public async Task The_engine_itself_refuses_to_change_or_delete_a_revision()
    {
        await PutAsync("salt", "table", null, "[1]");

        await Assert.ThrowsAnyAsync<DbException>(() => Fresh.ExecuteAsync("UPDATE density_revisions SET document = '[2]'"));
        await Assert.ThrowsAnyAsync<DbException>(() => Fresh.ExecuteAsync("DELETE FROM density_revisions"));

        Assert.Equal("[1]", Assert.Single(await RevisionsAsync("salt", "table")).Document);
    }

    [ContractFact]
    public async Task Of_many_who_put_a_new_density_at_once_exactly_one_wins()
    {
        var writes = await Task.WhenAll(Enumerable.Range(0, 12).Select(i => Task.Run(() => PutAsync("salt", "table", null, $"[{i}]"))));

        var winner = Assert.Single(writes, write => write.IsWritten);
        Assert.Equal(11, writes.Count(write => write is { Outcome: WriteOutcome.Taken, CurrentRevision: 1 }));
        Assert.Equal(winner.Density, await GetDensityAsync("salt", "table"));
        Assert.Equal(1, (await KitchenAsync()).DensityRevision);
    }

    [ContractFact]
    public async Task Parallel_writers_of_densities_and_formulas_number_their_changes_without_gap()
    {
        await Task.WhenAll(Enumerable.Range(0, 30).Select(i => Task.Run<object>(async () =>
            i % 2 == 0 ? await PutAsync("salt", $"form-{i}", null, "{}") : await CreateAsync($"rub-{i}"))));

        Assert.Equal(Enumerable.Range(1, 30).Select(number => (long)number), (await ChangesAsync()).Select(change => change.Number));
        Assert.Equal(15, (await KitchenAsync()).DensityRevision);
    }

    [ContractFact]
    public async Task A_density_of_a_kitchen_that_does_not_exist_is_an_error()
    {
        await Assert.ThrowsAnyAsync<DbException>(() => PutAsync("salt", "table", null, "{}", "nowhere"));
    }

    private Task<DensityWrite> PutAsync(string ingredient, string form, long? expected, string document, string kitchen = Quay) =>
        WriteAsync(work => work.Densities.PutAsync(kitchen, ingredient, form, expected, document));

    private Task<DensityWrite> DeleteDensityAsync(string ingredient, string form, long expected, string kitchen = Quay) =>
        WriteAsync(work => work.Densities.DeleteAsync(kitchen, ingredient, form, expected));

    private Task<StoredDensity?> GetDensityAsync(string ingredient, string form) =>
        ReadAsync(work => work.Densities.GetAsync(Quay, ingredient, form));

    private Task<IReadOnlyList<StoredDensity>> ListDensitiesAsync(int limit = 100, DensityPosition? after = null) =>
        ReadAsync(work => work.Densities.ListAsync(Quay, limit, after));

    private Task<IReadOnlyList<StoredDensity>> AllAsync(string kitchen = Quay) => ReadAsync(work => work.Densities.AllAsync(kitchen));

    private Task<IReadOnlyList<StoredDensity>> RevisionsAsync(string ingredient, string form, int limit = 100, long after = 0) =>
        ReadAsync(work => work.Densities.ListRevisionsAsync(Quay, ingredient, form, limit, after));
}
