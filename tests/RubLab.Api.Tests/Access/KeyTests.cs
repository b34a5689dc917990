using System.Net;
using RubLab.Api.Hosting;
using RubLab.Api.Tests.Engines;
using RubLab.Api.Tests.Hosting;
using RubLab.Storage;

namespace RubLab.Api.Tests.Access;

public class KeyTests(Server server) : IClassFixture<Server>
{
    [EngineTheory]
    [InlineData("Bearer rubk_wrong")]
    [InlineData("Bearer ")]
    [InlineData("Bearer")]
    [InlineData("Basic dXNlcjpwYXNz")]
    [InlineData("rubk_wrong")]
    public async Task A_wrong_key_is_refused_and_told_the_scheme_even_on_this_machine(string authorization)
    {
        foreach (var path in (string[])["/v1/formulas", "/v1/none", "/v1/units"])
        {
            var answer = await server.GetAsync(path, ("Authorization", authorization));
            await server.RefusedAsync(answer, HttpStatusCode.Unauthorized);
            Assert.Equal("Bearer", answer.Header("WWW-Authenticate"));
        }
    }

    [EngineFact]
    public async Task A_key_works_whatever_the_case_of_the_scheme()
    {
        var key = await server.IssueKeyAsync(LocalKitchen.Id, "read");

        (await server.GetAsync("/v1/formulas", ("Authorization", "bearer " + key))).Succeeded();
    }

    [EngineFact]
    public async Task A_key_with_one_letter_changed_is_a_wrong_key()
    {
        var key = await server.IssueKeyAsync(LocalKitchen.Id, "read");

        await server.RefusedAsync(await server.GetAsync("/v1/formulas", Bearer(key[..^1])), HttpStatusCode.Unauthorized);
        await server.RefusedAsync(await server.GetAsync("/v1/formulas", Bearer(key + "x")), HttpStatusCode.Unauthorized);
        await server.RefusedAsync(
            await server.GetAsync("/v1/formulas", Bearer(key), Bearer(key)), HttpStatusCode.Unauthorized);
    }

    [EngineFact]
    public async Task A_read_only_key_reads_and_computes_but_cannot_write()
    {
        var key = Bearer(await server.IssueKeyAsync(LocalKitchen.Id, "read"));
        var before = await server.StoredAsync();

        (await server.GetAsync("/v1/formulas/lockside-pork-rub", key)).Succeeded();
        (await server.PostAsync("/v1/batch-sheets", Bodies.Sheet, key)).Succeeded();
        (await server.PostAsync("/v1/salt-checks", Bodies.SaltCheck, key)).Succeeded();
        (await server.PostAsync("/v1/conversions", Bodies.Conversions, key)).Succeeded();
        foreach (var answer in (Answer[])
            [
                await server.PostAsync("/v1/formulas", Bodies.Formula, key),
                await server.PutAsync("/v1/formulas/lockside-pork-rub", Bodies.Formula, key, ("If-Match", "*")),
                await server.DeleteAsync("/v1/formulas/lockside-pork-rub", key, ("If-Match", "*")),
            ])
        {
            await server.RefusedAsync(answer, HttpStatusCode.Forbidden);
        }

        Assert.Equal(before, await server.StoredAsync());
    }

    [EngineFact]
    public async Task A_key_without_the_scope_to_read_gets_nothing()
    {
        var key = Bearer(await server.IssueKeyAsync(LocalKitchen.Id, "write"));

        await server.RefusedAsync(await server.GetAsync("/v1/formulas", key), HttpStatusCode.Forbidden);
        await server.RefusedAsync(await server.PostAsync("/v1/formulas", Bodies.Formula, key), HttpStatusCode.Forbidden);
    }

