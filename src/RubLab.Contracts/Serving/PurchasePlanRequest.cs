using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Serving;

/// <summary>Guests and a menu, to be turned into what to buy.</summary>
public sealed record PurchasePlanRequest
{
    /// <summary>Up to 20 groups, a million guests in all.</summary>
    public IReadOnlyList<GuestGroupRequest?>? Guests { get; init; }

    /// <summary>Up to 100 cuts.</summary>
    public IReadOnlyList<MenuLineRequest?>? Menu { get; init; }

    /// <summary>Cooked beyond what the guests eat, percent; none if left out.</summary>
    public QuantityRequest? Reserve { get; init; }

    /// <summary>typical (default) or safe: which end of trim, bone and yield is bought for.</summary>
    public string? BuyFor { get; init; }

    /// <summary>kg (default) or lb: the unit meat is bought in, a tenth of which purchases by weight go up to.</summary>
    public string? BoughtIn { get; init; }
}
