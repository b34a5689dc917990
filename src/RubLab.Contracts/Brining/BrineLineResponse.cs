using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Brining;

/// <summary>One ingredient of the liquid.</summary>
public sealed record BrineLineResponse
{
    public required string Ingredient { get; init; }

    /// <summary>As given.</summary>
    public string? Form { get; init; }

    /// <summary>As given; absent on the rest and on solved lines.</summary>
    public Quantity? Amount { get; init; }

    /// <summary>Percent of the liquid.</summary>
    public required Quantity Share { get; init; }

    /// <summary>In all that is made.</summary>
    public required Quantity Made { get; init; }

    /// <summary>In one batch.</summary>
    public required Quantity Batch { get; init; }

    /// <summary>It was solved for a target.</summary>
    public required bool IsSolved { get; init; }
}
