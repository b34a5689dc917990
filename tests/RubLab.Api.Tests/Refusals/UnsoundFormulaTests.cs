using System.Net;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Refusals;

/// <summary>Formulas that can be read and must not be stored.</summary>
public sealed class UnsoundFormulaTests(Server server) : IClassFixture<Server>
{
    [Theory]
    [InlineData(@"a\u0000b", "bad-text")]
    [InlineData(@"\u0000", "bad-text")]
    [InlineData(@"line\nbreak", "bad-text")]
    [InlineData(@"\u007f", "bad-text")]
    [InlineData(@"\u0085x", "bad-text")]
    [InlineData("", "required")]
    [InlineData("  ", "required")]
    [InlineData(@"\u3000", "required")]
    [InlineData("x201", "too-long")]
    public async Task A_name_no_store_should_hold_is_refused(string name, string code)
    {
        var body = Bodies.Formula.Replace("Lockside pork rub", name == "x201" ? new string('x', 201) : name, StringComparison.Ordinal);

        await RefusedAsync(body, code, "/name");
    }

    [Theory]
    [InlineData("salt\\u0000")]
    [InlineData("Salt")]
    [InlineData("")]
    [InlineData("🧂")]
    public async Task An_unknown_ingredient_is_refused(string ingredient) =>
        await RefusedAsync(Bodies.Formula.Replace("\"salt\"", $"\"{ingredient}\"", StringComparison.Ordinal), "unknown-ingredient", "/lines/0/ingredient");

    [Theory]
    [InlineData("\"kind\":\"rub\"", "\"kind\":\"Rub\"", "unknown-word", "/kind")]
    [InlineData("\"kind\":\"rub\"", "\"kind\":\"rub\",\"base\":\"raw\\u0000\"", "unknown-word", "/base")]
    [InlineData("\"unit\":\"g/kg\"", "\"unit\":\"G/KG\"", "unknown-unit", "/dose/unit")]
    [InlineData("\"unit\":\"g/kg\"", "\"unit\":\"g/kg\\u0000\"", "unknown-unit", "/dose/unit")]
    [InlineData("\"value\":22", "\"value\":0", "out-of-range", "/dose/value")]
    [InlineData("\"value\":22", "\"value\":-22", "out-of-range", "/dose/value")]
    [InlineData("\"value\":22", "\"value\":5e-324", "out-of-range", "/dose/value")]
    [InlineData("\"value\":22", "\"value\":1e-31", "out-of-range", "/dose/value")]
    [InlineData("\"value\":2,", "\"value\":5e-324,", "out-of-range", "/lines/0/amount/value")]
    [InlineData("\"value\":2,", "", "required", "/lines/0/amount/value")]
    [InlineData("\"ground\"", "\"ground\\u0000\"", "unknown-form", "/lines/1/form")]
    public async Task One_wrong_member_is_named_alone(string sound, string wrong, string code, string pointer) =>
        await RefusedAsync(Bodies.Formula.Replace(sound, wrong, StringComparison.Ordinal), code, pointer);

    [Theory]
    [InlineData("g", "1e-31")]
    [InlineData("kg", "5e-324")]
    public async Task Meat_that_weighs_next_to_nothing_makes_no_ratio(string unit, string weight)
    {
        var body = Bodies.Card.Replace("\"value\":12,\"unit\":\"lb\"", $"\"value\":{weight},\"unit\":\"{unit}\"", StringComparison.Ordinal);

        await RefusedAsync(body, "out-of-range", "/writtenFor/value");
    }

    [Fact]
    public async Task The_most_on_the_least_meat_gives_figures_that_can_be_written()
    {
        var body = Bodies.Card.Replace("\"value\":12,\"unit\":\"lb\"", "\"value\":1,\"unit\":\"mg\"", StringComparison.Ordinal)
            .Replace("\"value\":3", "\"value\":1e5", StringComparison.Ordinal);

        (await server.PostAsync("/v1/formulas", body)).Succeeded(HttpStatusCode.Created);
    }

    private async Task RefusedAsync(string body, string code, string pointer)
    {
        var before = await server.StoredAsync();

        await server.RefusedAsync(await server.PostAsync("/v1/formulas", body), HttpStatusCode.UnprocessableEntity, code, pointer);
        await server.RefusedAsync(
            await server.PutAsync("/v1/formulas/lockside-pork-rub", body, ("If-Match", "*")), HttpStatusCode.UnprocessableEntity, code, pointer);

        Assert.Equal(before, await server.StoredAsync());
    }
}
