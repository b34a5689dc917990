using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Shopping;

/// <summary>A pack as it was read.</summary>
/// <param name="Grams">What it surely holds.</param>
/// <param name="Size">As sent.</param>
/// <param name="Price">Of one pack; none where nobody said.</param>
internal sealed record Pack(double Grams, Quantity Size, decimal? Price);
