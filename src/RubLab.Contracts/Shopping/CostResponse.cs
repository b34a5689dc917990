using RubLab.Core.Shopping;

namespace RubLab.Contracts.Shopping;

/// <summary>A cost, and what it comes to for one of each.</summary>
/// <param name="Total">The whole cost.</param>
/// <param name="PerPortion">For one portion; absent without portions.</param>
/// <param name="PerPiece">For one piece; absent where nothing is counted in pieces.</param>
/// <param name="PerKilogram">For one kilogram of edible meat; on a shopping list of the meat it is for; absent without a weight.</param>
public sealed record CostResponse(MoneyResponse Total, MoneyResponse? PerPortion, MoneyResponse? PerPiece, MoneyResponse? PerKilogram)
{
    public static CostResponse From(Cost cost)
    {
        return new CostResponse(new MoneyResponse(cost.Total, cost.Currency.Code), Of(cost.PerPortion), Of(cost.PerPiece), Of(cost.PerKilogram));

        MoneyResponse? Of(decimal? amount) => amount is { } known ? new MoneyResponse(known, cost.Currency.Code) : null;
    }
}
