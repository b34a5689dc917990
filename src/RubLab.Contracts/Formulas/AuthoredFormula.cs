using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Formulas;

/// <summary>A formula as it would be sent to be stored.</summary>
public sealed record AuthoredFormula
{
    /// <summary>The formula's name.</summary>
    public required string Name { get; init; }

    /// <summary>The kind of formula.</summary>
    public required string Kind { get; init; }

    /// <summary>What the ratios stand on; absent for green.</summary>
    public string? Base { get; init; }

    /// <summary>Finished formula per base; absent when the lines say it themselves.</summary>
    public Quantity? Dose { get; init; }

    /// <summary>The weight of meat that amounts were written for.</summary>
    public Quantity? WrittenFor { get; init; }

    /// <summary>purchase where that weight is as bought; absent for green.</summary>
    public string? WrittenForIs { get; init; }

    /// <summary>Weight left when it is boiled down, percent of what goes into the pot.</summary>
    public Quantity? ReducedTo { get; init; }

    /// <summary>The lines in their order.</summary>
    public required IReadOnlyList<AuthoredLine> Lines { get; init; }
}
