namespace RubLab.Core.Quantities;

/// <summary>What a unit measures. Two units convert only within one dimension.</summary>
public enum Dimension
{
    Mass,
    Volume,
    /// <summary>Mass per mass of the named base: g/kg, %, ppm.</summary>
    Ratio,
    /// <summary>Percent of the liquid's weight.</summary>
    ShareOfLiquid,
    /// <summary>Percent of the water's weight.</summary>
    ShareOfWater,
    /// <summary>Mass per surface: g/100cm2.</summary>
    Coverage,
    Density,
    PartsByMass,
    PartsByVolume,
    Length,
    Temperature,
    Time,
    Diffusivity,
}
