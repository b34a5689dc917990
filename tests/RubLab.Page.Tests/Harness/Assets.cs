using System.Security.Cryptography;
using System.Text.RegularExpressions;

namespace RubLab.Page.Tests.Harness;

/// <summary>The page's own files, as their manifest lists them.</summary>
public static partial class Assets
{
    /// <summary>Fetches each and compares its bytes with its hash; a status alone says nothing.</summary>
    /// <returns>How many there are.</returns>
    public static async Task<int> CheckAsync(Server server)
    {
        var manifest = await server.Http.GetStringAsync(new Uri("service-worker-assets.js", UriKind.Relative));
        var assets = Entry().Matches(manifest);
        foreach (Match asset in assets)
        {
            var bytes = await server.Http.GetByteArrayAsync(new Uri(asset.Groups["url"].Value, UriKind.Relative));
            Assert.True(bytes.Length > 0, $"{asset.Groups["url"]} is empty.");
            Assert.Equal(asset.Groups["hash"].Value, Convert.ToBase64String(SHA256.HashData(bytes)));
        }

        return assets.Count;
    }

    [GeneratedRegex("\"hash\": \"sha256-(?<hash>[^\"]+)\",\\s+\"url\": \"(?<url>[^\"]+)\"")]
    private static partial Regex Entry();
}
