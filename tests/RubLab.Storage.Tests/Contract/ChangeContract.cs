using RubLab.Storage.Changes;

namespace RubLab.Storage.Tests.Contract;

public abstract class ChangeContract<TFresh> : StoreContract<TFresh>
    where TFresh : FreshDatabase, new()
{
    [ContractFact]
    public async Task Each_write_of_a_formula_is_one_numbered_change()
    {
        var created = Clock.GetUtcNow();
        await CreateAsync("rub-1");
        var replaced = Clock.Advance(TimeSpan.FromMinutes(1));
        await ReplaceAsync("rub-1", 1, Draft("Two"));
        var deleted = Clock.Advance(TimeSpan.FromMinutes(1));
        await DeleteAsync("rub-1", 2);

        Assert.Equal(
            [
                new Change(1, "formula", "rub-1", 1, ChangeAction.Put, created),
                new Change(2, "formula", "rub-1", 2, ChangeAction.Put, replaced),
                new Change(3, "formula", "rub-1", 2, ChangeAction.Deleted, deleted),
            ],
            await ChangesAsync());
        Assert.Equal(3, (await KitchenAsync()).LastChange);
    }

    [ContractFact]
    public async Task The_feed_goes_on_after_a_number()
    {
        for (var i = 1; i <= 5; i++)
        {
            await CreateAsync($"rub-{i}");
        }

        Assert.Equal([1, 2], (await ChangesAsync(0, 2)).Select(change => change.Number));
        Assert.Equal([3, 4], (await ChangesAsync(2, 2)).Select(change => change.Number));
        Assert.Equal([5], (await ChangesAsync(4, 2)).Select(change => change.Number));
        Assert.Empty(await ChangesAsync(5, 2));
    }

    [ContractFact]
    public async Task Each_kitchen_numbers_its_own_changes()
    {
        await CreateAsync("rub-1");
        await CreateAsync("rub-2", kitchen: Lock);
        await CreateAsync("rub-3");

        Assert.Equal([1, 2], (await ChangesAsync()).Select(change => change.Number));
        Assert.Equal(["rub-2"], (await ChangesAsync(kitchen: Lock)).Select(change => change.ItemId));
        Assert.Equal(1, (await KitchenAsync(Lock)).LastChange);
    }

    [ContractFact]
    public async Task A_rollback_leaves_no_gap_in_the_numbers()
    {
        await CreateAsync("rub-1");
        await using (var work = await Database.BeginAsync(Intent.Write))
        {
            await work.Formulas.CreateAsync(Quay, "lost-1", Draft());
            await work.Formulas.CreateAsync(Quay, "lost-2", Draft());
        }

        await CreateAsync("rub-2");

        Assert.Equal([(1, "rub-1"), (2, "rub-2")], (await ChangesAsync()).Select(change => (change.Number, change.ItemId)));
    }

    [ContractFact]
    public async Task Several_writes_of_one_unit_are_numbered_in_their_order()
    {
        await using (var work = await Database.BeginAsync(Intent.Write))
        {
            await work.Formulas.CreateAsync(Quay, "b", Draft());
            await work.Formulas.CreateAsync(Quay, "a", Draft());
            await work.Formulas.ReplaceAsync(Quay, "b", 1, Draft("Two"));
            await work.CommitAsync();
        }

        Assert.Equal(["b", "a", "b"], (await ChangesAsync()).Select(change => change.ItemId));
        Assert.Equal([1, 2, 3], (await ChangesAsync()).Select(change => change.Number));
    }
}
