using System.Text;

namespace RubLab.Api.Http;

/// <summary>A text answer of any length, sent while it is written.</summary>
internal sealed class TextAnswer(string contentType, IEnumerable<string> parts) : IResult
{
    private const int FlushedAt = 16 * 1024;

    public async Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.Response.ContentType = contentType;
        var body = httpContext.Response.BodyWriter;
        var unsent = 0L;
        foreach (var part in parts)
        {
            unsent += Encoding.UTF8.GetBytes(part, body);
            if (unsent < FlushedAt)
            {
                continue;
            }

            unsent = 0;
            if ((await body.FlushAsync(httpContext.RequestAborted)).IsCompleted)
            {
                // Nobody reads on.
                return;
            }
        }

        await body.FlushAsync(httpContext.RequestAborted);
    }
}
