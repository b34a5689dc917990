using System.Net;
using System.Text;
using System.Text.Json;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Scaling;

public sealed class LargeSheetTests(Server server) : IClassFixture<Server>
{
    private const string Path = "/v1/batch-sheets";

    private static readonly string Treatments = $$"""[{"formula":{{Bodies.Formula}}}]""";

    [Fact]
    public async Task Three_hundred_thousand_pieces_are_streamed_and_sum_exactly()
    {
        using var response = await server.StreamAsync(Path, ByCount(300_000, 1));
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Null(response.Content.Headers.ContentLength);
        Assert.True(response.Headers.TransferEncodingChunked);

        await using var stream = await response.Content.ReadAsStreamAsync();
        using var sheet = await JsonDocument.ParseAsync(stream);
        var treatment = sheet.RootElement.GetProperty("treatments")[0];
        decimal sum = 0;
        var number = 0;
        var amounts = new HashSet<decimal>();
        foreach (var piece in treatment.GetProperty("pieces").EnumerateArray())
        {
            Assert.Equal(++number, piece.GetProperty("number").GetInt32());
            var amount = piece.GetProperty("amount").GetProperty("value").GetDecimal();
            amounts.Add(amount);
            sum += amount;
        }

        Assert.Equal(300_000, number);

        // 300,000 x 1.2345 kg x 22 g/kg, to the tenth of a gram.
        Assert.Equal(8_147_700m, treatment.GetProperty("onMeat").GetProperty("value").GetDecimal());
        Assert.Equal(8_147_700m, sum);
        Assert.Equal([27.1m, 27.2m], amounts.Order());
        Assert.Equal(
            treatment.GetProperty("toMix").GetProperty("value").GetDecimal(),
            treatment.GetProperty("lines").EnumerateArray().Sum(l => l.GetProperty("toMix").GetProperty("value").GetDecimal()));
    }

    [Fact]
    public async Task One_piece_more_is_refused()
    {
        await server.RefusedAsync(await server.PostAsync(Path, ByCount(300_001, 1)), HttpStatusCode.UnprocessableEntity, "out-of-range", "/pile/0/count");
        await server.RefusedAsync(await server.PostAsync(Path, ByCount(150_001, 2)), HttpStatusCode.UnprocessableEntity, "too-many", "/pile");
        (await server.PostAsync(Path, ByCount(150_000, 2).Replace("\"all\"", "\"none\"", StringComparison.Ordinal))).Succeeded();
    }

    [Fact]
    public async Task Pieces_count_once_for_each_treatment()
    {
        var twice = ByCount(150_001, 1).Replace(Treatments, $"[{Treatments[1..^1]},{Treatments[1..^1]}]", StringComparison.Ordinal);

        await server.RefusedAsync(await server.PostAsync(Path, twice), HttpStatusCode.UnprocessableEntity, "too-many", "/pile");
    }

    [Fact]
    public async Task A_pile_of_600_tonnes_in_milligrams_has_more_steps_than_add_up() => await server.RefusedAsync(
        await server.PostAsync(Path, ByCount(300_000, 1).Replace("0.1,\"unit\":\"g\"", "1,\"unit\":\"mg\"", StringComparison.Ordinal).Replace("1.2345", "2", StringComparison.Ordinal)),
        HttpStatusCode.UnprocessableEntity, "step-too-fine", "/weighingStep");

