using RubLab.Storage.Keys;

namespace RubLab.Storage.Tests.Contract;

public abstract class KeyContract<TFresh> : StoreContract<TFresh>
    where TFresh : FreshDatabase, new()
{
    private static readonly string[] ReadWrite = ["formulas:read", "formulas:write"];
    private static readonly string[] ReadOnly = ["formulas:read"];

    [ContractFact]
    public async Task An_issued_key_is_prefixed_and_carries_256_random_bits()
    {
        var first = await IssueAsync();
        var second = await IssueAsync();

        Assert.Matches("^rubk_[A-Za-z0-9_-]{43}$", first.PlainKey);
        Assert.NotEqual(first.PlainKey, second.PlainKey);
        Assert.NotEqual(first.Key.Id, second.Key.Id);
    }

    [ContractFact]
    public async Task An_issued_key_is_found_by_its_text_with_kitchen_name_and_scopes()
    {
        var issued = await IssueAsync();

        var found = await FindAsync(issued.PlainKey);

        Assert.Equal(Quay, found!.KitchenId);
        Assert.Equal(issued.Key.Id, found.Id);
        Assert.Equal("Till", found.Name);
        Assert.Equal(ReadWrite, found.Scopes);
        Assert.Equal(Clock.GetUtcNow(), found.CreatedAt);
        Assert.Null(found.RevokedAt);
    }

    [ContractFact]
    public async Task A_key_with_one_letter_changed_is_unknown()
    {
        var issued = await IssueAsync();
        var last = issued.PlainKey[^1] == 'A' ? 'B' : 'A';

        Assert.Null(await FindAsync(issued.PlainKey[..^1] + last));
        Assert.Null(await FindAsync(issued.PlainKey.ToUpperInvariant()));
        Assert.Null(await FindAsync(""));
    }

    [ContractFact]
    public async Task A_revoked_key_opens_nothing_but_stays_listed()
    {
        var issued = await IssueAsync();
        var revokedAt = Clock.Advance(TimeSpan.FromHours(1));

        Assert.True(await RevokeAsync(Quay, issued.Key.Id));

        Assert.Null(await FindAsync(issued.PlainKey));
        var listed = Assert.Single(await KeysAsync(Quay));
        Assert.Equal(revokedAt, listed.RevokedAt);
    }

    [ContractFact]
    public async Task Revoking_twice_keeps_the_first_time()
    {
        var issued = await IssueAsync();
        var revokedAt = Clock.Advance(TimeSpan.FromHours(1));
        await RevokeAsync(Quay, issued.Key.Id);
        Clock.Advance(TimeSpan.FromHours(1));

        Assert.False(await RevokeAsync(Quay, issued.Key.Id));
        Assert.Equal(revokedAt, Assert.Single(await KeysAsync(Quay)).RevokedAt);
    }

    [ContractFact]
    public async Task A_kitchen_neither_lists_nor_revokes_the_keys_of_another()
    {
        var issued = await IssueAsync();

        Assert.Empty(await KeysAsync(Lock));
        Assert.False(await RevokeAsync(Lock, issued.Key.Id));
        Assert.Equal(Quay, (await FindAsync(issued.PlainKey))!.KitchenId);
    }

    [ContractFact]
    public async Task Keys_are_listed_oldest_first()
    {
        var names = new[] { "zinc", "apple", "moss" };
        foreach (var name in names)
        {
            await WriteAsync(work => work.Keys.IssueAsync(Quay, name, ReadOnly));
            Clock.Advance(TimeSpan.FromSeconds(1));
        }

        Assert.Equal(names, (await KeysAsync(Quay)).Select(key => key.Name));
    }

    [ContractFact]
    public async Task Any_key_counts_only_keys_that_still_open_a_kitchen()
    {
        Assert.False(await ReadAsync(work => work.Keys.AnyAsync()));

        var issued = await IssueAsync();
        Assert.True(await ReadAsync(work => work.Keys.AnyAsync()));

        await RevokeAsync(Quay, issued.Key.Id);
        Assert.False(await ReadAsync(work => work.Keys.AnyAsync()));
    }

    [ContractFact]
    public async Task A_scope_of_two_words_is_refused()
    {
        await Assert.ThrowsAsync<ArgumentException>(() => WriteAsync(work => work.Keys.IssueAsync(Quay, "Till", ["formulas read"])));
    }

    [ContractFact]
    public async Task The_text_of_a_key_is_kept_out_of_logs()
    {
        var issued = await IssueAsync();

        Assert.DoesNotContain(issued.PlainKey, issued.ToString(), StringComparison.Ordinal);
    }

    private Task<IssuedKey> IssueAsync() => WriteAsync(work => work.Keys.IssueAsync(Quay, "Till", ReadWrite));

    private Task<bool> RevokeAsync(string kitchen, string id) => WriteAsync(work => work.Keys.RevokeAsync(kitchen, id));

    private Task<AccessKey?> FindAsync(string plainKey) => ReadAsync(work => work.Keys.FindAsync(plainKey));

    private Task<IReadOnlyList<AccessKey>> KeysAsync(string kitchen) => ReadAsync(work => work.Keys.ListAsync(kitchen));
}
