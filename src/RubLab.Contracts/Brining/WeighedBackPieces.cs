using RubLab.Contracts.Reading;
using RubLab.Core.Faults;
using RubLab.Core.Quantities;

namespace RubLab.Contracts.Brining;

/// <summary>What pieces that were weighed again say of pump and retained.</summary>
/// <param name="PumpPercent">Liquid put in, percent of green weight; none where nobody weighed before draining.</param>
/// <param name="KeptPercent">Liquid left after draining, percent of green weight; none where nobody weighed then.</param>
internal sealed record WeighedBackPieces(double? PumpPercent, double? KeptPercent)
{
    public static WeighedBackPieces? Read(WeighedBackRequest? request, Place at)
    {
        if (request is null)
        {
            return null;
        }

        var green = Reader.Amount(request.Green, at.At("green"), Bounds.MeatGrams, isRequired: true, Dimension.Mass);
        var pumped = Reader.Amount(request.Pumped, at.At("pumped"), Bounds.MeatGrams, isRequired: false, Dimension.Mass);
        var drained = Reader.Amount(request.Drained, at.At("drained"), Bounds.MeatGrams, isRequired: false, Dimension.Mass);
        if (request.Pumped is null && request.Drained is null)
        {
            at.Fault("required", "Give at least one of pumped and drained.");
        }

        Heavier("pumped", pumped, green, "green", mayBeEqual: false);
        Heavier("drained", drained, green, "green", mayBeEqual: true);
        Heavier("pumped", pumped, drained, "drained", mayBeEqual: true);
        if (pumped is { } heavy && green is { } raw && heavy > 2 * raw)
        {
            at.At("pumped").Fault("out-of-range", "More than its own weight cannot have gone in.", ("value", heavy), ("highest", 2 * raw), ("unit", "g"));
        }

        return green is not null ? new WeighedBackPieces(Percent(pumped), Percent(drained)) : null;

        double? Percent(double? after) => (after - green) / green * 100;

        void Heavier(string name, double? weight, double? than, string other, bool mayBeEqual)
        {
            if (weight is { } own && than is { } least && (own < least || (!mayBeEqual && own == least)))
            {
                at.At(name).Fault(
                    "out-of-range", $"The {name} weight is not above the {other} weight.", ("value", own), ("lowest", least), ("unit", "g"));
            }
        }
    }
}
