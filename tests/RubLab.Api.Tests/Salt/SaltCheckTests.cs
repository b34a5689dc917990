using System.Net;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Salt;

public sealed class SaltCheckTests(Server server) : IClassFixture<Server>
{
    private const string Path = "/v1/salt-checks";

    [Fact]
    public async Task A_stack_without_weights_has_the_ledger_of_the_contract()
    {
        var answer = (await server.PostAsync(Path, Bodies.SaltCheck)).Succeeded().Json;

        var ledger = answer["ledger"]!;
        Assert.Equal("""{"low":7.8,"typical":8.24,"high":8.67,"unit":"g/kg"}""", ledger["saltPerKgGreen"]!.ToJsonString());
        Assert.Equal("""{"value":8.8,"unit":"g/kg"}""", ledger["saltWeighedPerKgGreen"]!.ToJsonString());
        Assert.NotEmpty(ledger["checks"]!.AsArray());
        Assert.Equal(["salt", "black-pepper"], ledger["entries"]!.AsArray().Select(e => (string)e!["ingredient"]!));
        Assert.Equal("2026.3", (string)answer["dataVersion"]!);
    }

    [Fact]
    public async Task Two_pile_lines_are_one_too_many()
    {
        const string Pile = """[{"cut":"pork-shoulder","cookYield":{"value":65,"unit":"%"}}]""";
        var body = Bodies.SaltCheck.Replace(Pile, """[{"cut":"pork-shoulder"},{"cut":"chicken-leg"}]""", StringComparison.Ordinal);

        await server.RefusedAsync(await server.PostAsync(Path, body), HttpStatusCode.UnprocessableEntity, "too-many", "/pile");
    }
}
