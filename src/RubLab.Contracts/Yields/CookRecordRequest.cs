using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Yields;

/// <summary>One cook, weighed before and after.</summary>
public sealed record CookRecordRequest
{
    /// <summary>The day, as in 2026-03-14.</summary>
    public string? Date { get; init; }

    /// <summary>Way of cooking, a word such as smoked.</summary>
    public string? Method { get; init; }

    /// <summary>Weight before, of one piece or several.</summary>
    public QuantityRequest? Before { get; init; }

    /// <summary>Whether that weight was green (default) or purchase.</summary>
    public string? BeforeIs { get; init; }

    /// <summary>What was trimmed off a purchase weight, percent; without it the yield is of purchase weight.</summary>
    public QuantityRequest? TrimLoss { get; init; }

    /// <summary>Weight that left the cooker, bone included.</summary>
    public QuantityRequest? After { get; init; }
}
