using RubLab.Core.Brining;
using RubLab.Core.Quantities;

namespace RubLab.Contracts.Brining;

/// <summary>A liquid that was put together, and what of it is in the meat.</summary>
/// <param name="Liquid">What it is made of.</param>
/// <param name="NeededGrams">What goes into, or around, all the meat.</param>
/// <param name="InMeatPercent">The part of the liquid's salt that is in the meat at the end.</param>
/// <param name="Injection">How it was pumped.</param>
/// <param name="Soak">How it soaked.</param>
/// <param name="LeastMillilitres">Of a soak, what covers the meat.</param>
internal sealed record BrineOutcome(
    Brine Liquid, double NeededGrams, Band InMeatPercent, Injection? Injection, Soak? Soak, Band? LeastMillilitres);
