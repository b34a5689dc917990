using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Faults;
using RubLab.Core.Quantities;

namespace RubLab.Contracts.Scaling;

/// <summary>Reads what of a treatment stays in or on the meat.</summary>
internal static class RetainedReader
{
    /// <summary>Percent; none where nothing is given or it is at fault. A band may begin at nothing, and no more than begin there.</summary>
    public static Band? Read(EstimateRequest? retained, Place at)
    {
        var band = Reader.PercentBand(retained, at, Bounds.Percent);
        if (band is not { Typical: 0 })
        {
            return band;
        }

        at.Fault(
            "nothing-retained", "Nothing of it would stay in or on the meat. Give a part above 0 %, or leave the treatment out; only a band may begin at 0.",
            ("value", 0d));
        return null;
    }
}
