namespace RubLab.Core.Serving;

/// <summary>What a purchase is planned from.</summary>
public sealed record PlanRequest
{
    public const int MostGuests = 1_000_000;
    public const int MostGroups = 20;

    public required IReadOnlyList<GuestGroup> Guests { get; init; }

    public required IReadOnlyList<MenuLine> Menu { get; init; }

    /// <summary>Cooked beyond what the guests eat, percent.</summary>
    public required double ReservePercent { get; init; }

    public required PurchaseEnd End { get; init; }

    /// <summary>The unit meat is bought in, grams.</summary>
    public required double UnitGrams { get; init; }

    /// <summary>The step purchases by weight go up to, of that unit.</summary>
    public required double UnitStep { get; init; }
}
