using System.Net;
using System.Text;
using RubLab.Api.Tests.Engines;
using RubLab.Api.Tests.Hosting;
using RubLab.Api.Tests.Pairing;

namespace RubLab.Api.Tests.Fuzzing;

/// <summary>Thousands of damaged requests to pair, and damaged cookies: nothing breaks the server, and nobody gets in by accident.</summary>
public class PairingFuzzTests(Server server) : IClassFixture<Server>
{
    private static readonly (string Path, string Sound)[] Routes =
    [
        ("/v1/sessions", """{"code":"7KXM-4RTP","name":"Stove phone"}"""),
        ("/v1/pairing-codes", """{"scopes":["read","write","pair"],"name":"Stove phone"}"""),
        ("/v1/pairing-codes", """{}"""),
    ];

    private static readonly string[] Paths =
    [
        "/v1/sessions", "/v1/sessions/current", "/v1/sessions/", "/v1/sessions/x", "/v1/sessions/%FF", "/v1/sessions/current/x", "/v1/sessions?limit=0",
        "/v1/sessions?cursor=AAAA", "/v1/sessions?limit=1", "/v1/pairing-codes", "/v1/pairing-codes/x", "/v1/formulas",
    ];

    [EngineTheory]
    [InlineData(20260402)]
    [InlineData(19700101)]
    public async Task Damaged_bodies_never_break_the_server(int seed)
    {
        var mutations = new Mutations(new Random(seed));
        var tally = new Dictionary<HttpStatusCode, int>();
        for (var i = 0; i < 1500; i++)
        {
            var (path, sound) = mutations.Pick(Routes);
            var body = mutations.Damage(sound);

            var answer = await server.SendAsync(HttpMethod.Post, path, body, "application/json");

            Check(answer, $"Seed {seed}, number {i}: {path} {Encoding.UTF8.GetString(body)}");
            Assert.True(path != "/v1/sessions" || answer.Header("Set-Cookie") is null, $"Seed {seed}, number {i}: somebody got in.");
            tally[answer.Status] = tally.GetValueOrDefault(answer.Status) + 1;
        }

        Assert.All((HttpStatusCode[])[HttpStatusCode.Created, HttpStatusCode.BadRequest, HttpStatusCode.UnprocessableEntity], status =>
            Assert.True(tally.GetValueOrDefault(status) >= 20, $"{status}: {tally.GetValueOrDefault(status)}"));
    }

    [EngineTheory]
    [InlineData(20260402)]
    [InlineData(19700101)]
    public async Task Damaged_cookies_never_break_the_server_nor_open_it(int seed)
    {
        var random = new Random(seed);
        var phone = await Phone.PairAsync(server);
        HttpMethod[] methods = [HttpMethod.Get, HttpMethod.Get, HttpMethod.Post, HttpMethod.Delete, HttpMethod.Put, HttpMethod.Options, new("BREW")];
        (string, string)[] headers = [phone.Origin, ("Origin", "x"), ("Origin", ""), ("Sec-Fetch-Site", "same-origin"), ("Sec-Fetch-Site", "x"), ("Cookie", "a=b"), ("Accept", "text/csv")];
        for (var i = 0; i < 1500; i++)
        {
            var cookie = Damaged(phone.Cookie.Item2, random);
            var (method, path, header) = (methods[random.Next(methods.Length)], Paths[random.Next(Paths.Length)], headers[random.Next(headers.Length)]);

            var answer = await server.SendAsync(method, path, method == HttpMethod.Get ? null : "{}", ("Cookie", cookie), header, ("Via", "1.1 proxy"));

            var what = $"Seed {seed}, number {i}: {method} {path} {cookie} {header}";
            Check(answer, what);
            // Spaces around a cookie, and other cookies beside it, are no damage.
            var holds = cookie.Split(';').Any(part => part.Trim() == phone.Cookie.Item2);
            Assert.True(holds || (int)answer.Status >= 400, $"{what}: {answer.Status}");
        }
    }

    private static string Damaged(string cookie, Random random)
    {
        var text = new StringBuilder(cookie);
        for (var i = random.Next(1, 4); i > 0; i--)
        {
            var at = random.Next(text.Length);
            switch (random.Next(3))
            {
                case 0:
                    text[at] = (char)random.Next(32, 127);
                    break;
                case 1 when text.Length > 1:
                    text.Remove(at, 1);
                    break;
                default:
                    text.Insert(at, " ;=\"%,\\"[random.Next(7)]);
                    break;
            }
        }

        return text.ToString();
    }

    private static void Check(Answer answer, string what)
    {
        Assert.True((int)answer.Status < 500, $"{what} {answer.Status}");
        if ((int)answer.Status >= 400)
        {
            ProblemDocument.Of(answer, answer.Status);
        }
    }
}
