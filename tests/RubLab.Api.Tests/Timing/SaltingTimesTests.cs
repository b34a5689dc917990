using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Xml.Linq;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Timing;

public sealed class SaltingTimesTests(Server server) : IClassFixture<Server>
{
    private const string Path = "/v1/salting-times";

    [Fact]
    public async Task A_slab_is_answered_in_the_words_of_the_contract()
    {
        var answer = (await server.PostAsync(Path, Bodies.SaltingTimes)).Succeeded();

        Assert.Equal("no-store", answer.Header("Cache-Control"));
        Assert.Null(answer.Tag);
        string[] bands = ["uptake", "centreToMean", "depth"];
        Assert.All(bands, band => Assert.Equal((double)answer.Json[band]!["low"]!, (double)answer.Json[band]!["high"]!));
        Assert.Equal(216.3, (double)answer.Json["timeTo"]!["even95"]!["typical"]!, 0.05);
        Assert.Equal(80.3, (double)answer.Json["timeTo"]!["even50"]!["typical"]!, 0.05);
        Assert.Null(answer.Json["timeTo"]!["half"]);
        var profile = answer.Json["profile"]!.AsArray();
        Assert.Equal((0.0, 1.0), ((double)profile[0]!["position"]!, (double)profile[^1]!["position"]!));
        Assert.All((string[])["low", "typical", "high"], end => Assert.True((double)profile[^1]!["relative"]![end]! > 1));
    }

    [Fact]
    public async Task A_soaked_brick_of_a_cut_is_answered()
    {
        var answer = (await server.PostAsync(Path, Bodies.SoakedBrick)).Succeeded().Json;

        Assert.Equal("brick", (string?)answer["shape"]);
        Assert.Equal(127, (double)answer["width"]!["typical"]!);
        Assert.True((double)answer["timeTo"]!["half"]!["low"]! < (double)answer["timeTo"]!["half"]!["high"]!);
        Assert.NotNull(answer["profile"]![0]!["layer"]);
    }

    [Theory]
    [InlineData("", null, "application/json")]
    [InlineData("", "*/*", "application/json")]
    [InlineData("", "image/*", "image/svg+xml")]
    [InlineData("", "image/svg+xml", "image/svg+xml")]
    [InlineData("", "image/avif,image/webp,image/png,image/svg+xml,*/*;q=0.5", "image/svg+xml")]
    [InlineData("", "image/svg+xml;q=0.4, application/json;q=0.5", "application/json")]
    [InlineData("?plot=uptake", null, "image/svg+xml")]
    [InlineData("?plot=profile", "*/*", "image/svg+xml")]
    public async Task An_answer_comes_as_its_reader_likes_it_best(string query, string? accept, string type) =>
        Assert.Equal(type, (await PostAsync(query, accept)).Succeeded().MediaType);

    [Theory]
    [InlineData("", "image/png")]
    [InlineData("", "text/html")]
    [InlineData("?plot=uptake", "application/json")]
    [InlineData("?plot=nonsense", "application/json")]
    [InlineData("?plot=profile", "image/svg+xml;q=0, */*")]
    public async Task A_representation_there_is_not_is_refused(string query, string accept) =>
        await server.RefusedAsync(await PostAsync(query, accept), HttpStatusCode.NotAcceptable);

    [Fact]
    public async Task A_picture_stands_alone_and_is_not_kept()
    {
        var answer = (await PostAsync("?plot=uptake", "image/svg+xml")).Succeeded();
        var svg = XDocument.Parse(answer.Text).Root!;
        var style = svg.Elements().Single(e => e.Name.LocalName == "style").Value;

        Assert.Equal("no-store", answer.Header("Cache-Control"));
        Assert.Equal(
            $"default-src 'none'; style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)))}'; base-uri 'none'; frame-ancestors 'none'; form-action 'none'",
            answer.Header("Content-Security-Policy"));
        Assert.StartsWith("Salt over time", svg.Elements().First().Value, StringComparison.Ordinal);
        Assert.StartsWith("Salt in the piece", XDocument.Parse((await PostAsync("", "image/svg+xml")).Text).Root!.Elements().First().Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"facesTreated\":2", "\"facesTreated\":3", "out-of-range", "/facesTreated")]
    [InlineData("\"value\":3e-10", "\"value\":3e-4", "out-of-range", "/diffusivity/value")]
    [InlineData("\"value\":50,", "\"value\":1e999,", "not-finite", "/thickness/value")]
    [InlineData("\"dry-brine\"", "\"soak\"", "required", "/liquidRatio")]
    [InlineData("\"species\":\"pork\"", "\"species\":\"pork\",\"liquidRatio\":1", "not-for-method", "/liquidRatio")]
    [InlineData("\"value\":24,", "\"value\":0,", "out-of-range", "/stages/0/time/value")]
    public async Task A_question_that_breaks_a_rule_is_refused_at_its_place(string from, string to, string code, string pointer)
    {
        var body = Bodies.SaltingTimes.Replace(from, to, StringComparison.Ordinal);
        await server.RefusedAsync(await server.PostAsync(Path, body), HttpStatusCode.UnprocessableEntity, code, pointer);
        await server.RefusedAsync(await server.PostAsync(Path + "?plot=uptake", body), HttpStatusCode.UnprocessableEntity, code, pointer);
    }

    [Fact]
    public async Task A_plot_there_is_not_is_told_with_the_other_faults() => await server.RefusedAsync(
        await server.PostAsync(Path + "?plot=pie", Bodies.SaltingTimes), HttpStatusCode.UnprocessableEntity, "unknown-word", "/plot");

    private Task<Answer> PostAsync(string query, string? accept) =>
        accept is null ? server.PostAsync(Path + query, Bodies.SaltingTimes) : server.PostAsync(Path + query, Bodies.SaltingTimes, ("Accept", accept));
}
