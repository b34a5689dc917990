using RubLab.Storage.Pairing;

namespace RubLab.Storage.Tests.Contract;

public abstract class DeviceSessionContract<TFresh> : StoreContract<TFresh>
    where TFresh : FreshDatabase, new()
{
    private static readonly string[] ReadWrite = ["read", "write"];
    private static readonly TimeSpan Tick = TimeSpan.FromTicks(1);

    [ContractFact]
    public async Task A_token_is_prefixed_and_carries_256_random_bits()
    {
        var first = await StartAsync();
        var second = await StartAsync();

        Assert.Matches("^rubs_[A-Za-z0-9_-]{43}$", first.PlainToken);
        Assert.NotEqual(first.PlainToken, second.PlainToken);
        Assert.NotEqual(first.Session.Id, second.Session.Id);
    }

    [ContractFact]
    public async Task A_device_is_found_by_its_token_alone()
    {
        var started = await StartAsync();

        var found = await FindAsync(started.PlainToken);

        Assert.Equal((Quay, started.Session.Id, "Stove phone"), (found!.KitchenId, found.Id, found.Name));
        Assert.Equal(ReadWrite, found.Scopes);
        Assert.Equal((Clock.GetUtcNow(), Clock.GetUtcNow()), (found.CreatedAt, found.LastUsedAt));
        Assert.Equal(Clock.GetUtcNow() + TimeSpan.FromDays(90), found.ExpiresAt);
        Assert.Null(await FindAsync(started.PlainToken[..^1]));
        Assert.Null(await FindAsync(started.PlainToken + "x"));
        Assert.Null(await FindAsync(started.PlainToken.ToUpperInvariant()));
        Assert.Null(await FindAsync(started.Session.Id));
        Assert.Null(await FindAsync(""));
    }

    [ContractFact]
    public async Task A_token_is_no_key_and_a_key_no_token()
    {
        var started = await StartAsync();
        var key = await WriteAsync(work => work.Keys.IssueAsync(Quay, "Till", ReadWrite));

        Assert.Null(await ReadAsync(work => work.Keys.FindAsync(started.PlainToken)));
        Assert.Null(await FindAsync(key.PlainKey));
    }

    [ContractFact]
    public async Task A_paired_device_is_no_key_that_lets_a_server_start()
    {
        await StartAsync();

        Assert.False(await ReadAsync(work => work.Keys.AnyAsync()));
    }

    [ContractFact]
    public async Task A_device_not_used_for_its_whole_life_is_no_longer_paired()
    {
        var started = await StartAsync();
        Clock.Advance(DeviceSessionStore.Life - Tick);
        Assert.NotNull(await FindAsync(started.PlainToken));
        Clock.Advance(Tick);

        Assert.Null(await FindAsync(started.PlainToken));
        Assert.False(await RenewAsync(Quay, started.Session.Id));
        Assert.Empty(await ListAsync());
    }

    [ContractFact]
    public async Task A_device_in_use_stays_paired_and_says_when_it_was_seen()
    {
        var started = await StartAsync();
        var seen = Clock.Advance(DeviceSessionStore.Life - Tick);
        Assert.True(await RenewAsync(Quay, started.Session.Id));
        Clock.Advance(DeviceSessionStore.Life - Tick);

        var found = await FindAsync(started.PlainToken);

        Assert.Equal((started.Session.CreatedAt, seen, seen + DeviceSessionStore.Life), (found!.CreatedAt, found.LastUsedAt, found.ExpiresAt));
    }

    [ContractFact]
    public async Task An_unpaired_device_is_gone_at_once()
    {
        var started = await StartAsync();

        Assert.True(await EndAsync(Quay, started.Session.Id));

        Assert.Null(await FindAsync(started.PlainToken));
        Assert.False(await RenewAsync(Quay, started.Session.Id));
        Assert.Empty(await ListAsync());
        Assert.False(await EndAsync(Quay, started.Session.Id));
    }

    [ContractFact]
    public async Task A_kitchen_neither_lists_nor_renews_nor_unpairs_the_devices_of_another()
    {
        var started = await StartAsync();

        Assert.Empty(await ListAsync(kitchen: Lock));
        Assert.False(await RenewAsync(Lock, started.Session.Id));
        Assert.False(await EndAsync(Lock, started.Session.Id));
        Assert.Equal(Quay, (await FindAsync(started.PlainToken))!.KitchenId);
    }

    [ContractFact]
    public async Task Devices_are_listed_oldest_first_page_by_page()
    {
        var names = new[] { "zinc", "apple", "moss" };
        foreach (var name in names)
        {
            await StartAsync(name);
            Clock.Advance(TimeSpan.FromSeconds(1));
        }

        var first = await ListAsync(2);
        var rest = await ListAsync(2, new DevicePosition(first[1].CreatedAt, first[1].Id));

        Assert.Equal(names[..2], first.Select(device => device.Name));
        Assert.Equal(names[2..], rest.Select(device => device.Name));
    }

    [ContractFact]
    public async Task Devices_of_one_moment_are_listed_once_each()
    {
        await StartAsync("a");
        await StartAsync("b");
        await StartAsync("c");
        var all = await ListAsync();
        var byPage = new List<DeviceSession>();
        while (byPage.Count < 3)
        {
            byPage.AddRange(await ListAsync(1, byPage.Count == 0 ? null : new DevicePosition(byPage[^1].CreatedAt, byPage[^1].Id)));
        }

        Assert.Equal(all.Select(device => device.Id), byPage.Select(device => device.Id));
    }

    [ContractFact]
    public async Task Pairing_forgets_devices_whose_time_is_over()
    {
        var old = await StartAsync("old");
        Clock.Advance(DeviceSessionStore.Life);
        await StartAsync("new");

        // Its row is gone, not merely passed over: nothing is left to unpair.
        Assert.False(await EndAsync(Quay, old.Session.Id));
    }

    [ContractFact]
    public async Task Devices_survive_a_restart()
    {
        var started = await StartAsync();
        await using var again = await Fresh.OpenAsync();
        await using var work = await again.BeginAsync(Intent.Read);

        Assert.Equal(started.Session.Id, (await work.DeviceSessions.FindAsync(started.PlainToken))!.Id);
    }

    [ContractFact]
    public async Task A_scope_of_two_words_is_refused() => await Assert.ThrowsAsync<ArgumentException>(
        () => WriteAsync(work => work.DeviceSessions.StartAsync(Quay, "Stove phone", ["read write"])));

    [ContractFact]
    public async Task The_token_is_kept_out_of_logs()
    {
        var started = await StartAsync();

        Assert.DoesNotContain(started.PlainToken, started.ToString(), StringComparison.Ordinal);
    }

    private Task<StartedSession> StartAsync(string name = "Stove phone") =>
        WriteAsync(work => work.DeviceSessions.StartAsync(Quay, name, ReadWrite));

    private Task<DeviceSession?> FindAsync(string token) => ReadAsync(work => work.DeviceSessions.FindAsync(token));

    private Task<bool> RenewAsync(string kitchen, string id) => WriteAsync(work => work.DeviceSessions.RenewAsync(kitchen, id));

    private Task<bool> EndAsync(string kitchen, string id) => WriteAsync(work => work.DeviceSessions.EndAsync(kitchen, id));

    private Task<IReadOnlyList<DeviceSession>> ListAsync(int limit = 100, DevicePosition? after = null, string kitchen = Quay) =>
        ReadAsync(work => work.DeviceSessions.ListAsync(kitchen, limit, after));
}
