using System.Net;
using System.Security.Cryptography;
using System.Text;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Outputs;

public sealed class PrintedSheetTests(Server server) : IClassFixture<Server>
{
    private const string Path = "/v1/batch-sheets";

    [Fact]
    public async Task A_page_to_print_is_html_that_is_not_kept()
    {
        var answer = (await PrintAsync(Bodies.Sheet)).Succeeded();

        Assert.Equal("text/html; charset=utf-8", answer.Header("Content-Type"));
        Assert.Equal("no-store", answer.Header("Cache-Control"));
        Assert.Contains("Piece 3, shoulders, 3312 grams green: 73 grams of Lockside pork rub.", answer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Its_policy_allows_its_own_style_and_nothing_else()
    {
        var answer = (await PrintAsync(Bodies.Sheet)).Succeeded();

        var start = answer.Text.IndexOf("<style>", StringComparison.Ordinal) + "<style>".Length;
        var style = answer.Text[start..answer.Text.IndexOf("</style>", StringComparison.Ordinal)];
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)));
        Assert.Equal(
            $"default-src 'none'; style-src 'sha256-{hash}'; base-uri 'none'; frame-ancestors 'none'; form-action 'none'",
            answer.Header("Content-Security-Policy"));
        Assert.Equal("nosniff", answer.Header("X-Content-Type-Options"));
    }

    [Fact]
    public async Task Other_answers_keep_the_policy_of_the_page()
    {
        foreach (var answer in (Answer[])[await server.PostAsync(Path, Bodies.Sheet), await PrintAsync("{}"), await server.PostAsync(Path + "?table=lines", Bodies.Sheet)])
        {
            Assert.StartsWith("default-src 'self';", answer.Header("Content-Security-Policy"), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_name_that_looks_like_markup_is_text()
    {
        var answer = (await PrintAsync(Bodies.Sheet.Replace("Lockside pork rub", "<script>alert('🐖')</script> & co", StringComparison.Ordinal))).Succeeded();

        Assert.DoesNotContain("<script", answer.Text, StringComparison.Ordinal);
        Assert.Contains("<h2 id=\"treatment-1\">&lt;script&gt;alert(&#39;🐖&#39;)&lt;/script&gt; &amp; co</h2>", answer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_sheet_that_breaks_rules_is_a_problem_document_all_the_same() => await server.RefusedAsync(
        await PrintAsync(Bodies.Sheet.Replace("pork-shoulder", "pork-shouder", StringComparison.Ordinal)), HttpStatusCode.UnprocessableEntity, "unknown-cut", "/pile/0/cut");

    private Task<Answer> PrintAsync(string body) => server.PostAsync(Path, body, ("Accept", "text/html"));
}
