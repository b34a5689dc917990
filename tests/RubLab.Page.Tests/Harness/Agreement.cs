using System.Text;
using System.Text.Json.Nodes;

namespace RubLab.Page.Tests.Harness;

/// <summary>One request answered by the page and by the server.</summary>
public static class Agreement
{
    /// <summary>Answers are compared member by member, numbers to the bit.</summary>
    /// <param name="bench">Where the page is open.</param>
    /// <param name="server">The same build.</param>
    /// <param name="function">The page's, in engine.js.</param>
    /// <param name="path">The server's.</param>
    /// <param name="request">The body both get.</param>
    /// <param name="formulas">Stored formulas it names.</param>
    public static Task AssertAsync(Bench bench, Server server, string function, string path, string request, params string[] formulas) =>
        AssertAsync(bench, server, function, path, request, _ => 0, formulas);

    /// <summary>The same, where some numbers stand on powers and exponentials.</summary>
    /// <param name="bench">Where the page is open.</param>
    /// <param name="server">The same build.</param>
    /// <param name="function">The page's, in engine.js.</param>
    /// <param name="path">The server's.</param>
    /// <param name="request">The body both get.</param>
    /// <param name="noise">How far a number may be off, of itself, by its place in the answer.</param>
    /// <param name="formulas">Stored formulas it names.</param>
    public static async Task AssertAsync(
        Bench bench, Server server, string function, string path, string request, Func<string, double> noise, params string[] formulas)
    {
        var stored = new JsonObject();
        foreach (var id in formulas)
        {
            stored[id] = JsonNode.Parse(await server.Http.GetStringAsync(new Uri($"v1/formulas/{id}", UriKind.Relative)));
        }

        using var body = new StringContent(request, Encoding.UTF8, "application/json");
        using var answer = await server.Http.PostAsync(new Uri(path, UriKind.Relative), body);
        var theirs = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.IsSuccessStatusCode, theirs);
        var ours = await bench.Page.EvaluateAsync<string>(
            "async ([name, request, formulas]) => JSON.stringify((await import('/js/engine.js'))[name](JSON.parse(request), JSON.parse(formulas)).ok)",
            new[] { function, request, stored.ToJsonString() });
        AssertAlike(path, JsonNode.Parse(theirs), JsonNode.Parse(ours), noise);
    }

    private static void AssertAlike(string at, JsonNode? theirs, JsonNode? ours, Func<string, double> noise)
    {
        switch (theirs, ours)
        {
            case (JsonObject a, JsonObject b):
                Assert.Equal(a.Select(member => member.Key), b.Select(member => member.Key));
                foreach (var (name, value) in a)
                {
                    AssertAlike($"{at}/{name}", value, b[name], noise);
                }

                break;
            case (JsonArray a, JsonArray b):
                Assert.Equal(a.Count, b.Count);
                for (var i = 0; i < a.Count; i++)
                {
                    AssertAlike($"{at}/{i}", a[i], b[i], noise);
                }

                break;
            case (JsonValue a, JsonValue b) when a.TryGetValue<double>(out var theirNumber) && b.TryGetValue<double>(out var ourNumber):
                // A script writes a sum of money without its trailing zeros.
                Assert.True(
                    theirNumber.Equals(ourNumber) || Math.Abs(theirNumber - ourNumber) <= noise(at) * Math.Abs(theirNumber), $"{at}: {theirs} and {ours}");
                break;
            default:
                Assert.Equal($"{at} = {theirs}", $"{at} = {ours}");
                break;
        }
    }
}
