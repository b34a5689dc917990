using RubLab.Storage.Pairing;

namespace RubLab.Storage.Tests.Contract;

public abstract class PairingCodeContract<TFresh> : StoreContract<TFresh>
    where TFresh : FreshDatabase, new()
{
    private const int Tries = PairingCodeStore.MostWrongTries;
    private static readonly string[] ReadWrite = ["read", "write"];
    private static readonly TimeSpan Tick = TimeSpan.FromTicks(1);

    [ContractFact]
    public async Task A_code_opens_its_kitchen_with_its_scopes_and_name()
    {
        var issued = await IssueAsync("hash-1");

        var found = await RedeemAsync("hash-1");

        Assert.Equal(Clock.GetUtcNow(), issued.CreatedAt);
        Assert.Equal(Clock.GetUtcNow() + TimeSpan.FromMinutes(5), issued.ExpiresAt);
        Assert.Equal((Quay, issued.Id, "Stove phone"), (found!.KitchenId, found.Id, found.DeviceName));
        Assert.Equal(ReadWrite, found.Scopes);
    }

    [ContractFact]
    public async Task A_code_need_not_name_the_device()
    {
        await WriteAsync(work => work.PairingCodes.IssueAsync(Quay, "hash-1", ["read"], null));

        Assert.Null((await RedeemAsync("hash-1"))!.DeviceName);
    }

    [ContractFact]
    public async Task A_code_opens_once()
    {
        await IssueAsync("hash-1");
        await RedeemAsync("hash-1");

        Assert.Null(await RedeemAsync("hash-1"));
    }

    [ContractFact]
    public async Task Of_many_who_enter_one_code_at_once_exactly_one_gets_in()
    {
        await IssueAsync("hash-1");

        var found = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(() => RedeemAsync("hash-1"))));

        Assert.Equal(1, found.Count(code => code is not null));
    }

    [ContractFact]
    public async Task Who_enters_a_code_while_another_is_being_let_in_waits_and_is_refused()
    {
        await IssueAsync("hash-1");
        Task<OpenCode?> second;
        await using (var work = await Database.BeginAsync(Intent.Write))
        {
            Assert.NotNull(await work.PairingCodes.RedeemAsync("hash-1"));
            second = Task.Run(() => RedeemAsync("hash-1"));
            await Task.Delay(TimeSpan.FromMilliseconds(300));
            Assert.False(second.IsCompleted);
            await work.CommitAsync();
        }

        Assert.Null(await second);
    }

    [ContractFact]
    public async Task A_use_that_is_not_committed_leaves_the_code_open()
    {
        await IssueAsync("hash-1");
        await using (var work = await Database.BeginAsync(Intent.Write))
        {
            Assert.NotNull(await work.PairingCodes.RedeemAsync("hash-1"));
        }

        Assert.NotNull(await RedeemAsync("hash-1"));
    }

    [ContractFact]
    public async Task A_code_opens_until_its_time_is_over_and_not_then()
    {
        await IssueAsync("early");
        await IssueAsync("late");
        Clock.Advance(TimeSpan.FromMinutes(5) - Tick);
        Assert.NotNull(await RedeemAsync("early"));
        Clock.Advance(Tick);

        Assert.Null(await RedeemAsync("late"));
    }

    [ContractFact]
    public async Task A_hash_that_is_nearly_right_opens_nothing()
    {
        await IssueAsync("hash-1");

        Assert.Null(await RedeemAsync("hash-2"));
        Assert.Null(await RedeemAsync("hash-"));
        Assert.Null(await RedeemAsync("hash-11"));
        Assert.Null(await RedeemAsync("HASH-1"));
    }

    [ContractFact]
    public async Task The_tenth_wrong_try_makes_every_open_code_void_whatever_its_kitchen()
    {
        await IssueAsync("hash-1");
        await IssueAsync("hash-2", Lock);
        await WrongAsync(Tries - 1);
        Assert.Equal(2, await OpenAsync());

        await WrongAsync(1);

        Assert.Equal(0, await OpenAsync());
        Assert.Null(await RedeemAsync("hash-1"));
        Assert.Null(await RedeemAsync("hash-2"));
    }

    [ContractFact]
    public async Task One_wrong_try_fewer_leaves_a_code_good()
    {
        await IssueAsync("hash-1");
        await WrongAsync(Tries - 1);

        Assert.NotNull(await RedeemAsync("hash-1"));
    }

    [ContractFact]
    public async Task A_right_try_does_not_undo_the_wrong_ones_before_it()
    {
        await IssueAsync("hash-1");
        await IssueAsync("hash-2");
        await WrongAsync(Tries - 1);
        Assert.NotNull(await RedeemAsync("hash-1"));

        await WrongAsync(1);

        Assert.Null(await RedeemAsync("hash-2"));
    }

    [ContractFact]
    public async Task A_further_code_does_not_undo_the_wrong_tries_while_another_is_open()
    {
        await IssueAsync("hash-1");
        await WrongAsync(Tries - 1);
        await IssueAsync("hash-2");

        await WrongAsync(1);

        Assert.Null(await RedeemAsync("hash-1"));
        Assert.Null(await RedeemAsync("hash-2"));
    }

    [ContractFact]
    public async Task Tries_while_no_code_is_open_do_not_count_against_the_next_one()
    {
        await WrongAsync(3 * Tries);
        await IssueAsync("hash-1");
        await WrongAsync(Tries - 1);

        Assert.NotNull(await RedeemAsync("hash-1"));
    }

    [ContractFact]
    public async Task Tries_against_a_code_that_has_expired_do_not_count_against_the_next_one()
    {
        await IssueAsync("hash-1");
        await WrongAsync(Tries - 1);
        Clock.Advance(PairingCodeStore.Life);
        await IssueAsync("hash-2");
        await WrongAsync(Tries - 1);

        Assert.NotNull(await RedeemAsync("hash-2"));
    }

    [ContractFact]
    public async Task Wrong_tries_at_once_are_all_counted()
    {
        await IssueAsync("hash-1");

        await Task.WhenAll(Enumerable.Range(0, Tries).Select(_ => Task.Run(() => RedeemAsync("wrong"))));

        Assert.Null(await RedeemAsync("hash-1"));
    }

    [ContractFact]
    public async Task A_sixth_open_code_takes_the_place_of_the_oldest_of_its_kitchen()
    {
        await IssueAsync("of-another-kitchen", Lock);
        for (var i = 0; i <= PairingCodeStore.MostOpen; i++)
        {
            await IssueAsync($"hash-{i}");
            Clock.Advance(TimeSpan.FromSeconds(1));
        }

        Assert.Null(await RedeemAsync("hash-0"));
        Assert.NotNull(await RedeemAsync("hash-1"));
        Assert.NotNull(await RedeemAsync("hash-5"));
        Assert.NotNull(await RedeemAsync("of-another-kitchen"));
    }

    [ContractFact]
    public async Task Codes_survive_a_restart()
    {
        await IssueAsync("hash-1");
        await using var again = await Fresh.OpenAsync();
        await using var work = await again.BeginAsync(Intent.Write);

        Assert.NotNull(await work.PairingCodes.RedeemAsync("hash-1"));
    }

    private Task<OpenCode> IssueAsync(string hash, string kitchen = Quay) =>
        WriteAsync(work => work.PairingCodes.IssueAsync(kitchen, hash, ReadWrite, "Stove phone"));

    private Task<OpenCode?> RedeemAsync(string hash) => WriteAsync(work => work.PairingCodes.RedeemAsync(hash));

    private async Task WrongAsync(int times)
    {
        for (var i = 0; i < times; i++)
        {
            Assert.Null(await RedeemAsync("wrong"));
        }
    }

    private async Task<long> OpenAsync()
    {
        // What may still be redeemed, asked without keeping the answer.
        var open = 0;
        foreach (var hash in (string[])["hash-1", "hash-2"])
        {
            await using var work = await Database.BeginAsync(Intent.Write);
            open += await work.PairingCodes.RedeemAsync(hash) is null ? 0 : 1;
        }

        return open;
    }
}
