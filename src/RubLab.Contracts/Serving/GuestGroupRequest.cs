using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Serving;

/// <summary>Guests who eat alike.</summary>
public sealed record GuestGroupRequest
{
    /// <summary>small, ordinary (default) or hearty: how much cooked meat one of them eats.</summary>
    public string? Appetite { get; init; }

    /// <summary>How many.</summary>
    public int? Count { get; init; }

    /// <summary>Cooked edible meat for one, without bone, in place of the appetite's.</summary>
    public QuantityRequest? Portion { get; init; }
}
