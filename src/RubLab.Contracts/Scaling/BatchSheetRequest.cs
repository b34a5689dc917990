using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Scaling;

/// <summary>A pile and the treatments to scale to it.</summary>
public sealed record BatchSheetRequest
{
    /// <summary>All that is to be seasoned, up to 100 lines.</summary>
    public IReadOnlyList<PileLineRequest?>? Pile { get; init; }

    /// <summary>What goes on it, up to 20.</summary>
    public IReadOnlyList<TreatmentRequest?>? Treatments { get; init; }

    /// <summary>1 g if left out.</summary>
    public QuantityRequest? WeighingStep { get; init; }

    /// <summary>The kitchen's scales, in place of a weighing step: each amount goes on the finest that takes it.</summary>
    public IReadOnlyList<ScaleRequest?>? Scales { get; init; }

    /// <summary>What one mixing bowl holds; a larger mix is split over equal bowls.</summary>
    public QuantityRequest? Bowl { get; init; }

    /// <summary>Temperature of the cooker, for sugar that scorches.</summary>
    public QuantityRequest? CookerTemperature { get; init; }

    /// <summary>Mixed beyond what goes on, percent; none if left out.</summary>
    public QuantityRequest? Overage { get; init; }

    /// <summary>One portion of cooked meat, for sodium per portion.</summary>
    public QuantityRequest? Portion { get; init; }

    /// <summary>all (default) or none: whether each piece is listed.</summary>
    public string? Pieces { get; init; }

    /// <summary>sheet (default) or check: a check answers without amounts to weigh.</summary>
    public string? Purpose { get; init; }
}