    [Theory]
    [InlineData(1, "1000000")]
    [InlineData(7, "123456.789")]
    [InlineData(99_999, "333.333333")]
    [InlineData(300_000, "0.001")]
    public async Task Amounts_of_any_size_either_add_up_or_are_refused(int count, string grams)
    {
        foreach (var step in (string[])["0.001", "0.01", "0.3", "1", "1000"])
        {
            var body = $$"""
                {"pile":[{"cut":"pork-shoulder","count":{{count}},"weightEach":{"value":{{grams}},"unit":"g"} }],"pieces":"none",
                 "treatments":[{"formula":{{Bodies.Formula}},"dose":{"value":1000,"unit":"g/kg"},"applications":100}],
                 "weighingStep":{"value":{{step}},"unit":"g"},"overage":{"value":33.3,"unit":"%"} }
                """;

            var answer = await server.PostAsync(Path, body);

            if (answer.Status != HttpStatusCode.OK)
            {
                await server.RefusedAsync(answer, HttpStatusCode.UnprocessableEntity, "step-too-fine", "/weighingStep");
                continue;
            }

            var treatment = answer.Json["treatments"]![0]!;
            Assert.Equal((decimal)treatment["toMix"]!["value"]!, treatment["lines"]!.AsArray().Sum(l => (decimal)l!["toMix"]!["value"]!));
        }
    }

    [Theory]
    [InlineData("0.001")]
    [InlineData("0.1")]
    [InlineData("100")]
    public async Task Dose_factors_trim_and_overage_on_top_still_add_up_or_are_refused(string step)
    {
        var piece = """{"weight":{"value":7.7777,"unit":"g"},"doseFactor":9.9}""";
        var body = $$"""
            {"pile":[{"cut":"pork-shoulder","pieces":[{{string.Join(',', Enumerable.Repeat(piece, 50_000))}}],"weightIs":"purchase","trimLoss":{"value":99,"unit":"%"} }],
             "treatments":[{"formula":{{Bodies.Card}},"dose":{"value":1000,"unit":"g/kg"},"applications":100}],
             "weighingStep":{"value":{{step}},"unit":"g"},"overage":{"value":99.9,"unit":"%"} }
            """;

        var answer = await server.PostAsync(Path, body);

        if (answer.Status != HttpStatusCode.OK)
        {
            await server.RefusedAsync(answer, HttpStatusCode.UnprocessableEntity, "step-too-fine", "/weighingStep");
            return;
        }

        var treatment = answer.Json["treatments"]![0]!;
        Assert.Equal((decimal)treatment["toMix"]!["value"]!, treatment["lines"]!.AsArray().Sum(l => (decimal)l!["toMix"]!["value"]!));
        Assert.Equal((decimal)treatment["onMeat"]!["value"]!, treatment["pieces"]!.AsArray().Sum(p => (decimal)p!["amount"]!["value"]!));
    }

    [Fact]
    public async Task Memory_stays_small_however_often_the_largest_sheets_are_asked_for()
    {
        using var directory = new TemporaryDirectory();
        await using var process = await ServerProcess.StartAsync(null, "--data", directory.At("rublab.db"), "--urls", "http://127.0.0.1:0");
        using var client = new HttpClient();
        await SendAsync(ByCount(1, 1), HttpStatusCode.OK);
        var before = process.PeakMemory;

        for (var i = 0; i < 4; i++)
        {
            await SendAsync(ByCount(300_000, 1), HttpStatusCode.OK);
            await SendAsync(ByCount(300_000, 100), HttpStatusCode.UnprocessableEntity);
        }

        Assert.InRange(process.PeakMemory - before, 0, 150_000_000);

        async Task SendAsync(string body, HttpStatusCode status)
        {
            using var request = new HttpRequestMessage(HttpMethod.Post, process.Address + Path) { Content = new StringContent(body, Encoding.UTF8, "application/json") };
            using var response = await client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead);
            Assert.Equal(status, response.StatusCode);
            await response.Content.CopyToAsync(Stream.Null);
        }
    }

    private static string ByCount(int count, int lines)
    {
        var pile = Enumerable.Range(0, lines).Select(i =>
            $$"""{"id":"line-{{i}}","cut":"pork-shoulder","count":{{count}},"weightEach":{"value":1.2345,"unit":"kg"} }""");
        return $$"""{"pile":[{{string.Join(',', pile)}}],"treatments":{{Treatments}},"weighingStep":{"value":0.1,"unit":"g"},"pieces":"all"}""";
    }
}
