using System.Net;
using System.Text;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Refusals;

/// <summary>Bodies that cannot be read, on every route that takes one.</summary>
public sealed class BadBodyTests(Server server) : IClassFixture<Server>
{
    public static TheoryData<string> Routes => new(Bodies.ByRoute.Keys);

    public static TheoryData<string, string, string, string> BadBodies
    {
        get
        {
            // LIST stands for the list of the route's own body, REST for its sound members.
            (string Body, string Code, string Pointer)[] bad =
            [
                ("", "unreadable", ""),
                (" ", "not-json", ""),
                ("null", "unreadable", ""),
                ("[]", "wrong-type", ""),
                ("\"text\"", "wrong-type", ""),
                ("17", "wrong-type", ""),
                ("{", "not-json", ""),
                ("{]", "not-json", ""),
                ("{'LIST':[]}", "not-json", ""),
                ("{LIST:[]}", "not-json", ""),
                ("{\"LIST\":[],}", "not-json", ""),
                ("{/* */}", "not-json", ""),
                ("{\"LIST\":NaN}", "not-json", "/LIST"),
                ("{\"LIST\":Infinity}", "not-json", "/LIST"),
                ("{\"LIST\":[]}{}", "not-json", ""),
                ("{\"nonsense\":1,REST", "unknown-member", "/nonsense"),
                ("{\"List\":[],REST", "unknown-member", "/List"),
                ("{\"a.b/c~d\":1,REST", "unknown-member", "/a.b~1c~0d"),
                ("{\"x']y\":1,REST", "unknown-member", "/x']y"),
                ("{\"\":1,REST", "unknown-member", "/"),
                ("{\"LIST\":null,REST", "duplicate-member", "/LIST"),
                ("{\"LIST\":true}", "wrong-type", "/LIST"),
                ("{\"LIST\":{}}", "wrong-type", "/LIST"),
                ("{\"LIST\":[5]}", "wrong-type", "/LIST/0"),
                ("{\"LIST\":[{\"LIST\":1}]}", "unknown-member", "/LIST/0/LIST"),
                ("{\"LIST\":[DEEP]}", "wrong-type", "/LIST/0"),
                ("{\"nonsense\":DEEP}", "unknown-member", "/nonsense"),
                ("{\"\\ud800\":1}", "bad-text", ""),
            ];
            var data = new TheoryData<string, string, string, string>();
            foreach (var route in Bodies.ByRoute.Keys)
            {
                foreach (var (body, code, pointer) in bad)
                {
                    data.Add(route, body, code, pointer);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(BadBodies))]
    public async Task A_body_that_cannot_be_read_is_refused_at_its_first_fault(string route, string body, string code, string pointer)
    {
        var (_, _, sound, list) = Bodies.ByRoute[route];
        var sent = body.Replace("REST", sound[1..], StringComparison.Ordinal)
            .Replace("DEEP", new string('[', 5000) + new string(']', 5000), StringComparison.Ordinal)
            .Replace("LIST", list, StringComparison.Ordinal);

        await RefusedAsync(route, Encoding.UTF8.GetBytes(sent), code, pointer.Replace("LIST", list, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Routes))]
    public async Task Bytes_that_are_no_utf8_are_refused(string route)
    {
        var (method, path, sound, _) = Bodies.ByRoute[route];
        var bytes = Encoding.UTF8.GetBytes(sound);
        var (member, at) = TextIn(sound);
        bytes[at] = 0xFF;

        var answer = await server.SendAsync(method, path, bytes, "application/json");

        var error = Assert.Single(await server.RefusedAsync(answer, HttpStatusCode.BadRequest))!;
        Assert.Equal("bad-text", (string)error["code"]!);
        Assert.EndsWith("/" + member, (string)error["pointer"]!, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Routes))]
    public async Task Half_a_surrogate_pair_is_refused(string route)
    {
        var body = Bodies.ByRoute[route].Sound;
        var (member, at) = TextIn(body);

        foreach (var half in (string[])[@"\ud800", @"\udc00", @"\udc00\ud800"])
        {
            var (method, path, _, _) = Bodies.ByRoute[route];
            var answer = await server.SendAsync(method, path, body.Insert(at, half));
            var error = Assert.Single(await server.RefusedAsync(answer, HttpStatusCode.BadRequest))!;
            Assert.Equal("bad-text", (string)error["code"]!);
            Assert.EndsWith("/" + member, (string)error["pointer"]!, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Routes))]
    public async Task A_text_where_a_number_belongs_is_refused(string route)
    {
        var (method, path, sound, _) = Bodies.ByRoute[route];
        var at = sound.IndexOf("\"value\":", StringComparison.Ordinal) + "\"value\":".Length;
        var end = sound.IndexOf(',', at);

        foreach (var wrong in (string[])["\"2\"", "true", "{}", "[2]"])
        {
            var answer = await server.SendAsync(method, path, sound[..at] + wrong + sound[end..]);
            var error = Assert.Single(await server.RefusedAsync(answer, HttpStatusCode.BadRequest))!;
            Assert.Equal("wrong-type", (string)error["code"]!);
            Assert.EndsWith("/value", (string)error["pointer"]!, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("createFormula", "/dose/value")]
    [InlineData("replaceFormula", "/dose/value")]
    [InlineData("computeBatchSheet", "/pile/0/weightEach/value")]
    [InlineData("checkSalt", "/pile/0/cookYield/value")]
    public async Task A_number_beyond_a_double_is_refused_where_it_stands(string route, string pointer)
    {
        var before = await server.StoredAsync();
        var (method, path, sound, _) = Bodies.ByRoute[route];
        var at = sound.IndexOf("\"value\":", StringComparison.Ordinal) + "\"value\":".Length;
        var end = sound.IndexOf(',', at);

        foreach (var huge in (string[])["1e999", "-1e999", "1" + new string('0', 400)])
        {
            var answer = await server.SendAsync(method, path, sound[..at] + huge + sound[end..], ("If-Match", "*"));
            await server.RefusedAsync(answer, HttpStatusCode.UnprocessableEntity, "not-finite", pointer);
        }

        Assert.Equal(before, await server.StoredAsync());
    }

    [Fact]
    public async Task An_integer_too_large_or_with_a_fraction_is_of_the_wrong_type()
    {
        foreach (var count in (string[])["4.5", "2147483648", "1e3", "1e999", "\"4\""])
        {
            var body = Bodies.Sheet.Replace("\"count\":4", $"\"count\":{count}", StringComparison.Ordinal);
            await server.RefusedAsync(await server.PostAsync("/v1/batch-sheets", body), HttpStatusCode.BadRequest, "wrong-type", "/pile/0/count");
        }
    }

    [Theory]
    [InlineData("{\"pile\":5}", "A list is expected here (")]
    [InlineData("{\"pile\":[5]}", "An object is expected here (")]
    [InlineData("{\"pile\":[{\"cut\":5}]}", "A text is expected here (")]
    [InlineData("{\"pile\":[{\"count\":\"4\"}]}", "A number is expected here (")]
    [InlineData("{\"pile\":[{\"count\":4.5}]}", "A whole number, and not too large a one, is expected here (")]
    [InlineData("{\"pile\":[{\"cookYield\":{\"low\":\"60\"}}]}", "A number is expected here (")]
    [InlineData("{\"pile\":[{\"pieces\":[{\"skip\":1}]}]}", "True or false is expected here (")]
    [InlineData("{\"pile\":[{\"pieces\":[{\"doseFactor\":\"1\"}]}]}", "A number is expected here (")]
    [InlineData("{\"overage\":5}", "An object with value and unit is expected here (")]
    [InlineData("{\"overage\":{\"value\":\"5\"}}", "A number is expected here (")]
    [InlineData("{\"treatments\":[{\"retained\":90}]}", "An object with value and unit, or with low, typical, high and unit, is expected here (")]
    [InlineData("[]", "An object is expected here (")]
    public async Task A_value_of_the_wrong_type_is_told_which_belongs_there(string body, string expected)
    {
        var errors = await server.RefusedAsync(await server.PostAsync("/v1/batch-sheets", body), HttpStatusCode.BadRequest);

        Assert.StartsWith(expected, (string)Assert.Single(errors)!["detail"]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_price_beyond_all_money_is_told_to_be_too_large()
    {
        var answer = await server.PostAsync(
            "/v1/purchase-plans", """{"guests":[{"count":5}],"menu":[{"cut":"beef-brisket","price":{"amount":1e999,"currency":"EUR"}}]}""");

        var error = Assert.Single(await server.RefusedAsync(answer, HttpStatusCode.BadRequest))!;
        Assert.StartsWith("A number, and not too large a one, is expected here (", (string)error["detail"]!, StringComparison.Ordinal);
    }

    /// <summary>A member of a sound body that holds text, and where the text begins.</summary>
    private static (string Member, int At) TextIn(string sound)
    {
        var member = new[] { "ingredient", "cut", "method" }.First(m => sound.Contains($"\"{m}\":\"", StringComparison.Ordinal));
        var start = $"\"{member}\":\"";
        return (member, sound.IndexOf(start, StringComparison.Ordinal) + start.Length);
    }

    private async Task RefusedAsync(string route, byte[] body, string code, string pointer)
    {
        var before = await server.StoredAsync();
        var (method, path, _, _) = Bodies.ByRoute[route];

        var answer = await server.SendAsync(method, path, body, "application/json", ("If-Match", "*"));

        await server.RefusedAsync(answer, HttpStatusCode.BadRequest, code, pointer);
        Assert.DoesNotContain("System.", answer.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("RubLab.", answer.Text, StringComparison.Ordinal);
        Assert.Equal(before, await server.StoredAsync());
    }
}
