namespace RubLab.Storage.Replays;

/// <summary>What was answered to a request that carried an idempotency key.</summary>
/// <param name="Key">The key the caller chose; unique within its kitchen.</param>
/// <param name="RequestHash">Tells a repeated request from another one under the same key.</param>
/// <param name="Answer">The answer given.</param>
/// <param name="CreatedAt">When.</param>
public sealed record Replay(string Key, string RequestHash, StoredAnswer Answer, DateTimeOffset CreatedAt);
