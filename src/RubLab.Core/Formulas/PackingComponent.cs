namespace RubLab.Core.Formulas;

/// <summary>One powder in a blend, as the packing model sees it.</summary>
/// <param name="SolidVolume">Share of the blend's solid volume, 0 to 1.</param>
/// <param name="Packing">Solid volume over bulk volume of this powder alone, above 0 and below 1.</param>
/// <param name="SizeMicrometres">Typical grain.</param>
public readonly record struct PackingComponent(double SolidVolume, double Packing, double SizeMicrometres);
