using System.Net;

namespace RubLab.Client.Tests;

public sealed class PairingTests
{
    [Fact]
    public async Task A_program_is_paired_by_a_code_works_by_its_cookie_and_signs_out()
    {
        using var kitchen = new KeyedKitchen();
        kitchen.Http.DefaultRequestHeaders.Authorization = new("Bearer", KeyedKitchen.TheKey);
        using var http = new HttpClient { BaseAddress = kitchen.Http.BaseAddress };
        var device = new RubLabClient(http);
        await Refused.WithAsync(HttpStatusCode.Unauthorized, () => device.Sessions.GetCurrentAsync());

        var code = await kitchen.Client.PairingCodes.CreateAsync("Stove tablet", ["read", "write", "pair"]);
        var paired = await device.Sessions.PairAsync(code.Code);

        Assert.Equal(("Stove tablet", true), (paired.Name, paired.IsCurrent));
        Assert.Equal(["read", "write", "pair"], paired.Scopes);
        Assert.Equal(paired.Id, (await device.Sessions.GetCurrentAsync()).Id);
        await Refused.WithAsync(HttpStatusCode.Forbidden, () => device.Formulas.CreateAsync(Requests.Rub()));
        http.DefaultRequestHeaders.Add("Origin", kitchen.Http.BaseAddress!.GetLeftPart(UriPartial.Authority));
        await device.Formulas.CreateAsync(Requests.Rub());
        Assert.Equal([true], (await device.Sessions.ListAsync().ToListAsync()).Select(s => s.IsCurrent));
        await device.Sessions.SignOutAsync();
        await Refused.WithAsync(HttpStatusCode.Unauthorized, () => device.Sessions.GetCurrentAsync());
        Assert.Empty(await kitchen.Client.Sessions.ListAsync().ToListAsync());
    }

    [Fact]
    public async Task A_device_is_unpaired_and_a_used_code_refused()
    {
        using var kitchen = new Kitchen();
        using var http = new HttpClient { BaseAddress = kitchen.Http.BaseAddress };
        var device = new RubLabClient(http);
        var code = await kitchen.Client.PairingCodes.CreateAsync();
        var paired = await device.Sessions.PairAsync(code.Code.ToLowerInvariant(), "Own name");
        Assert.Equal("Own name", paired.Name);

        var refused = await Refused.WithAsync(HttpStatusCode.UnprocessableEntity, () => device.Sessions.PairAsync(code.Code));
        Assert.Equal(("/code", "code-not-open"), (refused.Errors[0].Pointer, refused.Errors[0].Code));
        await kitchen.Client.Sessions.EndAsync(paired.Id);
        await Refused.WithAsync(HttpStatusCode.NotFound, () => kitchen.Client.Sessions.EndAsync(paired.Id));
        await Refused.WithAsync(HttpStatusCode.NotFound, () => kitchen.Client.Sessions.GetCurrentAsync());
    }
}
