using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Brining;

/// <summary>Injected pieces weighed again: at least one of pumped and drained.</summary>
public sealed record WeighedBackRequest
{
    /// <summary>Their weight before.</summary>
    public QuantityRequest? Green { get; init; }

    /// <summary>Straight after pumping, before anything drains.</summary>
    public QuantityRequest? Pumped { get; init; }

    /// <summary>After draining.</summary>
    public QuantityRequest? Drained { get; init; }
}
