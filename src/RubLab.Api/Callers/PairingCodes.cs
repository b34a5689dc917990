using System.Security.Cryptography;
using System.Text;
using RubLab.Contracts.Pairing;

namespace RubLab.Api.Callers;

/// <summary>Draws codes, and makes the hashes that stand for them in the store.</summary>
/// <remarks>
/// A code has some 35 random bits, so unlike a key it could be found from a plain hash by trying them all. The slow hash makes that a
/// hundred thousand times as long, while the code lives for minutes; the salt of the installation, that nobody can have done it before.
/// One salt for all codes lets a try be hashed once and compared with each.
/// </remarks>
public sealed class PairingCodes(byte[] salt)
{
    private const int Iterations = 100_000;
    private const int HashBytes = 32;

    public static string Draw() => RandomNumberGenerator.GetString(PairingCodeText.Alphabet, PairingCodeText.Length);

    /// <summary>What is stored in place of a code.</summary>
    public string Hash(string code) => Convert.ToHexStringLower(
        Rfc2898DeriveBytes.Pbkdf2(Encoding.ASCII.GetBytes(code), salt, Iterations, HashAlgorithmName.SHA256, HashBytes));
}
