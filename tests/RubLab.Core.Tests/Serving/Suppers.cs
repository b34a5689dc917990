using RubLab.Core.Quantities;
using RubLab.Core.Serving;
using RubLab.Core.Shopping;
using RubLab.Core.Yields;

namespace RubLab.Core.Tests.Serving;

/// <summary>Plans to test with.</summary>
internal static class Suppers
{
    public static YieldChoice Choice(string cut, YieldRequest asked = default) => YieldChoice.Of(Given.Cut(cut), asked, Seed.Catalogue, out _)!;

    public static PurchasePlan Plan(
        long guests, double portionGrams, EdibleYield yield, double reserve = 0, PurchaseEnd end = PurchaseEnd.Typical, Band? piece = null, string unit = "kg") =>
        PurchasePlan.Compute(Request(
            guests, portionGrams, reserve, end, unit,
            new MenuLine
            {
                Id = "meat", Cut = Given.Cut("beef-brisket"), SharePercent = 100, Choice = Choice("beef-brisket") with { Yield = yield },
                PieceGrams = CountedBand.Of(piece, null),
            }));

    public static PlanRequest Request(long guests, double portionGrams, double reserve, PurchaseEnd end, string unit, params MenuLine[] menu) => new()
    {
        Guests = [new GuestGroup(guests, portionGrams)],
        Menu = menu,
        ReservePercent = reserve,
        End = end,
        UnitGrams = UnitTable.Get(unit).Factor,
        UnitStep = Seed.Catalogue.Constants.BuyingGuideStep,
    };

    /// <summary>A line with every default of the reference.</summary>
    public static MenuLine Line(string cut, double sharePercent = 100, Price? price = null) => new()
    {
        Id = cut, Cut = Given.Cut(cut), SharePercent = sharePercent, Choice = Choice(cut),
        PieceGrams = CountedBand.Of(null, Seed.Catalogue.Serving.PieceGramsOf(cut)), Price = price,
    };

    public static double Portion(string appetite) => Seed.Catalogue.Serving.Portions.Single(p => p.Appetite == appetite).Grams;
}
