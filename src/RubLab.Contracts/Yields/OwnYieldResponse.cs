namespace RubLab.Contracts.Yields;

/// <summary>The yields of a cut the kitchen recorded itself; the first one of green weight stands in place of the reference's everywhere in that kitchen.</summary>
public sealed record OwnYieldResponse
{
    /// <summary>Cut id.</summary>
    public required string Cut { get; init; }

    /// <summary>Rises by one with every change.</summary>
    public required long Revision { get; init; }

    /// <summary>One for each way of cooking and kind of weight before, that with most records first.</summary>
    public required IReadOnlyList<OwnYieldFigure> Yields { get; init; }

    /// <summary>The records as sent.</summary>
    public required IReadOnlyList<CookRecordResponse> Records { get; init; }

    /// <summary>When it was last changed.</summary>
    public required string UpdatedAt { get; init; }
}
