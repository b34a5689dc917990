using RubLab.Core.Quantities;

namespace RubLab.Core.Formulas;

/// <summary>
/// The bulk density of a mix: at least that of its powders side by side (ideal mixing of specific volumes), at most
/// that of fine grains filling the voids of coarse ones.
/// </summary>
public static class BlendDensity
{
    // Grains of one size fill about this part of their bulk volume; used where a grain's own density is not known.
    // Both ends of the band hang on it little: it moves how much void there is to fill.
    private const double AssumedPacking = 0.6;

    /// <summary>The band; none where a line has no density.</summary>
    public static Band? Of(IReadOnlyList<LineRatio> lines)
    {
        double low = 0, typical = 0, high = 0;
        foreach (var line in lines)
        {
            if (line.Density is not { } density)
            {
                return null;
            }

            var share = line.Share.Typical;
            low += share / density.GramsPerMillilitre.Low;
            typical += share / density.GramsPerMillilitre.Typical;
            high += share / density.GramsPerMillilitre.High;
        }

        return new Band(1 / low, 1 / typical, Closeness(lines) / high);
    }

    /// <summary>The typical grain by mass, in millimetres; none where no line's form has a size.</summary>
    public static double? GrainMillimetres(IReadOnlyList<LineRatio> lines)
    {
        double logarithms = 0, shares = 0;
        foreach (var line in lines)
        {
            if (line.Line.Form.MiddleMicrometres is { } middle)
            {
                logarithms += line.Share.Typical * Math.Log(middle);
                shares += line.Share.Typical;
            }
        }

        return shares > 0 ? Math.Exp(logarithms / shares) / 1000 : null;
    }

    // Ideal volume over the closest the sizes allow, at least 1. A line without a size fills no voids: it is given
    // the mix's typical grain.
    private static double Closeness(IReadOnlyList<LineRatio> lines)
    {
        if (GrainMillimetres(lines) is not { } grain)
        {
            return 1;
        }

        var components = new PackingComponent[lines.Count];
        double solids = 0;
        for (var i = 0; i < components.Length; i++)
        {
            var solid = lines[i].Share.Typical * AssumedPacking / lines[i].Density!.GramsPerMillilitre.Typical;
            solids += solid;
            components[i] = new PackingComponent(solid, AssumedPacking, lines[i].Line.Form.MiddleMicrometres ?? grain * 1000);
        }

        for (var i = 0; i < components.Length; i++)
        {
            components[i] = components[i] with { SolidVolume = components[i].SolidVolume / solids };
        }

        return Math.Max(1, LinearPacking.IdealVolume(components) / LinearPacking.SpecificVolume(components));
    }
}
