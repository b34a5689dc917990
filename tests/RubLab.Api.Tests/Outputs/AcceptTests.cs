using System.Net;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Outputs;

public sealed class AcceptTests(Server server) : IClassFixture<Server>
{
    private const string Sheets = "/v1/batch-sheets";
    private const string Formula = "/v1/formulas/lockside-pork-rub";

    [Theory]
    [InlineData(null, "application/json")]
    [InlineData("*/*", "application/json")]
    [InlineData("application/*", "application/json")]
    [InlineData("text/html", "text/html")]
    [InlineData("Text/HTML; charset=utf-8", "text/html")]
    [InlineData("text/*", "text/html")]
    [InlineData("text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8", "text/html")]
    [InlineData("text/html;q=0.5, application/json;q=0.6", "application/json")]
    [InlineData("text/html;q=0.6, application/json;q=0.5", "text/html")]
    [InlineData("text/html, application/json", "application/json")]
    [InlineData("application/json;q=0, */*", "text/html")]
    [InlineData("text/html;q=0, */*;q=0.1", "application/json")]
    [InlineData("text/csv, application/json;q=0.1", "application/json")]
    public async Task A_sheet_comes_as_its_reader_likes_it_best(string? accept, string type) =>
        Assert.Equal(type, (await PostAsync(Sheets, accept)).Succeeded().MediaType);

    [Theory]
    [InlineData(null)]
    [InlineData("*/*")]
    [InlineData("text/csv")]
    [InlineData("text/*;q=0.1")]
    [InlineData("application/json, text/plain, */*")]
    [InlineData("text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8")]
    public async Task A_table_comes_as_csv(string? accept) =>
        Assert.Equal("text/csv", (await PostAsync(Sheets + "?table=lines", accept)).Succeeded().MediaType);

    [Theory]
    [InlineData("", "text/csv")]
    [InlineData("", "text/plain")]
    [InlineData("", "application/ld+json")]
    [InlineData("", "application/json;q=0, text/html;q=0, */*")]
    [InlineData("?table=lines", "application/json")]
    [InlineData("?table=lines", "text/html")]
    [InlineData("?table=lines", "text/csv;q=0, */*")]
    [InlineData("?table=nonsense", "application/json")]
    public async Task A_representation_there_is_not_is_refused(string query, string accept) =>
        await server.RefusedAsync(await PostAsync(Sheets + query, accept), HttpStatusCode.NotAcceptable);

    [Theory]
    [InlineData(null, "application/json")]
    [InlineData("application/*", "application/json")]
    [InlineData("application/ld+json", "application/ld+json")]
    [InlineData("application/ld+json;q=0.9, application/json;q=0.8", "application/ld+json")]
    [InlineData("application/ld+json;q=0.8, application/json;q=0.9", "application/json")]
    [InlineData("application/ld+json, application/json", "application/json")]
    [InlineData("application/json;q=0, */*;q=0.1", "application/ld+json")]
    public async Task A_formula_comes_as_its_reader_likes_it_best(string? accept, string type)
    {
        foreach (var path in (string[])[Formula, Formula + "/revisions/1"])
        {
            Assert.Equal(type, (await GetAsync(path, accept)).Succeeded().MediaType);
        }
    }

    [Theory]
    [InlineData(Formula, "text/html")]
    [InlineData(Formula, "text/csv")]
    [InlineData("/v1/formulas", "application/ld+json")]
    [InlineData(Formula + "/revisions", "application/ld+json")]
    [InlineData("/v1/units", "application/ld+json")]
    public async Task A_read_in_what_it_does_not_come_in_is_refused(string path, string accept) =>
        await server.RefusedAsync(await GetAsync(path, accept), HttpStatusCode.NotAcceptable);

    private Task<Answer> PostAsync(string path, string? accept) =>
        accept is null ? server.PostAsync(path, Bodies.Sheet) : server.PostAsync(path, Bodies.Sheet, ("Accept", accept));

    private Task<Answer> GetAsync(string path, string? accept) =>
        accept is null ? server.GetAsync(path) : server.GetAsync(path, ("Accept", accept));
}
