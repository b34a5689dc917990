using System.Diagnostics.CodeAnalysis;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using RubLab.Api.Callers;
using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Storage;

namespace RubLab.Api.Formulas;

/// <summary>Idempotency-Key: a create sent twice is done once, and the second sender gets the first answer.</summary>
internal static class Replays
{
    public const string Header = "Idempotency-Key";
    public const int LongestKey = 200;

    // Long enough for a phone that was out of reach over a weekend.
    private static readonly TimeSpan Kept = TimeSpan.FromDays(7);

    /// <summary>The key, or null when none was sent; false with a refusal when it is no key.</summary>
    public static bool TryReadKey(HttpContext http, out string? key, [NotNullWhen(false)] out IResult? refusal)
    {
        refusal = null;
        key = http.Request.Headers.TryGetValue(Header, out var values) ? values.ToString() : null;
        if (key is null || (key.Length is > 0 and <= LongestKey && key.All(c => c is > ' ' and < (char)127)))
        {
            return true;
        }

        refusal = Problems.Of(ProblemTypes.Unreadable, "", "bad-idempotency-key", $"{Header} is 1 to {LongestKey} printable characters without spaces.");
        return false;
    }

    /// <summary>The answer given to this key before, or a refusal if it was for another request.</summary>
    public static async Task<IResult?> FindAsync(UnitOfWork work, Caller caller, string key, string document, CancellationToken cancellation)
    {
        if (await work.Replays.FindAsync(caller.KitchenId, key, cancellation) is not { } replay)
        {
            return null;
        }

        return replay.RequestHash == Hash(document)
            ? new Again(replay.Answer)
            : Problems.Of(ProblemTypes.Unprocessable, "", "idempotency-key-reused", "This Idempotency-Key was used for another request.");
    }

    /// <summary>Keeps the answer in the unit of work that wrote what it describes.</summary>
    public static async Task SaveAsync(
        UnitOfWork work, Caller caller, string key, string document, StoredAnswer answer, string location, CancellationToken cancellation)
    {
        await work.Replays.DeleteOlderThanAsync(TimeProvider.System.GetUtcNow() - Kept, cancellation);
        var body = JsonSerializer.Serialize(answer.Body, RubLabJson.Default.FormulaResponse);
        var kept = new Storage.Replays.StoredAnswer(StatusCodes.Status201Created, $"{location}\n{answer.Tag}", body);
        if (!await work.Replays.SaveAsync(caller.KitchenId, key, Hash(document), kept, cancellation))
        {
            throw new InvalidOperationException("The key was answered within this unit of work.");
        }
    }

    private static string Hash(string document) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(document)));

    private sealed class Again(Storage.Replays.StoredAnswer answer) : IResult
    {
        public Task ExecuteAsync(HttpContext httpContext)
        {
            var headers = answer.Headers.Split('\n');
            httpContext.Response.StatusCode = answer.Status;
            httpContext.Response.Headers.Location = headers[0];
            httpContext.Response.Headers.ETag = headers[1];
            httpContext.Response.ContentType = "application/json; charset=utf-8";
            return httpContext.Response.WriteAsync(answer.Body, httpContext.RequestAborted);
        }
    }
}
