namespace RubLab.Contracts.Faults;

/// <summary>An RFC 9457 problem document.</summary>
public sealed record Problem
{
    /// <summary>A page of this host that explains the kind of problem.</summary>
    public required string Type { get; init; }

    /// <summary>The kind of problem in words.</summary>
    public required string Title { get; init; }

    /// <summary>The HTTP status.</summary>
    public required int Status { get; init; }

    /// <summary>What is particular to this time.</summary>
    public string? Detail { get; init; }

    /// <summary>Every broken rule; the first ones where there are very many, and then the detail says how many there are.</summary>
    public IReadOnlyList<ErrorResponse>? Errors { get; init; }
}
