namespace RubLab.Core.Shopping;

/// <summary>A cost and what it comes to for one of each, in whole smallest units of the currency.</summary>
/// <param name="Currency">One currency for all.</param>
/// <param name="Total">The whole cost.</param>
/// <param name="PerPortion">For one portion; none without portions.</param>
/// <param name="PerPiece">For one piece; none where nothing is counted in pieces.</param>
/// <param name="PerKilogram">For one kilogram of what the cost is of; none without a weight.</param>
public sealed record Cost(Currency Currency, decimal Total, decimal? PerPortion, decimal? PerPiece, decimal? PerKilogram)
{
    /// <summary>Divides a total, each quotient rounded by itself.</summary>
    public static Cost Of(Currency currency, decimal total, long portions, long pieces, double grams)
    {
        var rounded = currency.Rounded(total);
        return new Cost(
            currency, rounded,
            portions > 0 ? currency.Rounded(rounded / portions) : null,
            pieces > 0 ? currency.Rounded(rounded / pieces) : null,
            grams > 0 ? currency.Rounded(rounded / (decimal)grams * 1000) : null);
    }
}
