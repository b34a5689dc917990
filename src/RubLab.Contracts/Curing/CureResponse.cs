using RubLab.Contracts.Quantities;
using RubLab.Contracts.Remarks;
using RubLab.Contracts.Salt;

namespace RubLab.Contracts.Curing;

/// <summary>A cure to weigh, and its loads against the legal levels.</summary>
public sealed record CureResponse
{
    /// <summary>As asked for.</summary>
    public required string Method { get; init; }

    /// <summary>In the order given.</summary>
    public required IReadOnlyList<CureLineResponse> Lines { get; init; }

    /// <summary>One for each limited additive, in alphabetical order.</summary>
    public required IReadOnlyList<CureReachedResponse> Reached { get; init; }

    /// <summary>Sodium chloride of all lines, that of the cure among it.</summary>
    public required QuantityBand SaltPerKgGreen { get; init; }

    /// <summary>All sodium the lines bring, whatever it is bound to.</summary>
    public required QuantityBand SodiumPerKgGreen { get; init; }

    /// <summary>The salt against ranges and the additives against legal levels.</summary>
    public required IReadOnlyList<CheckResponse> Checks { get; init; }

    public required IReadOnlyList<FindingResponse> Findings { get; init; }

    public required IReadOnlyList<CautionResponse> Cautions { get; init; }

    public required string DataVersion { get; init; }
}
