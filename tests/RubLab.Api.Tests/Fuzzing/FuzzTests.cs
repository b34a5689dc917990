using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using RubLab.Api.Tests.Engines;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Fuzzing;

/// <summary>Thousands of damaged requests: whatever comes, the server answers in JSON and does not fail.</summary>
public class FuzzTests(Server server) : IClassFixture<Server>
{
    private static readonly string[] MoreBodies =
    [
        Bodies.Card,
        """
        {"pile":[{"cut":"chicken-leg","count":8,"totalWeight":{"value":5,"unit":"lb"},"bone":{"value":25,"unit":"%"},"addedSolution":{"value":8,"unit":"%"},
                  "cookYield":{"low":60,"typical":68,"high":75,"unit":"%"},"juicesReturned":true,"portion":{"value":6,"unit":"oz"}}],
         "treatments":[{"formulaId":"lockside-old-card","stage":"before"},
                       {"formula":{"name":"At table","kind":"sauce","base":"portion","lines":[{"ingredient":"salt","amount":{"value":0.4,"unit":"%"}}]},"applications":2,"stage":"after"}],
         "weighingStep":{"value":0.1,"unit":"oz"},"purpose":"check"}
        """,
        """
        {"pile":[{"cut":"beef-brisket","pieces":[{"weight":{"value":5,"unit":"kg"},"doseFactor":0.5},{"weight":{"value":11,"unit":"lb"},"skip":true}],"weightIs":"purchase"}],
         "treatments":[{"formula":{"name":"Cooked","kind":"mop","base":"cooked","dose":{"value":30,"unit":"g/kg"},
                                   "lines":[{"ingredient":"salt","amount":{"value":1,"unit":"parts-by-volume"}},{"ingredient":"water","amount":{"value":9,"unit":"parts-by-volume"}}]},
                        "dose":{"value":6,"unit":"%"}}],"overage":{"value":10,"unit":"%"}}
        """,
    ];

    [EngineTheory]
    [InlineData(20260402)]
    [InlineData(19700101)]
    public async Task Damaged_bodies_never_break_the_server(int seed)
    {
        var mutations = new Mutations(new Random(seed));
        var tally = new Dictionary<HttpStatusCode, int>();
        for (var i = 0; i < 6000; i++)
        {
            var (method, path, sound) = mutations.Pick(Bodies.All);
            var more = mutations.Pick(MoreBodies);
            var isFormula = path.Contains("formulas", StringComparison.Ordinal);
            // Routes with a second sound body of their own.
            var other = path switch { "/v1/brines" => Bodies.Soak, "/v1/salting-times" => Bodies.SoakedBrick, _ => null };
            var isBench = path is "/v1/batch-sheets" or "/v1/salt-checks";
            var isSecond = i % 2 == 0;
            var body = mutations.Damage(
                isSecond && other is not null ? other : isSecond && (isFormula || isBench) && more == Bodies.Card == isFormula ? more : sound);

            // The pictures are drawn from damaged bodies too.
            var asked = path == "/v1/salting-times" ? path + (i % 3) switch { 0 => "?plot=uptake", 1 => "?plot=profile", _ => "" } : path;
            var answer = await server.SendAsync(method, asked, body, "application/json", ("If-Match", "*"));

            Check(answer, $"Seed {seed}, number {i}: {method} {path} {Encoding.UTF8.GetString(body)}");
            tally[answer.Status] = tally.GetValueOrDefault(answer.Status) + 1;
        }

        // Were nearly all refused at the door, nothing behind it would have been tried.
        Assert.All((HttpStatusCode[])[HttpStatusCode.OK, HttpStatusCode.Created, HttpStatusCode.BadRequest, HttpStatusCode.UnprocessableEntity], status =>
            Assert.True(tally.GetValueOrDefault(status) >= 20, $"{status}: {tally.GetValueOrDefault(status)}"));
    }

    [EngineTheory]
    [InlineData(20260402)]
    [InlineData(19700101)]
    public async Task Damaged_paths_and_headers_never_break_the_server(int seed)
    {
        (string, string)[] headers =
        [
            ("If-Match", "*"), ("If-Match", "\"r1-2026.3-d0\""), ("If-Match", "x"), ("If-None-Match", "*"), ("If-None-Match", ",\"\""), ("Accept", "*/*;q=x"),
            ("Accept", ",,"), ("Accept", "text/html"), ("Idempotency-Key", "k"), ("Idempotency-Key", "a b"), ("Range", "bytes=0-1"), ("Origin", "x"),
            ("Authorization", "Bearer x"), ("Authorization", " "), ("Via", "x"), ("Content-Encoding", "br"), ("Expect", "100-continue"),
        ];
        HttpMethod[] methods = [HttpMethod.Get, HttpMethod.Get, HttpMethod.Get, HttpMethod.Post, HttpMethod.Put, HttpMethod.Delete, HttpMethod.Options, new("BREW")];
        var mutations = new Mutations(new Random(seed));
        var tally = new Dictionary<HttpStatusCode, int>();
        for (var i = 0; i < 2000; i++)
        {
            var (method, path, first, second) = (mutations.Pick(methods), mutations.Path(), mutations.Pick(headers), mutations.Pick(headers));
            var body = method == HttpMethod.Get ? null : Encoding.UTF8.GetBytes(mutations.Pick(Bodies.ByRoute.Values.ToList()).Sound);

            var answer = await server.SendAsync(
                method, path, body is null ? null : new ByteArrayContent(body), i % 3 == 0 ? [first, second] : []);

            Check(answer, $"Seed {seed}, number {i}: {method} {path} {first} {second}");
            tally[answer.Status] = tally.GetValueOrDefault(answer.Status) + 1;
        }

        Assert.All((HttpStatusCode[])[HttpStatusCode.OK, HttpStatusCode.NotFound, HttpStatusCode.BadRequest, HttpStatusCode.UnprocessableEntity], status =>
            Assert.True(tally.GetValueOrDefault(status) >= 20, $"{status}: {tally.GetValueOrDefault(status)}"));
    }

    private static void Check(Answer answer, string what)
    {
        Assert.True((int)answer.Status < 500, $"{what} {answer.Status}");
        if (answer.Status is HttpStatusCode.NoContent or HttpStatusCode.NotModified)
        {
            Assert.Empty(answer.Bytes);
            return;
        }

        try
        {
            if ((int)answer.Status >= 400)
            {
                ProblemDocument.Of(answer, answer.Status);
            }
            else if (answer.MediaType == "image/svg+xml")
            {
                Assert.Equal("svg", XDocument.Parse(answer.Text).Root!.Name.LocalName);
            }
            else if (answer.MediaType != "text/html")
            {
                // Dots in a path can lead up to the page, which is HTML; everything else is JSON.
                Assert.Equal("application/json", answer.MediaType);
                Assert.IsType<JsonObject>(answer.Json);
            }
        }
        catch (Exception e) when (e is Xunit.Sdk.XunitException or System.Text.Json.JsonException or System.Xml.XmlException)
        {
            throw new InvalidDataException($"{what}: {(int)answer.Status} {answer.Text}", e);
        }
    }
}
