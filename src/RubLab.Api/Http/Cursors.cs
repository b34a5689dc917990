using System.Buffers.Text;
using System.Diagnostics.CodeAnalysis;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace RubLab.Api.Http;

/// <summary>Opaque list cursors: where a page ended, signed so that only what this server gave comes back in.</summary>
public sealed partial class Cursors(byte[] key)
{
    private const int SignatureBytes = 16;

    /// <summary>The cursor of a list (its path's last word) after a position.</summary>
    public string Write(string list, params string[] position)
    {
        var payload = JsonSerializer.SerializeToUtf8Bytes([list, .. position], CursorJson.Default.StringArray);
        return Base64Url.EncodeToString([.. Sign(payload), .. payload]);
    }

    /// <summary>The position, if this server signed it for this list.</summary>
    public bool TryRead(string cursor, string list, [NotNullWhen(true)] out string[]? position)
    {
        position = null;
        if (cursor.Length > 4096 || !Base64Url.IsValid(cursor))
        {
            return false;
        }

        var bytes = Base64Url.DecodeFromChars(cursor);
        if (bytes.Length <= SignatureBytes
            || !CryptographicOperations.FixedTimeEquals(bytes.AsSpan(0, SignatureBytes), Sign(bytes.AsSpan(SignatureBytes))))
        {
            return false;
        }

        var signed = JsonSerializer.Deserialize(Encoding.UTF8.GetString(bytes.AsSpan(SignatureBytes)), CursorJson.Default.StringArray)!;
        position = signed[0] == list ? signed[1..] : null;
        return position is not null;
    }

    private byte[] Sign(ReadOnlySpan<byte> payload) => HMACSHA256.HashData(key, payload)[..SignatureBytes];

    [JsonSerializable(typeof(string[]))]
    private sealed partial class CursorJson : JsonSerializerContext;
}
