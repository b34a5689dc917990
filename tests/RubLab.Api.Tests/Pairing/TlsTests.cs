using System.Net;
using System.Net.Security;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Pairing;

/// <summary>The server with a certificate of its own, given as the deployment page says.</summary>
public sealed class TlsTests : IDisposable
{
    private const string Key = "a-key-of-more-than-twenty-letters";

    private readonly TemporaryDirectory _directory = new();
    private readonly X509Certificate2 _certificate;
    private readonly HttpClient _client;

    public TlsTests()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=rublab.example", key, HashAlgorithmName.SHA256);
        var names = new SubjectAlternativeNameBuilder();
        names.AddDnsName("rublab.example");
        names.AddIpAddress(IPAddress.Loopback);
        request.CertificateExtensions.Add(names.Build());
        _certificate = request.CreateSelfSigned(DateTimeOffset.UtcNow.AddDays(-1), DateTimeOffset.UtcNow.AddDays(30));
        File.WriteAllText(CertificatePath, _certificate.ExportCertificatePem());
        File.WriteAllText(KeyPath, key.ExportPkcs8PrivateKeyPem());
        _client = new HttpClient(new SocketsHttpHandler
        {
            UseCookies = false,
            SslOptions = new SslClientAuthenticationOptions
            {
                RemoteCertificateValidationCallback = (_, seen, _, _) => seen?.GetCertHashString() == _certificate.GetCertHashString(),
            },
        });
    }

    private string Data => _directory.At("data", "rublab.db");

    private string CertificatePath => _directory.At("rublab.pem");

    private string KeyPath => _directory.At("rublab.key");

    public void Dispose()
    {
        _client.Dispose();
        _certificate.Dispose();
        _directory.Dispose();
    }

    [Fact]
    public async Task Over_TLS_the_cookie_is_secure_and_bound_to_the_host_and_works()
    {
        await using var server = await StartAsync();
        var answer = await PairAsync(server);

        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        var cookie = Assert.Single(answer.Headers.GetValues("Set-Cookie"));
        Assert.Matches("^__Host-rublab=rubs_[A-Za-z0-9_-]{43}; max-age=7776000; path=/; secure; samesite=strict; httponly$", cookie);
        Assert.DoesNotContain("warning", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        var pair = cookie[..cookie.IndexOf(';', StringComparison.Ordinal)];
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(server, HttpMethod.Get, "/v1/formulas", pair));
        Assert.Equal(HttpStatusCode.Unauthorized, await StatusAsync(server, HttpMethod.Get, "/v1/formulas", null));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(server, HttpMethod.Post, "/v1/batch-sheets", pair, server.Address));
    }

    [Fact]
    public async Task A_page_without_TLS_is_another_origin_for_a_server_with_it()
    {
        await using var server = await StartAsync();
        var answer = await PairAsync(server);
        var cookie = answer.Headers.GetValues("Set-Cookie").Single();

        Assert.Equal(
            HttpStatusCode.Forbidden,
            await StatusAsync(server, HttpMethod.Post, "/v1/batch-sheets", cookie[..cookie.IndexOf(';', StringComparison.Ordinal)], server.Address.Replace("https:", "http:", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_cookie_set_without_TLS_is_not_taken_over_it()
    {
        await using var server = await StartAsync();
        var answer = await PairAsync(server);
        var token = answer.Headers.GetValues("Set-Cookie").Single()["__Host-rublab=".Length..].Split(';')[0];

        Assert.Equal(HttpStatusCode.Unauthorized, await StatusAsync(server, HttpMethod.Get, "/v1/formulas", "rublab=" + token));
    }

    [Fact]
    public async Task The_page_is_served_over_TLS_too_and_no_answer_forbids_going_back_to_http()
    {
        await using var server = await StartAsync();
        using var page = await _client.GetAsync(server.Address + "/");

        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
        Assert.Contains("<html", await page.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.False(page.Headers.Contains("Strict-Transport-Security"));
    }

    [Theory]
    [InlineData("missing.pem", "rublab.key")]
    [InlineData("rublab.pem", "missing.key")]
    [InlineData("rublab.pem", null)]
    [InlineData("rublab.key", "rublab.key")]
    [InlineData("rublab.pem", "rublab.pem")]
    public async Task A_certificate_that_cannot_be_used_is_told_in_one_line(string certificate, string? key)
    {
        string[] more = key is null ? [] : [$"--Kestrel:Certificates:Default:KeyPath={_directory.At(key)}"];
        await using var server = await ServerProcess.RunAsync(
            Key, ["--data", Data, "--urls", "https://127.0.0.1:0", $"--Kestrel:Certificates:Default:Path={_directory.At(certificate)}", .. more]);

        Assert.Equal(1, server.ExitCode);
        Assert.StartsWith("RubLab cannot start: ", server.Output.Trim(), StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", server.Output, StringComparison.Ordinal);
    }

    private async Task<ServerProcess> StartAsync()
    {
        var server = await ServerProcess.StartAsync(
            Key, "--data", Data, "--urls", "https://127.0.0.1:0",
            $"--Kestrel:Certificates:Default:Path={CertificatePath}", $"--Kestrel:Certificates:Default:KeyPath={KeyPath}");
        Assert.StartsWith("https://127.0.0.1:", server.Address, StringComparison.Ordinal);
        return server;
    }

    private async Task<HttpResponseMessage> PairAsync(ServerProcess server)
    {
        await using var maker = await ServerProcess.RunAsync(null, "--data", Data, "--new-code", "Stove phone");
        using var content = new StringContent($$"""{"code":"{{maker.Output[..9]}}"}""", Encoding.UTF8, "application/json");
        return await _client.PostAsync(server.Address + "/v1/sessions", content);
    }

    private async Task<HttpStatusCode> StatusAsync(ServerProcess server, HttpMethod method, string path, string? cookie, string? origin = null)
    {
        using var request = new HttpRequestMessage(method, server.Address + path);
        request.Content = method == HttpMethod.Post ? new StringContent(server.Example, Encoding.UTF8, "application/json") : null;
        if (cookie is not null)
        {
            request.Headers.Add("Cookie", cookie);
        }

        if (origin is not null)
        {
            request.Headers.Add("Origin", origin);
        }

        using var answer = await _client.SendAsync(request);
        return answer.StatusCode;
    }
}
