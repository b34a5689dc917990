using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Curing;

/// <summary>All that the lines bring of one limited additive as they are weighed; in a check, as they are written.</summary>
/// <param name="Additive">nitrite (as sodium nitrite), nitrate (as sodium nitrate), ascorbate, ascorbic-acid or phosphate.</param>
/// <param name="IngoingPpm">Of the green weight, whatever is used up or cooked off later.</param>
/// <param name="PerKgGreen">The same in g/kg.</param>
/// <param name="AsPotassiumNitritePpm">Of nitrite, as much of the potassium salt.</param>
public sealed record CureReachedResponse(string Additive, Quantity IngoingPpm, Quantity PerKgGreen, Quantity? AsPotassiumNitritePpm);
