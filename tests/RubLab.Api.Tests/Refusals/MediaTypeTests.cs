using System.Net;
using System.Text;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Refusals;

public sealed class MediaTypeTests(Server server) : IClassFixture<Server>
{
    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData("multipart/form-data; boundary=x")]
    [InlineData("text/json")]
    [InlineData("application/merge-patch+json")]
    [InlineData("application/json; charset=utf-16")]
    [InlineData("application/json; charset=nonsense")]
    [InlineData("garbage")]
    [InlineData(null)]
    public async Task A_body_that_does_not_say_it_is_json_is_refused(string? contentType)
    {
        var before = await server.StoredAsync();

        foreach (var (method, path, sound, _) in Bodies.ByRoute.Values)
        {
            var answer = await server.SendAsync(method, path, Encoding.UTF8.GetBytes(sound), contentType, ("If-Match", "*"));
            await server.RefusedAsync(answer, HttpStatusCode.UnsupportedMediaType);
        }

        Assert.Equal(before, await server.StoredAsync());
    }

    [Fact]
    public async Task A_compressed_body_is_refused() => await server.RefusedAsync(
        await server.PostAsync("/v1/formulas", Bodies.Formula, ("Content-Encoding", "gzip")), HttpStatusCode.UnsupportedMediaType);

    [Theory]
    [InlineData("application/json; charset=utf-8")]
    [InlineData("application/json;charset=\"UTF-8\"")]
    [InlineData("APPLICATION/JSON")]
    public async Task Json_may_say_that_it_is_utf8(string contentType) =>
        (await server.SendAsync(HttpMethod.Post, "/v1/batch-sheets", Encoding.UTF8.GetBytes(Bodies.Sheet), contentType)).Succeeded();

    [Theory]
    [InlineData("text/plain")]
    [InlineData("text/html;q=0.9, image/*")]
    [InlineData("application/json;q=0")]
    [InlineData("application/json;q=0, */*")]
    [InlineData("application/xml")]
    [InlineData("nonsense")]
    public async Task A_reader_who_takes_no_json_is_told_that_there_is_nothing_else(string accept)
    {
        var before = await server.StoredAsync();

        await server.RefusedAsync(await server.GetAsync("/v1/formulas", ("Accept", accept)), HttpStatusCode.NotAcceptable);
        await server.RefusedAsync(await server.GetAsync("/v1/units", ("Accept", accept)), HttpStatusCode.NotAcceptable);
        await server.RefusedAsync(await server.PostAsync("/v1/formulas", Bodies.Formula, ("Accept", accept)), HttpStatusCode.NotAcceptable);

        Assert.Equal(before, await server.StoredAsync());
    }

    [Theory]
    [InlineData("*/*")]
    [InlineData("application/*")]
    [InlineData("application/json; charset=utf-8")]
    [InlineData("text/plain;q=0.1, application/json")]
    [InlineData("text/plain, */*;q=0.1")]
    [InlineData("Application/JSON")]
    [InlineData("*/*;q=0, application/json")]
    public async Task A_reader_who_takes_json_among_others_gets_it(string accept) =>
        Assert.Equal("application/json", (await server.GetAsync("/v1/formulas", ("Accept", accept))).Succeeded().MediaType);
}
