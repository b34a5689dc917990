using RubLab.Storage.Replays;

namespace RubLab.Storage.Tests.Contract;

public abstract class ReplayContract<TFresh> : StoreContract<TFresh>
    where TFresh : FreshDatabase, new()
{
    private static readonly StoredAnswer Created = new(201, "Location: /v1/formulas/rub-1\nETag: \"1\"", """{"id":"rub-1","name":"🔥"}""");

    [ContractFact]
    public async Task A_saved_answer_is_found_as_it_was()
    {
        Assert.True(await SaveAsync("key-1", "hash-1", Created));

        Assert.Equal(new Replay("key-1", "hash-1", Created, Clock.GetUtcNow()), await FindAsync("key-1"));
        Assert.Null(await FindAsync("key-2"));
    }

    [ContractFact]
    public async Task A_key_already_answered_keeps_its_first_answer()
    {
        await SaveAsync("key-1", "hash-1", Created);

        Assert.False(await SaveAsync("key-1", "hash-2", new StoredAnswer(500, "", "")));

        Assert.Equal("hash-1", (await FindAsync("key-1"))!.RequestHash);
        Assert.Equal(Created, (await FindAsync("key-1"))!.Answer);
    }

    [ContractFact]
    public async Task Two_kitchens_may_use_the_same_key()
    {
        await SaveAsync("key-1", "hash-1", Created);

        Assert.Null(await FindAsync("key-1", Lock));
        Assert.True(await SaveAsync("key-1", "hash-2", Created, Lock));
        Assert.Equal("hash-1", (await FindAsync("key-1"))!.RequestHash);
    }

    [ContractFact]
    public async Task The_answer_and_its_formula_are_kept_together()
    {
        await using (var work = await Database.BeginAsync(Intent.Write))
        {
            await work.Formulas.CreateAsync(Quay, "rub-1", Draft());
            await work.Replays.SaveAsync(Quay, "key-1", "hash-1", Created);
            await work.CommitAsync();
        }

        Assert.Equal(1, (await GetAsync("rub-1"))!.Revision);
        Assert.Equal(Created, (await FindAsync("key-1"))!.Answer);
    }

    [ContractFact]
    public async Task The_answer_and_its_formula_are_lost_together()
    {
        await using (var work = await Database.BeginAsync(Intent.Write))
        {
            await work.Formulas.CreateAsync(Quay, "rub-1", Draft());
            await work.Replays.SaveAsync(Quay, "key-1", "hash-1", Created);
        }

        Assert.Null(await GetAsync("rub-1"));
        Assert.Null(await FindAsync("key-1"));
    }

    [ContractFact]
    public async Task Old_answers_are_forgotten_and_young_ones_kept()
    {
        await SaveAsync("old", "hash", Created);
        await SaveAsync("old", "hash", Created, Lock);
        var limit = Clock.Advance(TimeSpan.FromTicks(1));
        await SaveAsync("young", "hash", Created);

        Assert.Equal(2, await WriteAsync(work => work.Replays.DeleteOlderThanAsync(limit)));

        Assert.Null(await FindAsync("old"));
        Assert.Null(await FindAsync("old", Lock));
        Assert.Equal(limit, (await FindAsync("young"))!.CreatedAt);
    }

    [ContractFact]
    public async Task Of_many_saves_under_one_key_exactly_one_is_kept()
    {
        var saves = await Task.WhenAll(Enumerable.Range(0, 8).Select(i => Task.Run(() => SaveAsync("key-1", $"hash-{i}", Created))));

        Assert.Equal(1, saves.Count(saved => saved));
    }

    private Task<bool> SaveAsync(string key, string hash, StoredAnswer answer, string kitchen = Quay) =>
        WriteAsync(work => work.Replays.SaveAsync(kitchen, key, hash, answer));

    private Task<Replay?> FindAsync(string key, string kitchen = Quay) => ReadAsync(work => work.Replays.FindAsync(kitchen, key));
}
