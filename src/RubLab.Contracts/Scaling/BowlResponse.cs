using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Scaling;

/// <summary>One bowl of a mix that is made in several.</summary>
/// <param name="Number">From 1.</param>
/// <param name="ToMix">What this bowl comes to.</param>
/// <param name="Lines">What to weigh of each line, in the order of the treatment's lines; summed over the bowls they are the lines.</param>
public sealed record BowlResponse(int Number, Quantity ToMix, IReadOnlyList<Quantity> Lines);
