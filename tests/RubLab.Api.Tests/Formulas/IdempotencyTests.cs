using System.Net;
using RubLab.Api.Tests.Engines;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Formulas;

public class IdempotencyTests(Server server) : IClassFixture<Server>
{
    private const string Header = "Idempotency-Key";

    [EngineFact]
    public async Task A_create_sent_twice_is_done_once_and_answered_alike()
    {
        var key = NewKey();
        var first = (await server.PostAsync("/v1/formulas", Bodies.Formula, (Header, key))).Succeeded(HttpStatusCode.Created);
        var before = await server.StoredAsync();

        var second = (await server.PostAsync("/v1/formulas", Bodies.Formula, (Header, key))).Succeeded(HttpStatusCode.Created);

        Assert.Equal(first.Bytes, second.Bytes);
        foreach (var header in (string[])["Location", "ETag", "Content-Type"])
        {
            Assert.NotNull(first.Header(header));
            Assert.Equal(first.Header(header), second.Header(header));
        }

        Assert.Equal(before, await server.StoredAsync());
    }

    [EngineFact]
    public async Task Creates_sent_at_once_with_one_key_store_one_formula()
    {
        var key = NewKey();

        var answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => server.PostAsync("/v1/formulas", Bodies.Formula, (Header, key))));

        Assert.All(answers, a => a.Succeeded(HttpStatusCode.Created));
        Assert.Single(answers.Select(a => a.Text).Distinct());
    }

    [EngineFact]
    public async Task Without_a_key_or_with_another_a_create_is_done_again()
    {
        var ids = new HashSet<string>();
        foreach (var key in (string?[])[null, null, NewKey(), NewKey()])
        {
            (string, string)[] headers = key is null ? [] : [(Header, key)];
            ids.Add((string)(await server.PostAsync("/v1/formulas", Bodies.Formula, headers)).Succeeded(HttpStatusCode.Created).Json["id"]!);
        }

        Assert.Equal(4, ids.Count);
    }

    [EngineFact]
    public async Task A_key_used_for_another_body_is_refused_and_nothing_stored()
    {
        var key = NewKey();
        (await server.PostAsync("/v1/formulas", Bodies.Formula, (Header, key))).Succeeded(HttpStatusCode.Created);
        var before = await server.StoredAsync();

        await server.RefusedAsync(
            await server.PostAsync("/v1/formulas", Bodies.Card, (Header, key)), HttpStatusCode.UnprocessableEntity, "idempotency-key-reused", "");

        Assert.Equal(before, await server.StoredAsync());
    }

    [EngineFact]
    public async Task A_refused_create_does_not_use_its_key_up()
    {
        var key = NewKey();
        var unsound = Bodies.Formula.Replace("black-pepper", "moon-dust", StringComparison.Ordinal);
        await server.RefusedAsync(await server.PostAsync("/v1/formulas", unsound, (Header, key)), HttpStatusCode.UnprocessableEntity);

        (await server.PostAsync("/v1/formulas", Bodies.Formula, (Header, key))).Succeeded(HttpStatusCode.Created);
    }

    [EngineFact]
    public async Task A_key_of_one_kitchen_says_nothing_to_another()
    {
        var key = NewKey();
        var other = await server.IssueKeyAsync("idempotent", "read", "write");
        var first = (await server.PostAsync("/v1/formulas", Bodies.Formula, (Header, key))).Succeeded(HttpStatusCode.Created);

        var second = (await server.PostAsync("/v1/formulas", Bodies.Card, (Header, key), ("Authorization", "Bearer " + other))).Succeeded(HttpStatusCode.Created);

        Assert.NotEqual(first.Text, second.Text);
    }

    [EngineTheory]
    [InlineData("")]
    [InlineData("two words")]
    [InlineData("x201")]
    public async Task A_key_that_is_no_key_is_refused_and_nothing_stored(string key)
    {
        var before = await server.StoredAsync();
        var sent = key == "x201" ? new string('x', 201) : key;

        await server.RefusedAsync(
            await server.PostAsync("/v1/formulas", Bodies.Formula, (Header, sent)), HttpStatusCode.BadRequest, "bad-idempotency-key", "");

        Assert.Equal(before, await server.StoredAsync());
    }

    [EngineFact]
    public async Task A_key_of_200_characters_is_a_key() =>
        (await server.PostAsync("/v1/formulas", Bodies.Formula, (Header, new string('x', 200)))).Succeeded(HttpStatusCode.Created);

    private static string NewKey() => Guid.NewGuid().ToString();
}
