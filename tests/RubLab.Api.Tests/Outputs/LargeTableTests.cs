using System.Globalization;
using System.Net;
using System.Text;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Outputs;

public sealed class LargeTableTests(Server server) : IClassFixture<Server>
{
    private const string Path = "/v1/batch-sheets?table=pieces";

    private static readonly string Largest = $$"""
        {"pile":[{"id":"shoulders","cut":"pork-shoulder","count":300000,"weightEach":{"value":1.2345,"unit":"kg"} }],
         "treatments":[{"formula":{{Bodies.Formula}}}],"weighingStep":{"value":0.1,"unit":"g"} }
        """;

    [Fact]
    public async Task Three_hundred_thousand_pieces_are_streamed_row_by_row_and_sum_exactly()
    {
        using var response = await server.StreamAsync(Path, Largest);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Null(response.Content.Headers.ContentLength);
        Assert.True(response.Headers.TransferEncodingChunked);

        using var reader = new StreamReader(await response.Content.ReadAsStreamAsync(), Encoding.UTF8);
        Assert.Equal("number,line,label,green_weight_g,treatment_number,treatment,amount_g", await reader.ReadLineAsync());
        var count = 0;
        decimal sum = 0;
        while (await reader.ReadLineAsync() is { } row)
        {
            var cells = row.Split(',');
            Assert.Equal(7, cells.Length);
            Assert.Equal(++count, int.Parse(cells[0], CultureInfo.InvariantCulture));
            sum += decimal.Parse(cells[^1], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        }

        Assert.Equal(300_000, count);

        // 300,000 x 1.2345 kg x 22 g/kg, to the tenth of a gram.
        Assert.Equal(8_147_700m, sum);
    }

    [Fact]
    public async Task Memory_stays_small_however_often_the_largest_tables_and_pages_are_asked_for()
    {
        using var directory = new TemporaryDirectory();
        await using var process = await ServerProcess.StartAsync(null, "--data", directory.At("rublab.db"), "--urls", "http://127.0.0.1:0");
        using var client = new HttpClient();
        await SendAsync(Bodies.Sheet, "text/csv");
        var before = process.PeakMemory;

        for (var i = 0; i < 3; i++)
        {
            await SendAsync(Largest, "text/csv");
            await SendAsync(Largest, "text/html");
        }

        Assert.InRange(process.PeakMemory - before, 0, 150_000_000);

        async Task SendAsync(string body, string type)
        {
            var path = type == "text/csv" ? Path : "/v1/batch-sheets";
            using var request = new HttpRequestMessage(HttpMethod.Post, process.Address + path) { Content = new StringContent(body, Encoding.UTF8, "application/json") };
            request.Headers.Accept.ParseAdd(type);
            using var response = await client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead);
            Assert.Equal(HttpStatusCode.OK, response.StatusCode);
            Assert.Equal(type, response.Content.Headers.ContentType?.MediaType);
            await response.Content.CopyToAsync(Stream.Null);
        }
    }
}
