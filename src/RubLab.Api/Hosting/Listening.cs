using System.Security.Cryptography;

namespace RubLab.Api.Hosting;

/// <summary>Starts the server, and says in words why an address it was given cannot be listened on.</summary>
public static class Listening
{
    /// <exception cref="SetupException">An address is no address, or needs what is not there, a certificate for instance.</exception>
    public static async Task StartAsync(IHost app)
    {
        try
        {
            await app.StartAsync();
        }
        catch (Exception e) when (e is FormatException or ArgumentException or InvalidOperationException or NotSupportedException or CryptographicException or UnauthorizedAccessException)
        {
            throw new SetupException($"It cannot listen as it was told to. {e.Message}");
        }
    }
}
