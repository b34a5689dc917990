using RubLab.Core.Quantities;

namespace RubLab.Core.Curing;

/// <summary>What one treatment brings of an additive.</summary>
/// <param name="Treatment">Index of the treatment in its stack.</param>
/// <param name="Method">How it gets into the meat.</param>
/// <param name="PartsPerMillion">On the limits' base; nitrite and nitrate as the sodium salt.</param>
/// <param name="OwnPartsPerMillion">The same by the weight of the salt that is used.</param>
/// <param name="PerGramPerKilogram">The parts per million that a gram of it to a kilogram of green weight comes to.</param>
public readonly record struct AdditiveShare(
    int Treatment, CuringMethod Method, Band PartsPerMillion, Band OwnPartsPerMillion, double PerGramPerKilogram);
