using RubLab.Core.Quantities;
using RubLab.Core.Serving;
using RubLab.Core.Tests.Serving;
using RubLab.Core.Yields;

namespace RubLab.Core.Tests.Science;

/// <summary>The worked examples about purchases and own yields.</summary>
internal static class ServingPageExamples
{
    public static void Purchase(SciencePage page)
    {
        var yield = EdibleYield.OfChain(Band.Exact(page.Given("trim")), Band.Exact(page.Given("yield")), Band.Exact(0), yieldIsOfGreen: true)!;
        var plan = Suppers.Plan((long)page.Given("guests"), page.InBase("portion"), yield, page.Given("reserve"), piece: Band.Exact(page.InBase("piece")));
        var line = plan.Lines[0];
        page.Finds("edible needed", line.EdibleNeededGrams);
        page.Finds("edible per purchase", yield.EdiblePerPurchase.Typical * 100);
        page.Finds("green needed", line.GreenNeededGrams!.Value.Typical);
        page.Finds("purchase needed", line.PurchaseNeededGrams.Typical);
        page.Finds("pieces", line.Pieces!.Value.Typical);
        page.Finds("bought", line.BoughtGrams);
        page.Finds("portions from that", PortionCount.Of(line.BoughtGrams, yield, page.InBase("portion")).Typical);
        page.Finds("left over", line.LeftOverGrams.Typical);
    }

    public static void OwnYieldsPage(SciencePage page)
    {
        var own = OwnYields.Of(
            Given.Cut("beef-brisket"),
            [
                new CookRecord("smoked", page.InBase("first before"), page.InBase("first after"), false),
                new CookRecord("smoked", page.InBase("second before"), page.InBase("second after"), false),
            ],
            Seed.Catalogue)[0];
        page.Finds("mean", own.MeanPercent);
        page.Finds("spread", own.SpreadPercent!.Value);
        page.Finds("reference", own.ReferencePercent!.Value.Typical);
        page.Finds("typical", own.Percent.Typical);
        page.Finds("low", own.Percent.Low);
        page.Finds("high", own.Percent.High);
    }
}
