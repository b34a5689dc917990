namespace RubLab.Client.Tests.OpenApi;

public sealed class RefusalTests(ServedDocument document) : IClassFixture<ServedDocument>
{
    [Fact]
    public void Every_operation_lists_the_refusals_of_its_kind() => Assert.All(document.Operations, o =>
    {
        var expected = new List<string> { "500", "503" };
        if (o.IsUnderV1)
        {
            expected.AddRange(["400", "403", "406", "429"]);
        }

        if (o.IsUnderV1 && o.Id != "createSession")
        {
            expected.Add("401");
        }

        if (o.HasBody)
        {
            expected.AddRange(["413", "415", "422"]);
        }

        if (o.Path.Contains("{id}", StringComparison.Ordinal))
        {
            expected.Add("404");
        }

        // A session has no version to mean: it is there or not.
        if (o.Method is "put" or "delete" && !o.Path.StartsWith("/v1/sessions/", StringComparison.Ordinal))
        {
            expected.AddRange(["412", "428"]);
        }

        Assert.All(expected, status => Assert.Contains(status, o.Statuses));
    });

    [Fact]
    public void Every_operation_with_a_query_lists_broken_rules() => Assert.All(
        document.Operations.Where(o => (o.Json["parameters"]?.AsArray() ?? []).Any(p => document.Resolve(p!)["in"]!.GetValue<string>() == "query")),
        o => Assert.Contains("422", o.Statuses));

    [Fact]
    public void Every_refusal_is_a_problem_with_an_example_of_its_own_status()
    {
        foreach (var operation in document.Operations)
        {
            foreach (var (status, response) in operation.Json["responses"]!.AsObject().Where(r => r.Key[0] is '4' or '5'))
            {
                var content = Assert.Single(document.Resolve(response!)["content"]!.AsObject());
                Assert.Equal("application/problem+json", content.Key);
                Assert.Equal("#/components/schemas/Problem", content.Value!["schema"]!["$ref"]!.GetValue<string>());
                Assert.All(content.Value["examples"]!.AsObject(), e => Assert.Equal(status, e.Value!["value"]!["status"]!.ToString()));
            }
        }
    }

    [Fact]
    public void Conditional_requests_name_their_headers() => Assert.All(document.Operations, o =>
    {
        var headers = (o.Json["parameters"]?.AsArray() ?? [])
            .Select(p => document.Resolve(p!)).Where(p => p["in"]!.GetValue<string>() == "header")
            .ToDictionary(p => p["name"]!.GetValue<string>(), p => p["required"]?.GetValue<bool>() ?? false);
        Assert.Equal(o.Statuses.Contains("304"), headers.ContainsKey("If-None-Match"));
        Assert.Equal(o.Statuses.Contains("412"), headers.GetValueOrDefault("If-Match"));
        Assert.Equal(o.Id == "createFormula", headers.ContainsKey("Idempotency-Key"));
    });

    [Theory]
    [InlineData("listUnits", "200", "ETag Cache-Control Vary")]
    [InlineData("getFormula", "304", "ETag Cache-Control Vary")]
    [InlineData("createFormula", "201", "Location ETag")]
    [InlineData("replaceFormula", "200", "ETag")]
    [InlineData("computeBatchSheet", "200", "Cache-Control Content-Disposition")]
    [InlineData("listChanges", "200", "Cache-Control")]
    [InlineData("getFormula", "401", "WWW-Authenticate")]
    [InlineData("deleteFormula", "403", "WWW-Authenticate")]
    [InlineData("createSession", "201", "Location Cache-Control Set-Cookie")]
    [InlineData("createSession", "429", "Retry-After")]
    [InlineData("createPairingCode", "201", "Cache-Control")]
    [InlineData("endCurrentSession", "204", "Set-Cookie")]
    public void Answers_name_their_headers(string operationId, string status, string headers)
    {
        var response = document.Resolve(document.Operations.Single(o => o.Id == operationId).Json["responses"]![status]!);
        Assert.Equal(headers.Split(' '), response["headers"]!.AsObject().Select(h => h.Key));
    }
}
