using System.Net;
using System.Text.Json.Nodes;

namespace RubLab.Api.Tests.Hosting;

/// <summary>What every refusal looks like.</summary>
internal static class ProblemDocument
{
    /// <summary>The document, once all its parts are there.</summary>
    public static JsonObject Of(Answer answer, HttpStatusCode status)
    {
        Assert.True(answer.Status == status, $"{(int)answer.Status} instead of {(int)status}: {answer.Text}");
        Assert.Equal("application/problem+json", answer.MediaType);
        var problem = answer.Json.AsObject();
        Assert.Equal((int)status, (int)problem["status"]!);
        Assert.StartsWith("/problems/", (string)problem["type"]!, StringComparison.Ordinal);
        Assert.NotEmpty((string)problem["title"]!);
        if (status is HttpStatusCode.BadRequest or HttpStatusCode.UnprocessableEntity)
        {
            Assert.NotEmpty(problem["errors"]!.AsArray());
            Assert.All(problem["errors"]!.AsArray(), CheckError);
        }

        return problem;
    }

    private static void CheckError(JsonNode? error)
    {
        Assert.Matches("^(/|$)", (string)error!["pointer"]!);
        Assert.Matches("^[a-z]+(-[a-z]+)*$", (string)error["code"]!);
        Assert.NotEmpty((string)error["detail"]!);
        Assert.IsType<JsonObject>(error["parameters"]);
    }
}
