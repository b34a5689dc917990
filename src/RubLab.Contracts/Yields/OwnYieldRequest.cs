namespace RubLab.Contracts.Yields;

/// <summary>What the kitchen has recorded of cooking one cut: 1 to 200 cooks.</summary>
public sealed record OwnYieldRequest
{
    /// <summary>Five stand by themselves; fewer are drawn towards the reference.</summary>
    public IReadOnlyList<CookRecordRequest?>? Records { get; init; }
}
