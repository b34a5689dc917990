using System.Net;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Outputs;

public sealed class TableTests(Server server) : IClassFixture<Server>
{
    private const string Path = "/v1/batch-sheets";

    [Theory]
    [InlineData("pieces", "number,line,label,green_weight_g,treatment_number,treatment,amount_g\r\n1,shoulders,,3312,1,Lockside pork rub,73\r\n")]
    [InlineData("lines", "treatment_number,treatment,ingredient,form,ratio_g_per_kg,to_mix_g,running_total_g,spoon\r\n1,Lockside pork rub,salt,table,8.8,122,122,")]
    public async Task A_table_is_a_utf8_file_with_a_plain_name(string table, string start)
    {
        var answer = (await server.PostAsync($"{Path}?table={table}", Bodies.Sheet)).Succeeded();

        Assert.StartsWith(start, answer.Text, StringComparison.Ordinal);
        Assert.EndsWith("\r\n", answer.Text, StringComparison.Ordinal);
        Assert.Equal("text/csv; charset=utf-8", answer.Header("Content-Type"));
        Assert.Equal($"attachment; filename=\"batch-sheet-{table}.csv\"", answer.Header("Content-Disposition"));
        Assert.Equal("no-store", answer.Header("Cache-Control"));
    }

    [Fact]
    public async Task An_unknown_table_is_refused_with_those_there_are()
    {
        var error = Assert.Single(await server.RefusedAsync(await server.PostAsync(Path + "?table=salt", Bodies.Sheet), HttpStatusCode.UnprocessableEntity))!;

        Assert.Equal(("/table", "unknown-word"), ((string)error["pointer"]!, (string)error["code"]!));
        Assert.Equal("""["pieces","lines"]""", error["parameters"]!["allowed"]!.ToJsonString());
    }

    [Theory]
    [InlineData("?table=pieces", "\"pieces\":\"none\"", HttpStatusCode.UnprocessableEntity)]
    [InlineData("?table=lines", "\"pieces\":\"none\"", HttpStatusCode.OK)]
    [InlineData("?table=pieces", "\"purpose\":\"check\"", HttpStatusCode.UnprocessableEntity)]
    [InlineData("?table=lines", "\"purpose\":\"check\"", HttpStatusCode.UnprocessableEntity)]
    public async Task A_table_the_sheet_would_not_hold_is_refused(string query, string member, HttpStatusCode status)
    {
        var answer = await server.PostAsync(Path + query, Bodies.Sheet.Replace("\"pieces\":\"all\"", member, StringComparison.Ordinal));

        if (status == HttpStatusCode.OK)
        {
            answer.Succeeded();
            return;
        }

        await server.RefusedAsync(answer, status, "no-table", "/table");
    }

    [Fact]
    public async Task What_is_wrong_with_the_table_is_told_with_everything_else()
    {
        var errors = await server.RefusedAsync(
            await server.PostAsync(Path + "?table=salt", Bodies.Sheet.Replace("pork-shoulder", "pork-shouder", StringComparison.Ordinal)),
            HttpStatusCode.UnprocessableEntity);

        Assert.Equal(["/pile/0/cut", "/table"], errors.Select(e => (string)e!["pointer"]!).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("=HYPERLINK(1)", "'=HYPERLINK(1)")]
    [InlineData("-1+2", "'-1+2")]
    [InlineData("left, 🐖", "\"left, 🐖\"")]
    public async Task Labels_are_harmless_and_whole(string label, string cell)
    {
        var answer = await server.PostAsync(
            Path + "?table=pieces",
            Bodies.Sheet.Replace("\"on\":[\"shoulders\"]", "\"on\":[\"legs\"]", StringComparison.Ordinal).Replace("blue tag", label, StringComparison.Ordinal));

        Assert.Contains($"\r\n6,legs,{cell},298,1,", answer.Succeeded().Text, StringComparison.Ordinal);
    }
}
