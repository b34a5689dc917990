using RubLab.Contracts.Quantities;
using RubLab.Contracts.Remarks;
using RubLab.Contracts.Salt;

namespace RubLab.Contracts.Sauces;

/// <summary>A sauce by mass balance: what goes into the pot, what boils off, how salty it ends.</summary>
public sealed record SauceResponse
{
    public required string Name { get; init; }

    /// <summary>All that goes into the pot.</summary>
    public required Quantity IntoPot { get; init; }

    /// <summary>Water that boils off.</summary>
    public required Quantity BoiledOff { get; init; }

    /// <summary>What the pot holds when it is done: boil it down until it weighs this.</summary>
    public required Quantity Finished { get; init; }

    /// <summary>Weight left, percent of what goes into the pot; this is what a formula stores.</summary>
    public required Quantity ReducedTo { get; init; }

    /// <summary>All but water, percent of the finished sauce.</summary>
    public required Quantity Solids { get; init; }

    /// <summary>In the order of the formula.</summary>
    public required IReadOnlyList<SauceLineResponse> Lines { get; init; }

    /// <summary>Sodium chloride per kg of finished sauce.</summary>
    public required QuantityBand SaltPerKgFinished { get; init; }

    /// <summary>All sodium in 100 g of finished sauce, mg.</summary>
    public required QuantityBand SodiumPer100g { get; init; }

    /// <summary>The sodium of one portion; absent when no portion was given.</summary>
    public SauceServingResponse? Portion { get; init; }

    /// <summary>The sodium of the amounts a label's figures stand on.</summary>
    public required IReadOnlyList<SauceServingResponse> ReferenceAmounts { get; init; }

    /// <summary>The sodium of one portion against each authority's day; empty when no portion was given.</summary>
    public required IReadOnlyList<CheckResponse> Checks { get; init; }

    public required IReadOnlyList<FindingResponse> Findings { get; init; }

    public required IReadOnlyList<CautionResponse> Cautions { get; init; }

    public required string DataVersion { get; init; }
}
