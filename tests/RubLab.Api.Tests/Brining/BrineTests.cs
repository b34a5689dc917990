using System.Net;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Brining;

public sealed class BrineTests(Server server) : IClassFixture<Server>
{
    private const string Path = "/v1/brines";

    [Fact]
    public async Task The_injection_of_the_contract_is_answered_in_its_words()
    {
        var answer = (await server.PostAsync(Path, Bodies.Brine)).Succeeded().Json;

        Assert.Equal("""{"low":5.58,"typical":6.28,"high":6.98,"unit":"g/kg"}""", answer["reached"]![0]!["perKgGreen"]!.ToJsonString());
        Assert.Equal("""{"value":600,"unit":"g"}""", answer["needed"]!["mass"]!.ToJsonString());
        Assert.Equal("""{"value":6600,"unit":"g"}""", answer["targetPieceWeight"]!.ToJsonString());
        string[] words = ["strength", "lines", "needed", "made", "reached", "targetPieceWeight", "checks", "findings", "cautions"];
        Assert.All(words, word => Assert.NotNull(answer[word]));
        Assert.All((string[])["percent", "salometer", "baume", "specificGravity", "atTemperature"], word => Assert.NotNull(answer["strength"]![word]));
        Assert.All((string[])["perKgGreen", "perKgInjected", "ingoingPpm"], word => Assert.NotNull(answer["reached"]![0]![word]));
    }

    [Fact]
    public async Task A_soak_is_solved_for_its_target_within_its_time()
    {
        var answer = (await server.PostAsync(Path, Bodies.Soak)).Succeeded().Json;

        Assert.Equal(1, (int)answer["lines"]!.AsArray().Count(l => (bool)l!["isSolved"]!));
        Assert.True((double)answer["soak"]!["evenness"]!["low"]! < (double)answer["soak"]!["evenness"]!["high"]!);
        Assert.Equal(2, (int)answer["made"]!["batches"]!);
    }

    [Theory]
    [InlineData("\"value\":10,\"unit\":\"%\"", "\"value\":0,\"unit\":\"%\"", "out-of-range", "/dose/value")]
    [InlineData("\"value\":10,\"unit\":\"%\"", "\"value\":400,\"unit\":\"%\"", "out-of-range", "/dose/value")]
    [InlineData("\"value\":10,\"unit\":\"%\"", "\"value\":1e999,\"unit\":\"%\"", "not-finite", "/dose/value")]
    [InlineData("\"value\":150,\"unit\":\"g\"", "\"value\":900,\"unit\":\"g\"", "above-saturation", "/lines")]
    [InlineData("\"value\":150,\"unit\":\"g\"", "\"value\":8,\"unit\":\"%-of-water\"", "mixed-authoring", "/lines/1/amount/unit")]
    [InlineData("\"kind\":\"injection\"", "\"kind\":\"soak\"", "not-for-kind", "/retained")]
    public async Task A_brine_that_breaks_a_rule_is_refused_at_its_place(string from, string to, string code, string pointer) => await server.RefusedAsync(
        await server.PostAsync(Path, Bodies.Brine.Replace(from, to, StringComparison.Ordinal)), HttpStatusCode.UnprocessableEntity, code, pointer);
}
