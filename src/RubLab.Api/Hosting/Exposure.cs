using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using RubLab.Api.Callers;
using RubLab.Storage;

namespace RubLab.Api.Hosting;

/// <summary>A server that other machines can reach must have a key; without one it refuses to run.</summary>
/// <remarks>
/// Neither a pairing code nor a paired device counts: both end by themselves, and a server that was set up to start by itself must
/// start in three months as it does today.
/// </remarks>
public static class Exposure
{
    /// <summary>Whether only this machine itself can reach the server.</summary>
    public static bool IsLoopbackOnly(IServer server) => Addresses(server).All(IsLoopback);

    /// <exception cref="SetupException">It listens off loopback and no key is in the store or the configuration.</exception>
    public static async Task CheckAsync(IServer server, HostSettings settings, Database database)
    {
        if (settings.Key is not null || IsLoopbackOnly(server))
        {
            return;
        }

        await using var work = await database.BeginAsync(Intent.Read);
        if (!await work.Keys.AnyAsync())
        {
            throw new SetupException(
                $"Listening on {string.Join(", ", Addresses(server))} needs a key: set RUBLAB_KEY, or make one with --new-key NAME. Devices are then paired with --new-code NAME.");
        }
    }

    private static ICollection<string> Addresses(IServer server) => server.Features.Get<IServerAddressesFeature>()?.Addresses ?? [];

    private static bool IsLoopback(string address) =>
        Uri.TryCreate(address, UriKind.Absolute, out var uri) && Loopback.IsLocalName(uri.Host);
}