    [EngineFact]
    public async Task A_key_that_asks_too_often_is_told_when_to_come_back_and_no_other_is()
    {
        var busy = Bearer(await server.IssueKeyAsync(LocalKitchen.Id, "read"));
        var calm = Bearer(await server.IssueKeyAsync(LocalKitchen.Id, "read"));

        var answers = await Task.WhenAll(Enumerable.Range(0, 400).Select(_ => server.GetAsync("/v1/cuts/beef-brisket", busy)));

        Assert.True(answers.Count(a => a.Status == HttpStatusCode.OK) >= 100);
        var refused = answers.First(a => a.Status != HttpStatusCode.OK);
        await server.RefusedAsync(refused, HttpStatusCode.TooManyRequests);
        Assert.Matches("^[1-9][0-9]*$", refused.Header("Retry-After")!);
        (await server.GetAsync("/v1/cuts/beef-brisket", calm)).Succeeded();
        (await server.GetAsync("/v1/cuts/beef-brisket")).Succeeded();
    }

    [EngineFact]
    public async Task A_revoked_key_is_refused()
    {
        var plain = await server.IssueKeyAsync(LocalKitchen.Id, "read");
        (await server.GetAsync("/v1/formulas", Bearer(plain))).Succeeded();
        await using (var work = await server.Database.BeginAsync(Intent.Write))
        {
            var known = (await work.Keys.FindAsync(plain))!;
            Assert.True(await work.Keys.RevokeAsync(known.KitchenId, known.Id));
            await work.CommitAsync();
        }

        await server.RefusedAsync(await server.GetAsync("/v1/formulas", Bearer(plain)), HttpStatusCode.Unauthorized);
    }

    [EngineFact]
    public async Task A_key_of_another_kitchen_sees_and_changes_only_its_own()
    {
        var key = Bearer(await server.IssueKeyAsync("quay", "read", "write"));
        var before = await server.StoredAsync();
        Assert.Empty((await server.GetAsync("/v1/formulas", key)).Succeeded().Json["items"]!.AsArray());
        Assert.Empty((await server.GetAsync("/v1/changes", key)).Succeeded().Json["items"]!.AsArray());

        var own = (await server.PostAsync("/v1/formulas", Bodies.Formula, key)).Succeeded(HttpStatusCode.Created).Header("Location")!;

        await server.RefusedAsync(await server.GetAsync(own), HttpStatusCode.NotFound);
        await server.RefusedAsync(await server.GetAsync(own + "/revisions/1"), HttpStatusCode.NotFound);
        const string Foreign = "/v1/formulas/lockside-pork-rub";
        foreach (var answer in (Answer[])
            [
                await server.GetAsync(Foreign, key),
                await server.GetAsync(Foreign + "/revisions", key),
                await server.GetAsync(Foreign + "/revisions/1", key),
                await server.PutAsync(Foreign, Bodies.Formula, key, ("If-Match", "*")),
                await server.DeleteAsync(Foreign, key, ("If-Match", "*")),
            ])
        {
            await server.RefusedAsync(answer, HttpStatusCode.NotFound);
        }

        Assert.Single((await server.GetAsync("/v1/formulas", key)).Succeeded().Json["items"]!.AsArray());
        Assert.Single((await server.GetAsync("/v1/changes", key)).Succeeded().Json["items"]!.AsArray());
        Assert.Equal(before, await server.StoredAsync());
    }

    [EngineFact]
    public async Task A_sheet_cannot_use_the_formula_of_another_kitchen()
    {
        var key = Bearer(await server.IssueKeyAsync("jetty", "read", "write"));
        const string Body = """{"pile":[{"cut":"beef-brisket","count":1,"weightEach":{"value":5,"unit":"kg"}}],"treatments":[{"formulaId":"lockside-pork-rub"}]}""";

        (await server.PostAsync("/v1/batch-sheets", Body)).Succeeded();
        await server.RefusedAsync(
            await server.PostAsync("/v1/batch-sheets", Body, key), HttpStatusCode.UnprocessableEntity, "unknown-formula", "/treatments/0/formulaId");
    }

    private static (string, string) Bearer(string key) => ("Authorization", "Bearer " + key);
}
