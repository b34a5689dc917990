namespace RubLab.Storage.Tests.Contract;

public abstract class KitchenContract<TFresh> : StoreContract<TFresh>
    where TFresh : FreshDatabase, new()
{
    [ContractFact]
    public async Task A_new_kitchen_starts_with_no_changes_no_densities_and_no_examples()
    {
        var kitchen = await WriteAsync(work => work.Kitchens.EnsureAsync("pier", "Pier"));

        Assert.Equal("pier", kitchen.Id);
        Assert.Equal("Pier", kitchen.Name);
        Assert.Equal(0, kitchen.DensityRevision);
        Assert.Equal(0, kitchen.YieldRevision);
        Assert.Equal(0, kitchen.LastChange);
        Assert.Null(kitchen.ExamplesEdition);
        Assert.Equal(Clock.GetUtcNow(), kitchen.CreatedAt);
    }

    [ContractFact]
    public async Task Ensuring_a_kitchen_twice_keeps_the_first_name_and_time()
    {
        var first = await WriteAsync(work => work.Kitchens.EnsureAsync("pier", "Pier"));
        Clock.Advance(TimeSpan.FromDays(1));

        var second = await WriteAsync(work => work.Kitchens.EnsureAsync("pier", "Another name"));

        Assert.Equal(first, second);
    }

    [ContractFact]
    public async Task An_unknown_kitchen_is_null()
    {
        Assert.Null(await ReadAsync(work => work.Kitchens.GetAsync("nowhere")));
    }

    [ContractFact]
    public async Task Examples_can_be_claimed_once_only()
    {
        Assert.True(await WriteAsync(work => work.Kitchens.ClaimExamplesAsync(Quay, "2026.1")));
        Assert.False(await WriteAsync(work => work.Kitchens.ClaimExamplesAsync(Quay, "2026.3")));

        Assert.Equal("2026.1", (await KitchenAsync()).ExamplesEdition);
        Assert.Null((await KitchenAsync(Lock)).ExamplesEdition);
    }

    [ContractFact]
    public async Task A_claim_that_is_not_committed_can_be_made_again()
    {
        await using (var work = await Database.BeginAsync(Intent.Write))
        {
            Assert.True(await work.Kitchens.ClaimExamplesAsync(Quay, "2026.1"));
        }

        Assert.True(await WriteAsync(work => work.Kitchens.ClaimExamplesAsync(Quay, "2026.1")));
    }

    [ContractFact]
    public async Task Examples_of_an_unknown_kitchen_are_not_claimed()
    {
        Assert.False(await WriteAsync(work => work.Kitchens.ClaimExamplesAsync("nowhere", "2026.1")));
    }
}
