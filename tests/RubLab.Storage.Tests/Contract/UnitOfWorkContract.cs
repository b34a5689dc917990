namespace RubLab.Storage.Tests.Contract;

public abstract class UnitOfWorkContract<TFresh> : StoreContract<TFresh>
    where TFresh : FreshDatabase, new()
{
    [ContractFact]
    public async Task A_unit_disposed_without_commit_leaves_nothing()
    {
        await using (var work = await Database.BeginAsync(Intent.Write))
        {
            await work.Kitchens.EnsureAsync("ghost", "Ghost");
            await work.Formulas.CreateAsync("ghost", "rub-1", Draft());
            await work.Keys.IssueAsync(Quay, "Ghost", ["all"]);
            await work.Formulas.CreateAsync(Quay, "rub-1", Draft());
        }

        Assert.Null(await ReadAsync(work => work.Kitchens.GetAsync("ghost")));
        Assert.Null(await GetAsync("rub-1"));
        Assert.Empty(await RevisionsAsync("rub-1"));
        Assert.Empty(await ChangesAsync());
        Assert.Empty(await ReadAsync(work => work.Keys.ListAsync(Quay)));
        Assert.Equal(0, (await KitchenAsync()).LastChange);
    }

    [ContractFact]
    public async Task A_unit_sees_what_it_wrote_and_others_do_not_until_it_commits()
    {
        await using var work = await Database.BeginAsync(Intent.Write);
        await work.Formulas.CreateAsync(Quay, "rub-1", Draft("Inside"));

        Assert.Equal("Inside", (await work.Formulas.GetAsync(Quay, "rub-1"))!.Name);
        Assert.Null(await GetAsync("rub-1"));

        await work.CommitAsync();
        Assert.Equal("Inside", (await GetAsync("rub-1"))!.Name);
    }

    [ContractFact]
    public async Task A_unit_for_reading_refuses_to_write()
    {
        await using var work = await Database.BeginAsync(Intent.Read);

        await Assert.ThrowsAsync<InvalidOperationException>(() => work.Formulas.CreateAsync(Quay, "rub-1", Draft()));
        await Assert.ThrowsAsync<InvalidOperationException>(() => work.Kitchens.EnsureAsync("pier", "Pier"));
    }

    [ContractFact]
    public async Task A_unit_that_has_ended_does_nothing_more()
    {
        await using var work = await Database.BeginAsync(Intent.Write);
        await work.CommitAsync();

        await Assert.ThrowsAsync<InvalidOperationException>(() => work.Formulas.GetAsync(Quay, "rub-1"));
        await Assert.ThrowsAsync<InvalidOperationException>(() => work.CommitAsync());
    }

    [ContractFact]
    public async Task All_that_a_unit_writes_carries_one_time()
    {
        await using (var work = await Database.BeginAsync(Intent.Write))
        {
            await work.Formulas.CreateAsync(Quay, "rub-1", Draft());
            Clock.Advance(TimeSpan.FromMinutes(1));
            await work.Formulas.CreateAsync(Quay, "rub-2", Draft());
            await work.CommitAsync();
        }

        Assert.Single((await ChangesAsync()).Select(change => change.At).Distinct());
    }

    [ContractFact]
    public async Task Cancelling_before_a_commit_keeps_nothing()
    {
        using var cancel = new CancellationTokenSource();
        await using (var work = await Database.BeginAsync(Intent.Write, cancel.Token))
        {
            await work.Formulas.CreateAsync(Quay, "rub-1", Draft(), cancel.Token);
            await cancel.CancelAsync();
            await Assert.ThrowsAnyAsync<OperationCanceledException>(() => work.CommitAsync(cancel.Token));
        }

        Assert.Null(await GetAsync("rub-1"));
    }

    [ContractFact]
    public async Task A_cancelled_query_is_not_run()
    {
        using var cancel = new CancellationTokenSource();
        await cancel.CancelAsync();
        await using var work = await Database.BeginAsync(Intent.Read);

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => work.Formulas.ListAsync(Quay, 10, cancellation: cancel.Token));
    }

    [ContractFact]
    public async Task A_statement_that_fails_does_not_keep_later_units_from_writing()
    {
        await Assert.ThrowsAnyAsync<System.Data.Common.DbException>(() => CreateAsync("rub-1", kitchen: "nowhere"));

        Assert.True((await CreateAsync("rub-1")).IsWritten);
    }

    [ContractFact]
    public async Task What_was_committed_is_there_after_reopening()
    {
        var created = await CreateAsync("rub-1", Draft("Lasting"));

        await using var again = await Fresh.OpenAsync();
        await using var work = await again.BeginAsync(Intent.Read);

        Assert.Equal(created.Formula, await work.Formulas.GetAsync(Quay, "rub-1"));
    }
}
