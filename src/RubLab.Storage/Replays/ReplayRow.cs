namespace RubLab.Storage.Replays;

internal sealed class ReplayRow
{
    public const string Columns =
        "idempotency_key AS IdempotencyKey, request_hash AS RequestHash, status AS Status, headers AS Headers, body AS Body, created_at AS CreatedAt";

    public string IdempotencyKey { get; init; } = "";

    public string RequestHash { get; init; } = "";

    public long Status { get; init; }

    public string Headers { get; init; } = "";

    public string Body { get; init; } = "";

    public string CreatedAt { get; init; } = "";

    public Replay ToReplay() => new(IdempotencyKey, RequestHash, new StoredAnswer((int)Status, Headers, Body), Timestamp.Read(CreatedAt));
}
