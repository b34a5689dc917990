using System.Net;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Curing;

public sealed class CureTests(Server server) : IClassFixture<Server>
{
    private const string Path = "/v1/cures";

    [Fact]
    public async Task A_cure_is_answered_in_the_words_of_the_contract()
    {
        var answer = (await server.PostAsync(Path, Bodies.Cure)).Succeeded().Json;

        Assert.Equal("""{"value":4.8,"unit":"g"}""", answer["lines"]![0]!["weighed"]!.ToJsonString());
        Assert.Equal("""{"value":150,"unit":"ppm"}""", answer["reached"]!.AsArray().Single(r => (string)r!["additive"]! == "nitrite")!["ingoingPpm"]!.ToJsonString());
        string[] words = ["method", "lines", "reached", "saltPerKgGreen", "sodiumPerKgGreen", "checks", "findings", "cautions", "dataVersion"];
        Assert.All(words, word => Assert.NotNull(answer[word]));
    }

    [Theory]
    [InlineData("\"value\":150,\"unit\":\"ppm\"", "\"value\":250,\"unit\":\"ppm\"", "limit-exceeded", "/lines/0")]
    [InlineData("\"value\":150,\"unit\":\"ppm\"", "\"value\":1e999,\"unit\":\"ppm\"", "not-finite", "/targets/0/reached/value")]
    [InlineData("\"method\":\"dry\"", "\"method\":\"ground\"", "method-not-for-cut", "/method")]
    [InlineData("\"value\":2.5,\"unit\":\"%\"", "\"value\":1,\"unit\":\"g/kg\"", "target-below-present", "/targets/1/reached")]
    public async Task A_cure_that_breaks_a_rule_is_refused_at_its_place(string from, string to, string code, string pointer) => await server.RefusedAsync(
        await server.PostAsync(Path, Bodies.Cure.Replace(from, to, StringComparison.Ordinal)), HttpStatusCode.UnprocessableEntity, code, pointer);
}
