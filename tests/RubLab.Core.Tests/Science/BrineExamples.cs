using RubLab.Core.Brining;
using RubLab.Core.Quantities;

namespace RubLab.Core.Tests.Science;

/// <summary>The worked examples about liquids.</summary>
internal static class BrineExamples
{
    public static void Brines(SciencePage page)
    {
        var injection = new Injection(page.Given("pump"), new Band(page.Given("retained low"), page.Given("retained"), page.Given("retained high")));
        var share = injection.ShareFor(page.Given("target"));
        var percent = Of(share, 1 - share).StrengthPercent;
        var solution = Seed.Catalogue.Brines.Solution;
        page.Finds("share of the liquid", share * 100);
        page.Finds("salometer", solution.SalometerOf(percent));
        page.Finds("specific gravity", solution.SpecificGravity(percent));
        page.Finds("Baume", solution.Baume(percent));
        page.Finds("reached low", injection.GramsPerKilogramGreen(Band.Exact(share)).Low);
        page.Finds("reached high", injection.GramsPerKilogramGreen(Band.Exact(share)).High);
        page.Finds("per injected", injection.GramsPerKilogramInjected(Band.Exact(share)).Typical);
        page.Finds("put in", injection.IngoingPartsPerMillion(share));
    }

    public static void Soaks(SciencePage page)
    {
        double salt = page.Given("salt"), water = page.Given("water"), own = page.Given("water of the meat");
        var soak = new Soak { LiquidGramsPerKilogram = salt + water, Liquid = Of(salt, water), MeatWaterGramsPerKilogram = own };
        page.Finds("salt in the meat", soak.SaltGramsPerKilogram.Typical);
        page.Finds("salt in the liquid", salt - soak.SaltGramsPerKilogram.Typical);
        page.Finds("strength once even", soak.EvenStrengthPercent);
        page.Finds("taken up", Soak.TakenUp(soak.WaterRatio, Band.Exact(1)).Typical * 100);
        var evenness = Soak.EvennessAfter(
            soak.WaterRatio, SoakGeometry.Measured(page.Given("thickness"), false), Band.Exact(page.Given("diffusivity")), page.InBase("time"));
        page.Finds("part of the way", evenness.Typical * 100);
        page.Finds("salt after that", (soak with { Evenness = evenness }).SaltGramsPerKilogram.Typical);
    }

    private static Brine Of(double salt, double water) => Brine.Of([Given.Ingredient("sodium-chloride"), Given.Ingredient("water")], [salt, water]);
}
