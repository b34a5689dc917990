using System.Net;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Caching;

public sealed class EntityTagTests(Server server) : IClassFixture<Server>
{
    public static TheoryData<string> Tagged =>
    [
        "/v1/units", "/v1/sources", "/v1/sources/usda-sr28", "/v1/ingredients", "/v1/ingredients?limit=3", "/v1/ingredients/salt",
        "/v1/cuts", "/v1/cuts/beef-brisket", "/v1/conversions?ingredient=salt&value=1&unit=lb&to=g",
        "/v1/formulas", "/v1/formulas/lockside-pork-rub", "/v1/formulas/lockside-pork-rub/revisions", "/v1/formulas/lockside-pork-rub/revisions/1",
    ];

    [Theory]
    [MemberData(nameof(Tagged))]
    public async Task A_read_has_a_strong_tag_and_may_be_kept_by_its_reader_alone(string path)
    {
        var answer = (await server.GetAsync(path)).Succeeded();

        Assert.Matches("^\"[!#-~]+\"$", answer.Tag!);
        Assert.Equal("no-cache, private", string.Join(", ", answer.Header("Cache-Control")!.Split(", ").Order()));
        Assert.Equal("Accept, Authorization, Cookie", string.Join(", ", answer.Header("Vary")!.Split(", ").Order()));
        Assert.Equal("application/json", answer.MediaType);
    }

    [Theory]
    [MemberData(nameof(Tagged))]
    public async Task A_reader_who_holds_the_tag_is_told_so_without_a_body(string path)
    {
        var tag = (await server.GetAsync(path)).Succeeded().Tag!;

        foreach (var held in (string[])[tag, "W/" + tag, "\"other\", " + tag, "*"])
        {
            var again = await server.GetAsync(path, ("If-None-Match", held));
            Assert.Equal(HttpStatusCode.NotModified, again.Status);
            Assert.Empty(again.Bytes);
            Assert.Equal(tag, again.Tag);
            Assert.NotNull(again.Header("Cache-Control"));
            Assert.NotNull(again.Header("Vary"));
        }
    }

    [Theory]
    [MemberData(nameof(Tagged))]
    public async Task A_reader_who_holds_another_tag_gets_the_answer(string path)
    {
        var answer = (await server.GetAsync(path)).Succeeded();

        foreach (var held in (string[])["\"other\"", "garbage", answer.Tag![..^1] + "x\""])
        {
            Assert.Equal(answer.Bytes, (await server.GetAsync(path, ("If-None-Match", held))).Succeeded().Bytes);
        }
    }

    [Theory]
    [MemberData(nameof(Tagged))]
    public async Task Head_answers_as_get_does_but_without_the_body(string path)
    {
        var get = (await server.GetAsync(path)).Succeeded();
        var head = (await server.SendAsync(HttpMethod.Head, path, (string?)null)).Succeeded();

        Assert.Empty(head.Bytes);
        Assert.Equal((get.Tag, get.MediaType), (head.Tag, head.MediaType));
        Assert.Equal(HttpStatusCode.NotModified, (await server.SendAsync(HttpMethod.Head, path, (string?)null, ("If-None-Match", get.Tag!))).Status);
    }

    [Fact]
    public async Task Head_of_nothing_is_not_found_and_has_no_body()
    {
        var head = await server.SendAsync(HttpMethod.Head, "/v1/formulas/none", (string?)null);

        Assert.Equal(HttpStatusCode.NotFound, head.Status);
        Assert.Empty(head.Bytes);
    }

    [Fact]
    public async Task The_change_feed_has_no_tag_and_is_not_kept()
    {
        var answer = (await server.GetAsync("/v1/changes", ("If-None-Match", "*"))).Succeeded();

        Assert.Null(answer.Tag);
        Assert.Equal("no-store", answer.Header("Cache-Control"));
    }

    [Fact]
    public async Task Computed_documents_are_not_kept()
    {
        foreach (var (method, path, sound, _) in Bodies.ByRoute.Values.Where(r => r.Method == HttpMethod.Post && r.Path != "/v1/formulas"))
        {
            Assert.Equal("no-store", (await server.SendAsync(method, path, sound)).Succeeded().Header("Cache-Control"));
        }
    }

    [Fact]
    public async Task Answers_say_that_their_type_is_not_to_be_guessed()
    {
        foreach (var answer in (Answer[])[await server.GetAsync("/v1/units"), await server.GetAsync("/v1/none"), await server.PostAsync("/v1/formulas", "{")])
        {
            Assert.Equal("nosniff", answer.Header("X-Content-Type-Options"));
            Assert.Null(answer.Header("Server"));
        }
    }
}
