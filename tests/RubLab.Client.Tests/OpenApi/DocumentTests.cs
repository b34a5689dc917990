using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using RubLab.Contracts.Outputs;

namespace RubLab.Client.Tests.OpenApi;

public sealed class DocumentTests(ServedDocument document) : IClassFixture<ServedDocument>
{
    private const string WriteDocs = "RUBLAB_WRITE_DOCS";

    [Fact]
    public void The_committed_document_is_the_one_the_server_serves()
    {
        if (Environment.GetEnvironmentVariable(WriteDocs) == "1")
        {
            File.WriteAllText(Repository.PathOf("docs", "api", "openapi.json"), document.Text);
        }

        Assert.True(
            Repository.Read("docs", "api", "openapi.json") == document.Text,
            $"docs/api/openapi.json is not what the server serves. Run this test with {WriteDocs}=1, read the difference and commit it.");
    }

    [Fact]
    public void It_is_OpenAPI_3_1() => Assert.StartsWith("3.1.", document.Root["openapi"]!.GetValue<string>(), StringComparison.Ordinal);

    [Fact]
    public void Every_route_of_the_API_is_described()
    {
        var routes = document.Kitchen.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
            .Select(r => (Path: "/" + r.RoutePattern.RawText!.Trim('/'), Methods: r.Metadata.GetMetadata<IHttpMethodMetadata>()?.HttpMethods ?? []))
            .Where(r => r.Path.StartsWith("/v1/", StringComparison.Ordinal) || r.Path == "/health")
            .SelectMany(r => r.Methods.Where(m => m != "HEAD").Select(m => $"{m} {r.Path}"));
        Assert.Equal(routes.Order(), document.Operations.Select(o => o.ToString()).Order());
    }

    [Fact]
    public void Every_operation_has_an_id_of_its_own()
    {
        var ids = document.Operations.Select(o => o.Id).ToList();
        Assert.NotEmpty(ids);
        Assert.Equal(ids.Count, ids.Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    [Fact]
    public void Every_operation_has_a_summary_and_a_described_tag()
    {
        var described = document.Root["tags"]!.AsArray().ToDictionary(t => t!["name"]!.GetValue<string>(), t => t!["description"]!.GetValue<string>());
        Assert.All(described, t => Assert.NotEmpty(t.Value));
        Assert.All(document.Operations, o =>
        {
            Assert.NotEmpty(o.Json["summary"]!.GetValue<string>());
            Assert.NotEqual("", o.Json["description"]?.GetValue<string>());
            Assert.Contains(Assert.Single(o.Json["tags"]!.AsArray())!.GetValue<string>(), described);
        });
    }

    [Fact]
    public void Every_parameter_header_and_response_is_described()
    {
        foreach (var operation in document.Operations)
        {
            foreach (var parameter in operation.Json["parameters"]?.AsArray() ?? [])
            {
                Assert.NotEmpty(document.Resolve(parameter!)["description"]!.GetValue<string>());
            }

            foreach (var (_, response) in operation.Json["responses"]!.AsObject())
            {
                Assert.NotEmpty(document.Resolve(response!)["description"]!.GetValue<string>());
            }
        }

        Assert.All(document.Root["components"]!["headers"]!.AsObject(), h => Assert.NotEmpty(h.Value!["description"]!.GetValue<string>()));
    }

    [Fact]
    public void Every_reference_resolves()
    {
        var references = ServedDocument.Walk(document.Root)
            .Where(n => n.Node is JsonObject o && o.ContainsKey("$ref")).ToList();
        Assert.NotEmpty(references);
        Assert.All(references, r => document.Resolve(r.Node));
    }

    [Fact]
    public void Every_component_is_used()
    {
        foreach (var kind in new[] { "schemas", "responses", "parameters", "headers" })
        {
            Assert.All(
                document.Root["components"]![kind]!.AsObject(),
                c => Assert.Contains($"\"$ref\": \"#/components/{kind}/{c.Key}\"", document.Text, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_key_or_a_paired_device_is_optional_under_v1_and_not_asked_for_elsewhere_nor_to_pair() => Assert.All(document.Operations, o =>
    {
        var ways = o.Json["security"]!.AsArray().Select(w => w!.ToJsonString()).ToList();
        Assert.Equal(
            o.IsUnderV1 && o.Id != "createSession" ? ["""{"key":[]}""", """{"device":[]}""", """{"deviceWithoutTls":[]}""", "{}"] : [], ways);
    });

    [Fact]
    public void Each_way_to_be_let_in_is_described_with_what_carries_it()
    {
        var schemes = document.Root["components"]!["securitySchemes"]!.AsObject();
        Assert.All(schemes, s => Assert.NotEmpty(s.Value!["description"]!.GetValue<string>()));
        Assert.Equal(["http ", "apiKey cookie __Host-rublab", "apiKey cookie rublab"], schemes.Select(s => $"{s.Value!["type"]} {s.Value["in"]} {s.Value["name"]}".Replace("http  ", "http ", StringComparison.Ordinal)));
    }

    [Fact]
    public void List_parameters_are_numbers_in_their_range_although_they_are_bound_as_text()
    {
        var limit = Parameter("listFormulas", "limit")["schema"]!;
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse("""{"maximum":200,"minimum":1,"type":"integer","default":50}"""), limit), limit.ToJsonString());
        Assert.Equal("integer", Parameter("listChanges", "since")["schema"]!["type"]!.GetValue<string>());
        Assert.Equal("number", Parameter("convert", "value")["schema"]!["type"]!.GetValue<string>());
    }

    [Fact]
    public void The_table_of_a_sheet_is_one_of_the_words_its_reader_knows()
    {
        var table = Parameter("computeBatchSheet", "table");
        Assert.False(table["required"]?.GetValue<bool>() ?? false);
        Assert.Equal(SheetTables.All.All, table["schema"]!["enum"]!.AsArray().Select(w => w!.GetValue<string>()));
    }

    [Theory]
    [InlineData("computeBatchSheet", "application/json BatchSheetResponse, text/html string, text/csv string")]
    [InlineData("getFormula", "application/json FormulaResponse, application/ld+json RecipeResponse")]
    [InlineData("getFormulaRevision", "application/json FormulaResponse, application/ld+json RecipeResponse")]
    [InlineData("checkSalt", "application/json SaltCheckResponse")]
    [InlineData("computeBrine", "application/json BrineResponse")]
    [InlineData("computeCure", "application/json CureResponse")]
    public void Each_representation_has_a_schema_of_its_own(string operationId, string types)
    {
        var content = document.Operations.Single(o => o.Id == operationId).Json["responses"]!["200"]!["content"]!.AsObject();
        Assert.Equal(types, string.Join(", ", content.Select(c =>
            $"{c.Key} {(c.Value!["schema"]!["$ref"]?.GetValue<string>() ?? c.Value["schema"]!["type"]!.GetValue<string>()).Split('/')[^1]}")));
    }

    private JsonObject Parameter(string operationId, string name) => document.Operations.Single(o => o.Id == operationId)
        .Json["parameters"]!.AsArray().Select(p => document.Resolve(p!)).Single(p => p["name"]!.GetValue<string>() == name);
}
