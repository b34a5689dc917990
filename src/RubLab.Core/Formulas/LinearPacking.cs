namespace RubLab.Core.Formulas;

/// <summary>
/// How much closer grains of different sizes pack than each alone: the linear packing model of Yu and Standish with the
/// constants of Yu, Zou and Standish (1996). Equal sizes give ideal mixing, one component gives itself.
/// </summary>
public static class LinearPacking
{
    /// <summary>Bulk volume of the blend per unit of its solid volume.</summary>
    /// <param name="components">Solid volumes that sum to 1, in any order.</param>
    public static double SpecificVolume(ReadOnlySpan<PackingComponent> components)
    {
        double densest = 0;
        for (var i = 0; i < components.Length; i++)
        {
            densest = Math.Max(densest, VolumeControlledBy(components, i));
        }

        return densest;
    }

    /// <summary>Bulk volume when the powders lie side by side, each as alone.</summary>
    public static double IdealVolume(ReadOnlySpan<PackingComponent> components)
    {
        double volume = 0;
        foreach (var component in components)
        {
            volume += component.SolidVolume / component.Packing;
        }

        return volume;
    }

    private static double VolumeControlledBy(ReadOnlySpan<PackingComponent> components, int i)
    {
        var own = 1 / components[i].Packing;
        var volume = own;
        for (var j = 0; j < components.Length; j++)
        {
            if (j == i)
            {
                continue;
            }

            var other = 1 / components[j].Packing;
            var isLarger = components[j].SizeMicrometres > components[i].SizeMicrometres;
            var ratio = isLarger
                ? components[i].SizeMicrometres / components[j].SizeMicrometres
                : components[j].SizeMicrometres / components[i].SizeMicrometres;
            var theirs = isLarger ? other - ((other - 1) * Occupying(ratio)) : other * (1 - Filling(ratio));
            volume += (theirs - own) * components[j].SolidVolume;
        }

        return volume;
    }

    // Small grains in the voids of large ones.
    private static double Filling(double ratio) =>
        Math.Pow(1 - ratio, 3.3) + (2.8 * ratio * Math.Pow(1 - ratio, 2.7));

    // Large grains standing in a bed of small ones.
    private static double Occupying(double ratio) =>
        Math.Pow(1 - ratio, 2.0) + (0.4 * ratio * Math.Pow(1 - ratio, 3.7));
}
