using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using RubLab.Contracts.Faults;
using RubLab.Contracts.Json;

namespace RubLab.Client;

/// <summary>Sends and reads; what every group of resources shares.</summary>
internal sealed class Wire(HttpClient http)
{
    private const long LargeBody = 1024 * 1024;

    /// <summary>The metadata answers are read with: members added by a newer server are passed over.</summary>
    public static RubLabJson Answers { get; } = new(new JsonSerializerOptions(RubLabJson.Default.Options)
    {
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Skip,
    });

    public async Task<T> GetAsync<T>(string path, JsonTypeInfo<T> type, CancellationToken cancellation)
    {
        using var answer = await SendAsync(new HttpRequestMessage(HttpMethod.Get, path), cancellation).ConfigureAwait(false);
        return await ReadAsync(answer, type, cancellation).ConfigureAwait(false);
    }

    public async Task<TAnswer> PostAsync<TBody, TAnswer>(
        string path, TBody body, JsonTypeInfo<TBody> bodyType, JsonTypeInfo<TAnswer> answerType, CancellationToken cancellation)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = Body(body, bodyType) };
        using var answer = await SendAsync(request, cancellation).ConfigureAwait(false);
        return await ReadAsync(answer, answerType, cancellation).ConfigureAwait(false);
    }

    /// <summary>A body of known length.</summary>
    public static ByteArrayContent Body<T>(T value, JsonTypeInfo<T> type)
    {
        ArgumentNullException.ThrowIfNull(value);
        return new ByteArrayContent(JsonSerializer.SerializeToUtf8Bytes(value, type)) { Headers = { ContentType = new("application/json") } };
    }

    /// <summary>The answer's head; its body is read by whoever asked.</summary>
    /// <exception cref="RubLabProblemException">The server refused.</exception>
    public async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellation)
    {
        using (request)
        {
            // A server that will not read so much says so before it is sent, instead of hanging up in the middle.
            request.Headers.ExpectContinue = request.Content?.Headers.ContentLength > LargeBody ? true : null;
            var answer = await http.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, cancellation).ConfigureAwait(false);
            if (answer.IsSuccessStatusCode || answer.StatusCode == HttpStatusCode.NotModified)
            {
                return answer;
            }

            using (answer)
            {
                throw new RubLabProblemException(await ProblemAsync(answer, cancellation).ConfigureAwait(false));
            }
        }
    }

    /// <exception cref="JsonException">The answer is not the JSON it should be.</exception>
    public static async Task<T> ReadAsync<T>(HttpResponseMessage answer, JsonTypeInfo<T> type, CancellationToken cancellation) =>
        await answer.Content.ReadFromJsonAsync(type, cancellation).ConfigureAwait(false)
        ?? throw new JsonException("The answer is null.");

    public static async Task<Tagged<T>> ReadTaggedAsync<T>(HttpResponseMessage answer, JsonTypeInfo<T> type, CancellationToken cancellation) => new(
        await ReadAsync(answer, type, cancellation).ConfigureAwait(false),
        answer.Headers.ETag?.ToString() ?? throw new JsonException("The answer has no ETag."));

    // A proxy may answer in the server's place, in words of its own.
    private static async Task<Problem> ProblemAsync(HttpResponseMessage answer, CancellationToken cancellation)
    {
        var status = (int)answer.StatusCode;
        if (answer.Content.Headers.ContentType?.MediaType == "application/problem+json")
        {
            try
            {
                return await ReadAsync(answer, Answers.Problem, cancellation).ConfigureAwait(false);
            }
            catch (JsonException)
            {
                // Told by its status, below.
            }
        }

        return new Problem { Type = "about:blank", Title = answer.ReasonPhrase ?? answer.StatusCode.ToString(), Status = status };
    }
}
