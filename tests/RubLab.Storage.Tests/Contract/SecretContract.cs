namespace RubLab.Storage.Tests.Contract;

public abstract class SecretContract<TFresh> : StoreContract<TFresh>
    where TFresh : FreshDatabase, new()
{
    [ContractFact]
    public async Task A_secret_is_drawn_once_and_then_stays()
    {
        var first = await SecretAsync("cursor", 32);
        var second = await SecretAsync("cursor", 32);

        Assert.Equal(32, first.Length);
        Assert.Equal(first, second);
    }

    [ContractFact]
    public async Task Secrets_of_different_names_differ()
    {
        Assert.NotEqual(await SecretAsync("cursor", 32), await SecretAsync("other", 32));
    }

    [ContractFact]
    public async Task A_secret_that_exists_keeps_its_length()
    {
        await SecretAsync("cursor", 32);

        Assert.Equal(32, (await SecretAsync("cursor", 64)).Length);
    }

    [ContractFact]
    public async Task Many_who_ask_at_once_get_the_same_secret()
    {
        var secrets = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(() => SecretAsync("cursor", 32))));

        Assert.Single(secrets.Select(Convert.ToHexString).Distinct());
    }

    [ContractFact]
    public async Task A_secret_too_short_to_protect_is_refused()
    {
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => SecretAsync("cursor", 15));
    }

    private Task<byte[]> SecretAsync(string name, int bytes) => WriteAsync(work => work.Secrets.GetOrCreateAsync(name, bytes));
}
