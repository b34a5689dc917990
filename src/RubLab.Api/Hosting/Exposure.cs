using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using RubLab.Api.Http;
using RubLab.Storage;

namespace RubLab.Api.Hosting;

/// <summary>A server that other machines can reach must have a key; without one it refuses to run.</summary>
public static class Exposure
{
    /// <exception cref="SetupException">It listens off loopback and no key is in the store or the configuration.</exception>
    public static async Task CheckAsync(IServer server, Database database)
    {
        var addresses = server.Features.Get<IServerAddressesFeature>()?.Addresses ?? [];
        if (addresses.All(IsLoopback))
        {
            return;
        }

        await using var work = await database.BeginAsync(Intent.Read);
        if (!await work.Keys.AnyAsync())
        {
            throw new SetupException(
                $"Listening on {string.Join(", ", addresses)} needs a key: set RUBLAB_KEY, or make one with --new-key NAME.");
        }
    }

    private static bool IsLoopback(string address) =>
        Uri.TryCreate(address, UriKind.Absolute, out var uri) && Loopback.IsLocalName(uri.Host);
}
