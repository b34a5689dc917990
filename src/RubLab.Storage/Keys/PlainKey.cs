using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace RubLab.Storage.Keys;

/// <summary>The text of a key or of a device's token, before it is forgotten.</summary>
internal static class PlainKey
{
    /// <summary>Lets people and secret scanners see what a leaked string is.</summary>
    public const string Prefix = "rubk_";

    /// <summary>The same for the token of a paired device.</summary>
    public const string TokenPrefix = "rubs_";

    private const int Bytes = 32;

    public static string Draw(string prefix = Prefix) => prefix + Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(Bytes));

    /// <summary>What is stored in place of a key.</summary>
    /// <remarks>
    /// A plain fast hash is right here. Slow, salted hashes make up for passwords that can be guessed; a key of 256 random
    /// bits cannot, however fast the guessing, and two are never alike. A fast one also costs a request next to nothing and
    /// can be looked up by index; the time that takes tells nothing, as nobody can steer the first bytes of a SHA-256.
    /// </remarks>
    public static string Hash(string plainKey) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(plainKey)));
}
