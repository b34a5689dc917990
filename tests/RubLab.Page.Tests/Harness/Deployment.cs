using System.Net;
using System.Security.Cryptography;
using System.Text;

namespace RubLab.Page.Tests.Harness;

/// <summary>Stands before a server and serves some of its files in another version, as a new release would.</summary>
public sealed class Deployment : IDisposable
{
    public const string Manifest = "service-worker-assets.js";

    private readonly HttpListener _listener = new();
    private readonly HttpClient _behind;
    private readonly Dictionary<string, byte[]> _files = [];

    public Deployment(Server server)
    {
        _behind = server.Http;
        Address = new Uri($"http://127.0.0.1:{FreePort()}/");
        _listener.Prefixes.Add(Address.ToString());
        _listener.Start();
        _ = ServeAsync();
    }

    public Uri Address { get; }

    /// <summary>Releases a file with other text, under a new version; the manifest lists its hash unless the release is broken.</summary>
    public async Task ReleaseAsync(string version, string path, string addition, bool isBroken = false)
    {
        var manifest = await _behind.GetStringAsync(new Uri(Manifest, UriKind.Relative));
        var old = await _behind.GetByteArrayAsync(new Uri(path, UriKind.Relative));
        byte[] changed = [.. old, .. Encoding.UTF8.GetBytes(addition)];
        manifest = System.Text.RegularExpressions.Regex.Replace(manifest, "\"version\": \"[^\"]+\"", $"\"version\": \"{version}\"");
        if (!isBroken)
        {
            manifest = manifest.Replace(HashOf(old), HashOf(changed), StringComparison.Ordinal);
        }

        lock (_files)
        {
            _files["/" + path] = changed;
            _files["/" + Manifest] = Encoding.UTF8.GetBytes(manifest);
        }
    }

    public void Dispose() => _listener.Close();

    private static string HashOf(byte[] bytes) => Convert.ToBase64String(SHA256.HashData(bytes));

    private static int FreePort()
    {
        using var probe = new System.Net.Sockets.TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }

    private async Task ServeAsync()
    {
        while (_listener.IsListening)
        {
            try
            {
                var context = await _listener.GetContextAsync();
                _ = AnswerAsync(context);
            }
            catch (Exception e) when (e is HttpListenerException or ObjectDisposedException)
            {
                return;
            }
        }
    }

    private async Task AnswerAsync(HttpListenerContext context)
    {
        var path = context.Request.Url!.PathAndQuery;
        byte[]? body;
        lock (_files)
        {
            _files.TryGetValue(path, out body);
        }

        using var answer = await _behind.GetAsync(new Uri(path, UriKind.Relative));
        body ??= await answer.Content.ReadAsByteArrayAsync();
        context.Response.StatusCode = (int)answer.StatusCode;
        context.Response.ContentType = answer.Content.Headers.ContentType?.ToString();
        context.Response.Headers["Cache-Control"] = "no-cache";
        await context.Response.OutputStream.WriteAsync(body);
        context.Response.Close();
    }
}
