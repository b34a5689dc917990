using System.Net;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Refusals;

public sealed class PathTests(Server server) : IClassFixture<Server>
{
    [Theory]
    [InlineData("a%2Fb")]
    [InlineData("a/b/c")]
    [InlineData("a:b")]
    [InlineData("http:%2F%2Frublab.example")]
    [InlineData("%F0%9F%8D%96")]
    [InlineData("%FF%FE")]
    [InlineData("%ED%A0%80")]
    [InlineData("%0A%0D")]
    [InlineData("..%2F..%2Fetc%2Fpasswd")]
    [InlineData("'%20OR%201=1%20--")]
    [InlineData("%25s%n{0}")]
    [InlineData("%zz")]
    [InlineData("10kB")]
    public async Task An_id_that_was_never_given_is_not_found_on_any_route(string id)
    {
        var before = await server.StoredAsync();
        id = id == "10kB" ? new string('x', 10_000) : id;

        foreach (var noun in (string[])["formulas", "ingredients", "cuts", "sources"])
        {
            await server.RefusedAsync(await server.GetAsync($"/v1/{noun}/{id}"), HttpStatusCode.NotFound);
        }

        await server.RefusedAsync(await server.GetAsync($"/v1/formulas/{id}/revisions"), HttpStatusCode.NotFound);
        await server.RefusedAsync(await server.GetAsync($"/v1/formulas/lockside-pork-rub/revisions/{id}"), HttpStatusCode.NotFound);
        await server.RefusedAsync(await server.PutAsync($"/v1/formulas/{id}", Bodies.Formula, ("If-Match", "*")), HttpStatusCode.NotFound);
        await server.RefusedAsync(await server.DeleteAsync($"/v1/formulas/{id}", ("If-Match", "*")), HttpStatusCode.NotFound);
        Assert.Equal(before, await server.StoredAsync());
    }

    // These two are refused before the program sees them, so without a document.
    [Fact]
    public async Task An_encoded_nul_in_a_path_is_a_bad_request() =>
        Assert.Equal(HttpStatusCode.BadRequest, (await server.GetAsync("/v1/formulas/%00")).Status);

    [Fact]
    public async Task A_path_beyond_16_kB_is_too_long() =>
        Assert.Equal(HttpStatusCode.RequestUriTooLong, (await server.GetAsync("/v1/formulas/" + new string('x', 17_000))).Status);

    [Theory]
    [InlineData("/v1")]
    [InlineData("/v1/")]
    [InlineData("/v1/nothing")]
    [InlineData("/v1//formulas")]
    [InlineData("/v2/formulas")]
    [InlineData("/formulas")]
    [InlineData("/v1/formulas/lockside-pork-rub/lines")]
    [InlineData("/problems/none")]
    [InlineData("/problems/")]
    public async Task An_unknown_path_is_not_found_by_any_method(string path)
    {
        foreach (var method in (HttpMethod[])[HttpMethod.Get, HttpMethod.Post, HttpMethod.Delete])
        {
            if (method == HttpMethod.Get || !path.StartsWith("/problems/n", StringComparison.Ordinal))
            {
                await server.RefusedAsync(await server.SendAsync(method, path, method == HttpMethod.Get ? null : "{}"), HttpStatusCode.NotFound);
            }
        }
    }

    [Theory]
    [InlineData("PUT", "/v1/formulas", "GET, HEAD, POST")]
    [InlineData("DELETE", "/v1/formulas", "GET, HEAD, POST")]
    [InlineData("PATCH", "/v1/formulas/lockside-pork-rub", "DELETE, GET, HEAD, PUT")]
    [InlineData("POST", "/v1/formulas/lockside-pork-rub", "DELETE, GET, HEAD, PUT")]
    [InlineData("DELETE", "/v1/formulas/lockside-pork-rub/revisions/1", "GET, HEAD")]
    [InlineData("GET", "/v1/batch-sheets", "POST")]
    [InlineData("HEAD", "/v1/batch-sheets", null)]
    [InlineData("GET", "/v1/salt-checks", "POST")]
    [InlineData("GET", "/v1/brines", "POST")]
    [InlineData("GET", "/v1/cures", "POST")]
    [InlineData("DELETE", "/v1/conversions", "GET, HEAD, POST")]
    [InlineData("POST", "/v1/changes", "GET, HEAD")]
    [InlineData("POST", "/v1/units", "GET, HEAD")]
    [InlineData("OPTIONS", "/v1/cuts", "GET, HEAD")]
    [InlineData("BREW", "/v1/ingredients", "GET, HEAD")]
    [InlineData("POST", "/v1/sources/usda-sr28", "GET, HEAD")]
    public async Task A_wrong_method_is_told_the_right_ones_whatever_the_reader_accepts(string method, string path, string? allow)
    {
        var answer = await server.SendAsync(new HttpMethod(method), path, (string?)null, ("Accept", "text/plain"));

        Assert.Equal(HttpStatusCode.MethodNotAllowed, answer.Status);
        if (allow is null)
        {
            Assert.Empty(answer.Bytes);
            return;
        }

        await server.RefusedAsync(answer, HttpStatusCode.MethodNotAllowed);
        Assert.Equal(allow, string.Join(", ", answer.Header("Allow")!.Split(", ").Order(StringComparer.Ordinal)));
    }
}
