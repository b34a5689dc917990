using RubLab.Core.Diffusion;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Tests.Diffusion;
using RubLab.Core.Timing;

namespace RubLab.Core.Tests.Timing;

/// <summary>A slab of 50 mm, dry brined on both faces at 5 C, and what is noticed of a salting.</summary>
internal static class DryBrined
{
    public static SaltingRequest Slab(double hours, Band squareMetresPerSecond) => new()
    {
        Method = SaltingMethod.DryBrine,
        Body = SaltedBody.Slab(Band.Exact(50), 2),
        Stages = [new(5, hours)],
        Diffusivity = AssumedDiffusivity.Given(squareMetresPerSecond, 5),
    };

    public static IReadOnlyList<Finding> Findings(this SaltingRequest request)
    {
        var findings = new FindingLog(Seed.Catalogue);
        SaltingFindings.Notice(request.Answer(), Seed.Catalogue.Salting, findings, "/x");
        return findings.Findings;
    }
}
