namespace RubLab.Storage.Engines;

/// <summary>What a first look at a database shows.</summary>
internal sealed class PostgresSight
{
    public string Encoding { get; init; } = "";

    /// <summary>Where tables would be created; null if nowhere.</summary>
    public string? Schema { get; init; }

    public long Tables { get; init; }

    public long Markers { get; init; }

    public long Ledgers { get; init; }
}
