namespace RubLab.Core.Serving;

/// <summary>Guests who eat alike.</summary>
/// <param name="Count">How many, at least one.</param>
/// <param name="PortionGrams">Cooked edible meat for each, without bone.</param>
public readonly record struct GuestGroup(long Count, double PortionGrams);
