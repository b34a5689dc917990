namespace RubLab.Core.Formulas;

/// <summary>How a formula's lines were written. The modes do not mix within one formula, but for masses with volumes.</summary>
public enum AuthoringMode
{
    /// <summary>Masses and volumes, for a stated weight of meat or with a dose.</summary>
    Amounts,
    /// <summary>g/kg, % or ppm of the base.</summary>
    Ratios,
    PartsByMass,
    PartsByVolume,
    /// <summary>Percent of the finished liquid's weight; one line makes up the rest.</summary>
    PercentOfLiquid,
    /// <summary>Percent of the weight of the one line that makes up the rest.</summary>
    PercentOfWater,
}
