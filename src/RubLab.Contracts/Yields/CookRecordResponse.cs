using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Yields;

/// <summary>One cook as it was sent.</summary>
public sealed record CookRecordResponse
{
    /// <summary>The day.</summary>
    public required string Date { get; init; }

    /// <summary>Way of cooking; absent where none was sent.</summary>
    public string? Method { get; init; }

    /// <summary>Weight before.</summary>
    public required Quantity Before { get; init; }

    /// <summary>Whether that weight was green or purchase.</summary>
    public required string BeforeIs { get; init; }

    /// <summary>What was trimmed off a purchase weight.</summary>
    public Quantity? TrimLoss { get; init; }

    /// <summary>Weight that left the cooker.</summary>
    public required Quantity After { get; init; }
}
