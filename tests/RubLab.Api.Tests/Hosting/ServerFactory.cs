using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;

namespace RubLab.Api.Tests.Hosting;

/// <summary>The program itself on a free port of the loopback address.</summary>
internal sealed class ServerFactory : WebApplicationFactory<Program>
{
    private readonly string _dataPath;

    public ServerFactory(string dataPath)
    {
        _dataPath = dataPath;

        // Not with a port: that would be set while the program, on a thread of its own, may have started already.
        UseKestrel();
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder) => builder
        .UseEnvironment("Production")
        .UseSetting("data", _dataPath)
        .UseSetting(WebHostDefaults.ServerUrlsKey, "http://127.0.0.1:0");
}
