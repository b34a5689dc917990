using RubLab.Core.Curing;
using RubLab.Core.Scaling;
using CuredMix = RubLab.Core.Tests.Curing.Cures;

namespace RubLab.Core.Tests.Science;

/// <summary>The worked example about cures.</summary>
internal static class CureExamples
{
    public static void Cures(SciencePage page)
    {
        var meat = page.Given("meat");
        var cure = CuredMix.Declared(page.Given("content") / 100);
        // A gram of cure on the meat brings so many parts per million, and so much salt.
        var perGram = CuredMix.Ppm(AdditiveLoads.Nitrite, Given.Pieces("pork-loin", meat), CuredMix.Mix(cure, 1, 0, 1000 / meat));
        var grams = page.Given("nitrite") / perGram;
        var carried = grams * cure.SaltGramsPerGram.Typical;
        page.Finds("cure", grams);
        page.Finds("salt in the cure", carried);
        page.Finds("salt to add", (page.Given("salt") * meat / 1000) - carried);
        page.Finds("as potassium nitrite", page.Given("nitrite") * Seed.Catalogue.Constants.PotassiumPerSodiumNitrite);
        var sheet = BatchSheet.Compute(new SheetRequest
        {
            Pile = Given.Pile(Given.Pieces("pork-loin", meat)),
            Treatments = [CuredMix.Mix(cure, grams, 18.2, grams + 18.2)],
            Scales = ScaleSet.Of(Given.Step(0.1, "g")),
            OveragePercent = 0,
            BowlGrams = null,
        });
        page.Finds("weighed to a tenth", sheet.Treatments[0].Lines[0].Grams);
    }
}
