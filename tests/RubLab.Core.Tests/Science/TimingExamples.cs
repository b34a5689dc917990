using RubLab.Core.Diffusion;
using RubLab.Core.Quantities;
using RubLab.Core.Timing;

namespace RubLab.Core.Tests.Science;

/// <summary>The worked examples about how far salt gets.</summary>
internal static class TimingExamples
{
    public static void SaltingTime(SciencePage page)
    {
        double thickness = page.Given("thickness"), diffusivity = page.InBase("diffusivity"), hours = page.Given("time");
        var request = new SaltingRequest
        {
            Method = SaltingMethod.DryBrine,
            Body = SaltedBody.Slab(Band.Exact(thickness), 2),
            Stages = [new(page.Given("cold temperature"), hours)],
            Diffusivity = AssumedDiffusivity.Given(Band.Exact(diffusivity), page.Given("cold temperature")),
        };
        var day = SaltingTimes.Compute(request, Seed.Catalogue);
        page.Finds("dimensionless time", diffusivity * hours * 3600 / (thickness * thickness / 4e6));
        page.Finds("depth", day.DepthMillimetres.Typical);
        page.Finds("centre to mean", day.CentreToMean.Typical * 100);
        page.Finds("face to mean", day.Profile[^1].RelativeToMean.Typical);
        page.Finds("hours to 50 % even", day.HoursToEven50.Typical);
        page.Finds("hours to 95 % even", day.HoursToEven95.Typical);

        double cold = page.Given("cold temperature"), warm = page.Given("warm temperature");
        var cooked = SaltingTimes.Compute(
            request with { Stages = [new(cold, page.Given("cold")), new(warm, page.Given("warm"))] }, Seed.Catalogue);
        page.Finds("speeding", Seed.Catalogue.Salting.Speeding(warm, cold));
        page.Finds("depth after the cooker", cooked.DepthMillimetres.Typical);
        page.Finds("centre after the cooker", cooked.CentreToMean.Typical * 100);
        page.Finds(
            "hours to half uptake in a bed",
            SaltingTimes.Compute(request with { Method = SaltingMethod.SaltBed }, Seed.Catalogue).HoursToHalfUptake!.Value.Typical);
    }

    public static void StirredBath(SciencePage page)
    {
        var bath = LimitedBath.Slab(page.InBase("water of the liquid") / page.InBase("water of the meat"));
        double reach = page.Given("thickness") / 2000, perHour = page.InBase("diffusivity") * 3600 / (reach * reach);
        double time = perHour * page.Given("time"), uptake = bath.UptakeAt(time), end = page.Given("salt") * bath.TakenUpAtTheEnd;
        page.Finds("first root", bath.Root(1));
        page.Finds("dimensionless time", time);
        page.Finds("uptake", uptake * 100);
        page.Finds("salt in the meat", uptake * end);
        page.Finds("salt in the meat once even", end);
        page.Finds("strength of the liquid", bath.LiquidAt(time) * 100);
        page.Finds("hours to half uptake", bath.TimeFor(0.5) / perHour);
        page.Finds("hours to 95 % uptake", bath.TimeFor(0.95) / perHour);
    }
}
