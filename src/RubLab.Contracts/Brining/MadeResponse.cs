using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Brining;

/// <summary>The liquid that is made: what goes in, and what stays behind.</summary>
/// <param name="Mass">Its weight.</param>
/// <param name="Volume">Its volume, estimated as that of what is needed.</param>
/// <param name="Batches">In how many equal bowls it is made.</param>
/// <param name="Batch">One of them.</param>
public sealed record MadeResponse(Quantity Mass, Quantity Volume, int Batches, LiquidResponse Batch);
