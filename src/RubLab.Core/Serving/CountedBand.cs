using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Serving;

/// <summary>A band that a plan counts with. Its unit is in the name of the member that holds it.</summary>
/// <param name="Band">The band.</param>
/// <param name="Citation">Where it comes from; none where the request stated it.</param>
public sealed record CountedBand(Band Band, Citation? Citation)
{
    /// <summary>As the request stated it, else as the reference has it.</summary>
    public static CountedBand? Of(Band? stated, Cited? reference) => stated is { } band ? new CountedBand(band, null)
        : reference is null ? null
        : new CountedBand(reference.Band, reference.Citation);
}
