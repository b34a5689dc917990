namespace RubLab.Api.Hosting;

/// <summary>Random secrets that every server on the same store shares.</summary>
/// <param name="CursorKey">Signs list cursors.</param>
/// <param name="PairingSalt">Goes into the hash of every pairing code.</param>
public sealed record StoreSecrets(byte[] CursorKey, byte[] PairingSalt);
