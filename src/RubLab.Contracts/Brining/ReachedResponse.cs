using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Brining;

/// <summary>What of one ingredient is in the meat.</summary>
public sealed record ReachedResponse
{
    /// <summary>Ingredient id; sodium-chloride in the sum over all lines.</summary>
    public required string Ingredient { get; init; }

    /// <summary>Per kg green, after draining; of a soak only for salt, since how much else gets in is not known.</summary>
    public QuantityBand? PerKgGreen { get; init; }

    /// <summary>Per kg injected and drained; absent for a soak.</summary>
    public QuantityBand? PerKgInjected { get; init; }

    /// <summary>What is put in, whatever drains: of an injection per green weight, of a soak per weight of meat and liquid together.</summary>
    public required Quantity IngoingPpm { get; init; }
}
