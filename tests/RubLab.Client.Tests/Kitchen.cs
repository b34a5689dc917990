using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;

namespace RubLab.Client.Tests;

/// <summary>The real server on a socket of its own, with a fresh data file.</summary>
public class Kitchen : WebApplicationFactory<Program>
{
    private readonly DirectoryInfo _directory = Directory.CreateTempSubdirectory("rublab-client-");

    public Kitchen()
    {
        UseKestrel();
        StartServer();
        Http = CreateClient();
        Client = new RubLabClient(Http);
    }

    public HttpClient Http { get; }

    public RubLabClient Client { get; }

    /// <summary>The key of the server's configuration; none, and this machine needs none.</summary>
    protected virtual string? Key => null;

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        // Not UseKestrel(0): the factory then sets the port while the program may be starting already.
        builder.UseSetting("urls", "http://127.0.0.1:0");
        builder.UseSetting("data", Path.Combine(_directory.FullName, "kitchen.db"));
        builder.UseSetting("RUBLAB_KEY", Key);
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && _directory.Exists)
        {
            _directory.Delete(recursive: true);
        }
    }
}
