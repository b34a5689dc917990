using System.Net;
using RubLab.Api.Hosting;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Access;

public sealed class LoopbackTests(Server server) : IClassFixture<Server>
{
    private string Authority => new Uri(server.Address).Authority;

    [Theory]
    [InlineData("rublab.example")]
    [InlineData("localhost.rublab.example")]
    [InlineData("127.0.0.1.rublab.example")]
    [InlineData("192.168.1.7")]
    [InlineData("0.0.0.0")]
    public async Task A_foreign_host_name_is_refused_with_the_host_as_the_reason(string host)
    {
        var before = await server.StoredAsync();

        foreach (var answer in (Answer[])
            [
                await server.GetAsync("/v1/formulas", ("Host", host)),
                await server.PostAsync("/v1/formulas", Bodies.Formula, ("Host", host + ":5187")),
            ])
        {
            await server.RefusedAsync(answer, HttpStatusCode.BadRequest, "host-not-allowed", "");
        }

        Assert.Equal(before, await server.StoredAsync());
    }

    [Theory]
    [InlineData("localhost")]
    [InlineData("LOCALHOST:1")]
    [InlineData("127.0.0.1")]
    [InlineData("[::1]:5187")]
    public async Task A_loopback_name_is_served(string host) =>
        (await server.GetAsync("/v1/formulas", ("Host", host))).Succeeded();

    [Theory]
    [InlineData("https://rublab.example")]
    [InlineData("null")]
    [InlineData("http://localhost:1")]
    [InlineData("http://127.0.0.1.rublab.example")]
    [InlineData("file://")]
    [InlineData("")]
    public async Task A_page_of_another_origin_is_refused(string origin)
    {
        var before = await server.StoredAsync();

        await server.RefusedAsync(await server.GetAsync("/v1/formulas", ("Origin", origin)), HttpStatusCode.Forbidden);
        await server.RefusedAsync(await server.PostAsync("/v1/formulas", Bodies.Formula, ("Origin", origin)), HttpStatusCode.Forbidden);
        await server.RefusedAsync(
            await server.DeleteAsync("/v1/formulas/lockside-pork-rub", ("Origin", origin), ("If-Match", "*")), HttpStatusCode.Forbidden);

        Assert.Equal(before, await server.StoredAsync());
    }

    [Fact]
    public async Task The_servers_own_origin_is_served()
    {
        (await server.GetAsync("/v1/formulas", ("Origin", server.Address))).Succeeded();
        (await server.PostAsync("/v1/formulas", Bodies.Formula, ("Origin", server.Address))).Succeeded(HttpStatusCode.Created);
    }

    [Fact]
    public async Task The_same_address_by_another_scheme_is_another_origin() => await server.RefusedAsync(
        await server.GetAsync("/v1/formulas", ("Origin", "https://" + Authority)), HttpStatusCode.Forbidden);

    [Fact]
    public async Task An_own_origin_does_not_carry_a_foreign_one_along() => await server.RefusedAsync(
        await server.GetAsync("/v1/formulas", ("Origin", server.Address), ("Origin", "https://rublab.example")), HttpStatusCode.Forbidden);

    [Theory]
    [InlineData("Forwarded", "for=127.0.0.1")]
    [InlineData("X-Forwarded-For", "127.0.0.1")]
    [InlineData("X-Forwarded-Host", "localhost")]
    [InlineData("X-Forwarded-Proto", "http")]
    [InlineData("X-Forwarded-Port", "5187")]
    [InlineData("X-Forwarded-Server", "proxy")]
    [InlineData("x-forwarded-for", "")]
    [InlineData("X-Real-IP", "127.0.0.1")]
    [InlineData("True-Client-IP", "127.0.0.1")]
    [InlineData("Via", "1.1 proxy")]
    public async Task A_forwarded_request_needs_a_key(string header, string value)
    {
        var key = await server.IssueKeyAsync(LocalKitchen.Id, "read");

        var answer = await server.GetAsync("/v1/formulas", (header, value));

        await server.RefusedAsync(answer, HttpStatusCode.Unauthorized);
        Assert.Equal("Bearer", answer.Header("WWW-Authenticate"));
        (await server.GetAsync("/v1/formulas", (header, value), ("Authorization", "Bearer " + key))).Succeeded();
    }

    [Fact]
    public async Task A_key_works_under_a_foreign_host_name_and_origin()
    {
        var key = await server.IssueKeyAsync(LocalKitchen.Id, "read", "write");

        (await server.PostAsync(
            "/v1/formulas", Bodies.Formula,
            ("Host", "rublab.example"), ("Origin", "https://rublab.example"), ("Authorization", "Bearer " + key))).Succeeded(HttpStatusCode.Created);
    }

    [Fact]
    public async Task No_answer_lets_a_page_of_another_origin_read_it()
    {
        var preflight = await server.SendAsync(
            HttpMethod.Options, "/v1/formulas", (string?)null, ("Origin", "https://rublab.example"), ("Access-Control-Request-Method", "POST"));

        Assert.True((int)preflight.Status >= 400);
        Assert.Null(preflight.Header("Access-Control-Allow-Origin"));
        Assert.Null((await server.GetAsync("/v1/formulas", ("Origin", server.Address))).Header("Access-Control-Allow-Origin"));
    }
}
