namespace RubLab.Core.Shopping;

/// <summary>What something costs.</summary>
/// <param name="Amount">In the currency of the request, not below zero.</param>
/// <param name="PerGrams">For so much weight; none for one piece or one pack.</param>
public sealed record Price(decimal Amount, double? PerGrams)
{
    /// <summary>What a weight in so many pieces or packs costs, not rounded.</summary>
    public decimal Of(double grams, long pieces) => PerGrams is { } per ? Amount * (decimal)(grams / per) : Amount * pieces;
}
