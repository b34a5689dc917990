using System.Net;
using System.Text;
using System.Text.Json.Nodes;

namespace RubLab.Api.Tests.Hosting;

/// <summary>An answer, read to its end.</summary>
public sealed class Answer
{
    private readonly HttpResponseMessage _response;

    private Answer(HttpResponseMessage response, byte[] bytes)
    {
        _response = response;
        Bytes = bytes;
    }

    public byte[] Bytes { get; }

    public HttpStatusCode Status => _response.StatusCode;

    public string Text => Encoding.UTF8.GetString(Bytes);

    public JsonNode Json => JsonNode.Parse(Bytes) ?? throw new InvalidDataException("The answer is null.");

    public string? MediaType => _response.Content.Headers.ContentType?.MediaType;

    public string? Tag => Header("ETag");

    public static async Task<Answer> ReadAsync(HttpResponseMessage response) =>
        new(response, await response.Content.ReadAsByteArrayAsync());

    public string? Header(string name) =>
        _response.Headers.TryGetValues(name, out var values) || _response.Content.Headers.TryGetValues(name, out values)
            ? string.Join(", ", values)
            : null;

    /// <summary>The answer, once it is sure that it went well.</summary>
    public Answer Succeeded(HttpStatusCode status = HttpStatusCode.OK)
    {
        Assert.True(Status == status, $"{(int)Status} instead of {(int)status}: {Text}");
        return this;
    }
}
